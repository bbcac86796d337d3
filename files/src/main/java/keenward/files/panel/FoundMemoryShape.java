package keenward.files.panel;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;
import static keenward.files.shape.Shapes.date;
import static keenward.files.shape.Shapes.names;
import static keenward.files.shape.Shapes.text;
import static keenward.files.shape.Shapes.wholeNumber;
import static keenward.files.shape.Shapes.words;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import keenward.files.shape.Field;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;

/** The format of a found memory: what a panel was seen to hold. */
public final class FoundMemoryShape {
  static final Field<Integer> VERSION =
      required("keenward-found", wholeNumber(1, 1), "1", "Version of this format.");
  static final Field<String> PANEL =
      required("panel", text(60), "Marram 32", "Name of the panel description that it belongs to.");
  static final Field<String> SITE =
      optional("site", text(100), "K-0001", "Reference of the site, for people.");
  static final Field<LocalDate> READ =
      optional("read", date(), "2026-10-05", "Day on which it was read off.");
  static final Field<Boolean> OTHERWISE =
      required(
          "otherwise",
          words(otherwise()),
          "unknown",
          "What of the fields that the file does not list: they are not known, or they hold what a new panel does.");
  static final Field<Map<String, String>> ONCE =
      optional(
          "once",
          names(NameKey.name("a field"), text(200)),
          "{ exit-time: 45 }",
          "Fields that there are once, each with what it holds, or `unknown`.");
  static final Field<Map<String, Map<String, Map<String, String>>>> RECORDS =
      optional(
          "records",
          names(
              NameKey.name("a kind of record"),
              names(NameKey.name("a record's number"), names(NameKey.name("a field"), text(200)))),
          "{ zone: { 1: { task: way in } } }",
          "Fields by kind of record and its number.");

  /** The root of the format. */
  public static final MapShape ROOT =
      MapShape.of(
              "found memory",
              "What a panel was seen to hold: typed in while reading it, or taken over from a record. Values are written as in"
                  + " a panel description: numbers as the panel counts, words of choices, options joined by `+`, `none` for"
                  + " nothing; codes by their reference, never their digits.",
              VERSION,
              PANEL,
              SITE,
              READ,
              OTHERWISE,
              ONCE,
              RECORDS)
          .example(
              """
              keenward-found: 1
              panel: Marram 32
              otherwise: unknown
              once: { exit-time: 45, account: "0471" }
              records:
                zone:
                  1: { fitted: wired, task: way in, areas: 1+3, name: YARD DOOR }
                  2: { fitted: nothing }
              """);

  private FoundMemoryShape() {}

  private static Map<String, Boolean> otherwise() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("unknown", false);
    words.put("defaults", true);
    return words;
  }
}
