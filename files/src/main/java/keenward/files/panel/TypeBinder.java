package keenward.files.panel;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.files.QuotedText;
import keenward.files.panel.PanelDescriptionShape.Range;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;

/** Turns what a file says about a field's type into a type. */
final class TypeBinder {
  private static final List<Field<?>> TYPES =
      List.of(
          PanelDescriptionShape.FIELD_NUMBER,
          PanelDescriptionShape.FIELD_CHOICE,
          PanelDescriptionShape.FIELD_SET,
          PanelDescriptionShape.FIELD_DIGITS,
          PanelDescriptionShape.FIELD_TEXT,
          PanelDescriptionShape.FIELD_WORD_LIST,
          PanelDescriptionShape.FIELD_SERIAL,
          PanelDescriptionShape.FIELD_CODE);

  private final Faults faults;

  TypeBinder(Faults faults) {
    this.faults = faults;
  }

  /** The type; empty where a fault was reported. */
  Optional<FieldType> bind(String pointer, Fields fields) {
    List<String> given = TYPES.stream().filter(fields::mentions).map(Field::name).toList();
    if (given.size() != 1) {
      faults.add(
          pointer,
          given.isEmpty()
              ? "a field without a type"
              : "a field of several types: " + String.join(", ", given),
          "exactly one of " + String.join(", ", TYPES.stream().map(Field::name).toList()),
          given.isEmpty() ? "add its type" : "keep one");
      return Optional.empty();
    }
    return switch (given.getFirst()) {
      case "number" ->
          fields
              .find(PanelDescriptionShape.FIELD_NUMBER)
              .flatMap(range -> number(pointer, fields, range));
      case "choice" ->
          fields
              .find(PanelDescriptionShape.FIELD_CHOICE)
              .flatMap(options -> options(pointer + "/choice", options))
              .map(FieldType.Choice::new);
      case "set" ->
          fields
              .find(PanelDescriptionShape.FIELD_SET)
              .flatMap(options -> set(pointer + "/set", options, fields));
      case "digits" ->
          fields
              .find(PanelDescriptionShape.FIELD_DIGITS)
              .flatMap(range ->
                  length(pointer + "/digits", range)
                      .map(fine ->
                          new FieldType.Digits(fine.least(), fine.most(), hexadecimal(fields))));
      case "text" ->
          fields
              .find(PanelDescriptionShape.FIELD_TEXT)
              .flatMap(length ->
                  letters(pointer, fields).map(letters -> new FieldType.FreeText(length, letters)));
      case "word list" ->
          fields
              .find(PanelDescriptionShape.FIELD_WORD_LIST)
              .map(words ->
                  new FieldType.WordSequence(
                      fields.find(PanelDescriptionShape.FIELD_MOST).orElse(1), words));
      case "serial" ->
          fields
              .find(PanelDescriptionShape.FIELD_SERIAL)
              .flatMap(range ->
                  length(pointer + "/serial", range)
                      .map(fine ->
                          new FieldType.Serial(fine.least(), fine.most(), hexadecimal(fields))));
      default ->
          fields
              .find(PanelDescriptionShape.FIELD_CODE)
              .flatMap(range ->
                  length(pointer + "/code", range)
                      .map(fine -> new FieldType.Code(fine.least(), fine.most())));
    };
  }

  private static boolean hexadecimal(Fields fields) {
    return fields.find(PanelDescriptionShape.FIELD_HEXADECIMAL).orElse(false);
  }

  private Optional<Range> length(String pointer, Range range) {
    if (range.least() < 1 || range.most() > 40) {
      faults.add(
          pointer,
          "a field of " + range.least() + " to " + range.most() + " digits",
          "1 to 40 digits",
          "mend the length");
      return Optional.empty();
    }
    return Optional.of(range);
  }

  private Optional<FieldType> number(String pointer, Fields fields, Range range) {
    int step = fields.find(PanelDescriptionShape.FIELD_STEP).orElse(1);
    if ((range.most() - range.least()) % step != 0) {
      faults.add(
          pointer + "/step",
          range.least() + ".." + range.most() + " in steps of " + step,
          "a last number that the steps reach",
          "mend the range or the step");
      return Optional.empty();
    }
    List<FieldType.Special> specials = new ArrayList<>();
    fields
        .find(PanelDescriptionShape.FIELD_SPECIAL)
        .ifPresent(all ->
            all.forEach((typed, special) ->
                special
                    .find(PanelDescriptionShape.SPECIAL_IS)
                    .ifPresent(number ->
                        specials.add(
                            new FieldType.Special(
                                typed,
                                number,
                                special
                                    .find(PanelDescriptionShape.SPECIAL_SHOWS)
                                    .orElse(typed))))));
    return Optional.of(
        new FieldType.WholeNumber(
            range.least(),
            range.most(),
            step,
            fields.find(PanelDescriptionShape.FIELD_UNIT).orElse(""),
            fields.find(PanelDescriptionShape.FIELD_EACH).orElse(1),
            fields.find(PanelDescriptionShape.FIELD_WIDTH).orElse(0),
            specials));
  }

