package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Template;
import keenward.files.QuotedText;
import keenward.files.shape.NearestWord;

/**
 * The language of display lines: fixed text with {@code {zone}} (number of the current record),
 * {@code {zone.kind}} and {@code {exit-time}} (what a field holds), {@code {value}} (what the field
 * at the current location holds), {@code {typed}}, {@code {typed *}}, {@code {typed|zone.name}},
 * {@code {cursor}}, {@code {known}}, {@code {location}}; {@code :4} before the brace gives a width;
 * {@code {}} shows nothing.
 */
final class TemplateText {
  private static final String EXPECTED =
      "a field, a kind of record, value, typed, typed *, typed|FIELD, cursor, known or location";

  private final Vocabulary vocabulary;
  private final Faults faults;

  TemplateText(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  Optional<Template> parse(String pointer, String text) {
    List<Template.Part> parts = new ArrayList<>();
    int from = 0;
    boolean fine = true;
    while (from < text.length()) {
      int open = text.indexOf('{', from);
      if (open < 0) {
        parts.add(new Template.Literal(text.substring(from)));
        break;
      }
      if (open > from) {
        parts.add(new Template.Literal(text.substring(from, open)));
      }
      int close = text.indexOf('}', open);
      if (close < 0) {
        faults.add(pointer, "a { without its }", "{ and } around a name", "add the }");
        return Optional.empty();
      }
      String name = text.substring(open + 1, close).strip();
      if (!name.isEmpty()) {
        Optional<Template.Part> part = part(pointer, name);
        part.ifPresent(parts::add);
        fine &= part.isPresent();
      }
      from = close + 1;
    }
    return fine ? Optional.of(new Template(parts)) : Optional.empty();
  }

  private Optional<Template.Part> part(String pointer, String text) {
    int colon = text.lastIndexOf(':');
    int width = colon < 0 ? 0 : WholeNumbers.parse(text.substring(colon + 1).strip());
    if (width < 0 || width > 80) {
      faults.add(
          pointer,
          "the width in {" + text + "}",
          "a whole number from 1 to 80 after the colon",
          "mend it");
      return Optional.empty();
    }
    String name = colon < 0 ? text : text.substring(0, colon).strip();
    if (name.startsWith("typed|")) {
      return vocabulary
          .reference(pointer, name.substring("typed|".length()).strip())
          .map(field -> new Template.TypedText(false, Optional.of(field)));
    }
    return switch (name) {
      case "typed" -> Optional.of(new Template.TypedText(false, Optional.empty()));
      case "typed *" -> Optional.of(new Template.TypedText(true, Optional.empty()));
      case "cursor" -> Optional.of(new Template.UnderCursor());
      case "known" -> Optional.of(new Template.OtherRecord());
      case "location" -> Optional.of(new Template.LocationNumber(width));
      case Vocabulary.VALUE ->
          Optional.of(new Template.FieldText(new FieldReference.AtLocation(), width));
      default -> named(pointer, name, width);
    };
  }

  private Optional<Template.Part> named(String pointer, String name, int width) {
    if (vocabulary.isRecord(name)) {
      return Optional.of(new Template.RecordNumber(name, width));
    }
    if (vocabulary.fields().contains(name)) {
      return Optional.of(new Template.FieldText(new FieldReference.Named(name), width));
    }
    List<String> candidates = new ArrayList<>(vocabulary.fields());
    candidates.addAll(vocabulary.records().keySet());
    candidates.addAll(List.of("typed", "cursor", "known", "location", Vocabulary.VALUE));
    String question = NearestWord.question(name, candidates);
    faults.add(
        pointer,
        "nothing is called " + QuotedText.of(name),
        EXPECTED,
        question.isEmpty() ? "write a name that is there" : question);
    return Optional.empty();
  }
}
