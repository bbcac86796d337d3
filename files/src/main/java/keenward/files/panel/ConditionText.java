package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;
import keenward.core.quantities.Parsed;
import keenward.core.quantities.Span;
import keenward.files.QuotedText;

/**
 * The language of conditions: {@code zone.kind = wired | radio}, {@code zone.kind != unused},
 * {@code record zone = 1}, {@code within 60 s of power-up}, {@code locked}, {@code keypad = Stub};
 * each may follow {@code not}; several are joined by {@code and} or by {@code or}, not by both.
 */
final class ConditionText {
  private static final String EXPECTED =
      "such as zone.kind = wired | radio, record zone = 1, within 60 s of power-up, locked, or keypad = NAME";

  private final Vocabulary vocabulary;
  private final Faults faults;

  ConditionText(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  Optional<Condition> parse(String pointer, String text) {
    boolean and = text.contains(" and ");
    boolean or = text.contains(" or ");
    if (and && or) {
      faults.add(
          pointer,
          "a condition joined by both and and or",
          "one of them",
          "split it into several branches");
      return Optional.empty();
    }
    List<Condition> parts = new ArrayList<>();
    List<String> texts = Splitter.split(text, and ? " and " : " or ");
    for (String part : texts) {
      part(pointer, part.strip()).ifPresent(parts::add);
    }
    if (parts.size() < texts.size()) {
      return Optional.empty();
    }
    if (parts.size() == 1) {
      return Optional.of(parts.getFirst());
    }
    return Optional.of(and ? new Condition.All(parts) : new Condition.Any(parts));
  }

  private Optional<Condition> part(String pointer, String text) {
    if (text.startsWith("not ")) {
      return part(pointer, text.substring(4).strip()).map(Condition.Not::new);
    }
    if (text.equals("locked")) {
      return Optional.of(new Condition.Locked());
    }
    if (text.startsWith("within ") && text.endsWith(" of power-up")) {
      return window(pointer, text.substring(7, text.length() - " of power-up".length()).strip());
    }
    int unequal = text.indexOf("!=");
    if (unequal > 0) {
      return comparison(
              pointer, text.substring(0, unequal).strip(), text.substring(unequal + 2).strip())
          .map(Condition.Not::new);
    }
    int equal = text.indexOf('=');
    if (equal > 0) {
      return comparison(
          pointer, text.substring(0, equal).strip(), text.substring(equal + 1).strip());
    }
    faults.add(pointer, "cannot read the condition " + QuotedText.of(text), EXPECTED, "reword it");
    return Optional.empty();
  }

  private Optional<Condition> window(String pointer, String time) {
    Parsed<Span> span = Span.parse(time);
    if (span.value() == null || span.value().milliseconds() % 100 != 0) {
      faults.add(
          pointer,
          "cannot read the time " + QuotedText.of(time),
          "a time such as 60 s, to the tenth of a second",
          "reword it");
      return Optional.empty();
    }
    return Optional.of(new Condition.SincePowerUp((int) (span.value().milliseconds() / 100)));
  }

  private Optional<Condition> comparison(String pointer, String left, String right) {
    if (left.equals("keypad")) {
      return vocabulary.keypad(pointer, right).map(Condition.OnKeypad::new);
    }
    if (left.startsWith("record ")) {
      return recordIs(pointer, left.substring(7).strip(), right);
    }
    Optional<FieldReference> reference = vocabulary.reference(pointer, left);
    if (reference.isEmpty()) {
      return Optional.empty();
    }
    if (reference.get() instanceof FieldReference.AtLocation) {
      faults.add(
          pointer,
          "a condition on the value at a location",
          "a condition on a field by its name",
          "give the locations screens of their own instead");
      return Optional.empty();
    }
    return values(pointer, left, right)
        .map(values -> new Condition.FieldIs(reference.get(), values));
  }

  private Optional<Condition> recordIs(String pointer, String name, String number) {
    Optional<String> record = vocabulary.record(pointer, name);
    RecordKind kind = record.map(vocabulary.records()::get).orElse(null);
    if (kind == null) {
      return Optional.empty();
    }
    int value = WholeNumbers.parse(number);
    if (!kind.contains(value)) {
      faults.add(
          pointer,
          "there is no " + name + " " + QuotedText.of(number),
          kind.first() + " to " + kind.last(),
          "write a number that is there");
      return Optional.empty();
    }
    return Optional.of(new Condition.RecordIs(name, value));
  }

  private Optional<List<Value>> values(String pointer, String field, String text) {
    FieldType type = vocabulary.type(field).orElse(null);
    if (type == null) {
      return Optional.empty();
    }
    List<Value> values = new ArrayList<>();
    for (String word : Splitter.split(text, "|")) {
      Parsed<Value> value = ValueText.parse(type, word.strip());
      if (value.value() == null) {
        faults.add(
            pointer,
            field + " is never " + QuotedText.of(word.strip()),
            ValueText.expectation(type),
            "write a value of the field");
        return Optional.empty();
      }
      values.add(value.value());
    }
    return Optional.of(values);
  }
}
