package keenward.files.zonelist;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.Map;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;
import keenward.files.shape.Field;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.Shapes;

/** The format of a map: what a person says of a list of zones. */
public final class ListMapShape {

  static final Field<Integer> VERSION =
      required("keenward-list", Shapes.wholeNumber(1, 1), "1", "Version of this format.");
  static final Field<Integer> HEAD_ROW =
      optional(
          "head row",
          Shapes.wholeNumber(1, 20_000),
          "4",
          "Number of the row with the heads of the columns, when it is not found.");
  static final Field<Map<String, Column>> COLUMNS =
      optional(
          "columns",
          Shapes.names(NameKey.name("a column"), Shapes.word(Column.class)),
          "{ Wo: place, F: serial }",
          "What columns hold, by head or by letter.");
  static final Field<Map<String, ZoneResponse>> RESPONSES =
      optional(
          "responses",
          Shapes.names(NameKey.name("a word"), Shapes.word(ZoneResponse.class)),
          "{ slow: entry-exit }",
          "Words of the list for what zones do.");
  static final Field<Map<String, DeviceKind>> DEVICES =
      optional(
          "devices",
          Shapes.names(NameKey.name("a word"), Shapes.word(DeviceKind.class)),
          "{ eye: motion }",
          "Words of the list for what is fitted.");

  /** The root of the format. */
  public static final MapShape ROOT =
      MapShape.of(
              "list map",
              "What `import-zones` cannot know of a technician's own words. What the map says wins over the words that"
                  + " Keenward knows.",
              VERSION,
              HEAD_ROW,
              COLUMNS,
              RESPONSES,
              DEVICES)
          .example(
              """
              keenward-list: 1
              head row: 4
              columns: { Wo: place, F: serial, Kabel: note }
              responses: { slow: entry-exit, quick: instant }
              devices: { eye: motion }
              """);

  private ListMapShape() {}
}
