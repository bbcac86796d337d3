package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;
import keenward.core.quantities.Parsed;
import keenward.files.QuotedText;

/**
 * The language of effects: {@code set zone.kind = wired}, {@code reset zone.name}, {@code reset
 * record zone}, {@code reset all}, {@code reset all except code}, {@code next zone}, {@code
 * previous zone}, either with {@code around} to go round, {@code choose zone 4}, {@code choose
 * known zone}, {@code keep}, {@code drop}, {@code unlock}.
 */
final class EffectText {
  private static final String EXPECTED =
      "such as set zone.kind = wired, reset zone.name, reset record zone, reset all except code, next zone,"
          + " previous zone around, choose zone 4, choose known zone, keep, drop, or unlock";

  private final Vocabulary vocabulary;
  private final Faults faults;

  EffectText(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  Optional<Effect> parse(String pointer, String text) {
    String rest = text.indexOf(' ') < 0 ? "" : text.substring(text.indexOf(' ') + 1).strip();
    return switch (text.indexOf(' ') < 0 ? text : text.substring(0, text.indexOf(' '))) {
      case "keep" -> alone(pointer, text, rest, new Effect.Keep());
      case "drop" -> alone(pointer, text, rest, new Effect.Drop());
      case "unlock" -> alone(pointer, text, rest, new Effect.Unlock());
      case "set" -> set(pointer, text, rest);
      case "reset" -> reset(pointer, rest);
      case "next" -> move(pointer, rest, Effect.Move.NEXT);
      case "previous" -> move(pointer, rest, Effect.Move.PREVIOUS);
      case "choose" -> choose(pointer, text, rest);
      default -> cannotRead(pointer, text);
    };
  }

  private Optional<Effect> cannotRead(String pointer, String text) {
    faults.add(pointer, "cannot read the effect " + QuotedText.of(text), EXPECTED, "reword it");
    return Optional.empty();
  }

  private Optional<Effect> alone(String pointer, String text, String rest, Effect effect) {
    return rest.isEmpty() ? Optional.of(effect) : cannotRead(pointer, text);
  }

  private Optional<Effect> set(String pointer, String text, String rest) {
    int equal = rest.indexOf('=');
    if (equal < 0) {
      return cannotRead(pointer, text);
    }
    String name = rest.substring(0, equal).strip();
    String written = rest.substring(equal + 1).strip();
    Optional<String> field = vocabulary.field(pointer, name);
    FieldType type = field.flatMap(vocabulary::type).orElse(null);
    if (type == null) {
      return Optional.empty();
    }
    Parsed<Value> value = ValueText.parse(type, written);
    if (value.value() == null) {
      faults.add(
          pointer,
          name + " cannot hold " + QuotedText.of(written),
          ValueText.expectation(type),
          "write a value of the field");
      return Optional.empty();
    }
    return Optional.of(new Effect.Set(new FieldReference.Named(name), value.value()));
  }

  private Optional<Effect> reset(String pointer, String rest) {
    if (rest.startsWith("record ")) {
      return vocabulary.record(pointer, rest.substring(7).strip()).map(Effect.ResetRecord::new);
    }
    if (rest.equals("all")) {
      return Optional.of(new Effect.ResetAll(List.of()));
    }
    if (rest.startsWith("all except ")) {
      List<String> fields = new ArrayList<>();
      for (String name : Splitter.split(rest.substring("all except ".length()), ",")) {
        vocabulary.field(pointer, name.strip()).ifPresent(fields::add);
      }
      return Optional.of(new Effect.ResetAll(fields));
    }
    return vocabulary
        .field(pointer, rest)
        .map(field -> new Effect.Reset(new FieldReference.Named(field)));
  }

  private Optional<Effect> move(String pointer, String rest, Effect.Move move) {
    boolean around = rest.endsWith(" around");
    String name = around ? rest.substring(0, rest.length() - " around".length()).strip() : rest;
    return vocabulary
        .record(pointer, name)
        .map(record -> new Effect.MoveRecord(record, move, around));
  }

  private Optional<Effect> choose(String pointer, String text, String rest) {
    if (rest.startsWith("known ")) {
      return vocabulary.record(pointer, rest.substring(6).strip()).map(Effect.ChooseOther::new);
    }
    int blank = rest.lastIndexOf(' ');
    if (blank < 0) {
      return cannotRead(pointer, text);
    }
    Optional<String> record = vocabulary.record(pointer, rest.substring(0, blank).strip());
    RecordKind kind = record.map(vocabulary.records()::get).orElse(null);
    if (kind == null) {
      return Optional.empty();
    }
    int number = WholeNumbers.parse(rest.substring(blank + 1));
    if (!kind.contains(number)) {
      faults.add(
          pointer,
          "there is no " + kind.name() + " " + QuotedText.of(rest.substring(blank + 1)),
          kind.first() + " to " + kind.last(),
          "write a number that is there");
      return Optional.empty();
    }
    return Optional.of(new Effect.ChooseRecord(kind.name(), number));
  }
}