  private Optional<FieldType> set(String pointer, Object options, Fields fields) {
    FieldType.Written written =
        fields.find(PanelDescriptionShape.FIELD_WRITTEN).orElse(FieldType.Written.LIST);
    return options(pointer, options)
        .filter(all -> withoutNone(pointer, all))
        .filter(all -> written == FieldType.Written.LIST || powersOfTwo(pointer, all))
        .map(all -> new FieldType.OptionSet(all, written));
  }

  private boolean withoutNone(String pointer, List<FieldType.Option> options) {
    if (options.stream().noneMatch(option -> option.word().equals(ValueText.NONE))) {
      return true;
    }
    faults.add(
        pointer,
        "an option called none",
        "another word, since none stands for no option at all",
        "rename it; shows: may say what you like");
    return false;
  }

  private boolean powersOfTwo(String pointer, List<FieldType.Option> options) {
    for (FieldType.Option option : options) {
      int code = WholeNumbers.parse(option.code());
      if (code < 1 || Integer.bitCount(code) != 1) {
        faults.add(
            pointer,
            "the option "
                + QuotedText.of(option.word())
                + " has the code "
                + QuotedText.of(option.code()),
            "a power of two, since the set is written as a sum",
            "give it one of 1, 2, 4, 8, ...");
        return false;
      }
    }
    return true;
  }

  private Optional<List<FieldType.Option>> options(String pointer, Object given) {
    List<FieldType.Option> options = new ArrayList<>();
    switch (given) {
      case Range range -> {
        for (int number = range.least(); number <= range.most() && options.size() <= 64; number++) {
          String word = Integer.toString(number);
          options.add(new FieldType.Option(word, word, word));
        }
      }
      case List<?> words -> {
        for (Object word : words) {
          options.add(new FieldType.Option(word.toString(), "", word.toString()));
        }
      }
      case Map<?, ?> named ->
          named.forEach((word, option) -> options.add(option(word.toString(), option)));
      default -> throw new IllegalArgumentException("options of " + given.getClass());
    }
    if (options.size() > 64 || options.isEmpty()) {
      faults.add(
          pointer,
          options.isEmpty() ? "no option at all" : "more than 64 options",
          "1 to 64 options",
          "mend the list");
      return Optional.empty();
    }
    return distinct(pointer, options) ? Optional.of(options) : Optional.empty();
  }

  private static FieldType.Option option(String word, Object given) {
    if (given instanceof Fields fields) {
      return new FieldType.Option(
          word,
          fields.find(PanelDescriptionShape.OPTION_CODE).orElse(""),
          fields.find(PanelDescriptionShape.OPTION_SHOWS).orElse(word));
    }
    return new FieldType.Option(word, given.toString(), word);
  }

  /**
   * Codes tell options apart when typed, texts when shown, and words keep clear of the small
   * languages.
   */
  private boolean distinct(String pointer, List<FieldType.Option> options) {
    Set<String> codes = new HashSet<>();
    Set<String> shown = new HashSet<>();
    boolean fine = true;
    for (FieldType.Option option : options) {
      String name = QuotedText.of(option.word());
      if (!option.code().isEmpty() && !codes.add(option.code())) {
        faults.add(
            pointer, name + " has the code of another", "a code of its own", "change the code");
        fine = false;
      }
      if (!shown.add(option.shown())) {
        faults.add(
            pointer,
            name + " looks like another on the display",
            "a text of its own",
            "change what it shows");
        fine = false;
      }
      if (option.word().contains(" and ")
          || option.word().contains(" or ")
          || option.word().contains("|")
          || option.word().contains("+")
          || option.word().contains("=")) {
        faults.add(
            pointer,
            name + " as a word",
            "a word without |, +, = and without 'and' and 'or' between blanks, which conditions use",
            "rename it; shows: may say what you like");
        fine = false;
      }
    }
    return fine;
  }

  private Optional<String> letters(String pointer, Fields fields) {
    String written = fields.find(PanelDescriptionShape.FIELD_LETTERS).orElse("A-Z0-9 ");
    StringBuilder letters = new StringBuilder();
    int place = 0;
    while (place < written.length()) {
      char first = written.charAt(place);
      if (place + 2 < written.length() && written.charAt(place + 1) == '-') {
        char last = written.charAt(place + 2);
        if (last < first) {
          faults.add(
              pointer + "/letters",
              "the range " + first + "-" + last,
              "a range whose first character comes first",
              "turn it round");
          return Optional.empty();
        }
        for (char letter = first; letter <= last; letter++) {
          letters.append(letter);
        }
        place += 3;
      } else {
        letters.append(first);
        place++;
      }
    }
    return Optional.of(letters.toString());
  }
}
