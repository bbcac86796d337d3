package keenward.files.panel;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;
import static keenward.files.shape.Shapes.either;
import static keenward.files.shape.Shapes.list;
import static keenward.files.shape.Shapes.longText;
import static keenward.files.shape.Shapes.names;
import static keenward.files.shape.Shapes.oneOrMore;
import static keenward.files.shape.Shapes.pattern;
import static keenward.files.shape.Shapes.quantity;
import static keenward.files.shape.Shapes.reference;
import static keenward.files.shape.Shapes.text;
import static keenward.files.shape.Shapes.wholeNumber;
import static keenward.files.shape.Shapes.words;
import static keenward.files.shape.Shapes.yesNo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.plan.Wiring;
import keenward.core.quantities.Current;
import keenward.core.quantities.Parsed;
import keenward.core.quantities.Resistance;
import keenward.core.quantities.Span;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/**
 * The whole format of a panel description: what the reader, the schema and the reference page come
 * from.
 */
public final class PanelDescriptionShape {
  static final Shape<String> NAME = text(60);
  static final Shape<String> LINE = text(200);
  static final Shape<String> KEY = text(40);
  static final Shape<Span> TIME = quantity(Span::parse, Span.units());

  /** One number or a range. */
  record Range(int least, int most) {}

  static final Shape<Range> RANGE =
      either(
          wholeNumber(0, 1_000_000_000).as(number -> new Range(number, number)),
          pattern("a range such as 1..30", "^[0-9]{1,9}\\.\\.[0-9]{1,9}$", text -> text)
              .parsedBy(PanelDescriptionShape::range));

  private PanelDescriptionShape() {}

  private static Parsed<Range> range(String text) {
    int dots = text.indexOf("..");
    int least = Integer.parseInt(text.substring(0, dots));
    int most = Integer.parseInt(text.substring(dots + 2));
    return least <= most
        ? Parsed.of(new Range(least, most))
        : Parsed.expected("a range whose first number is the smaller, such as 1..30");
  }

  // Actions

  static final Field<String> BRANCH_WHEN =
      optional("when", LINE, "zone.kind = radio", "Condition; see the language of conditions.")
          .usual("always");
  static final Field<List<String>> BRANCH_DO =
      optional(
              "do",
              oneOrMore(LINE),
              "[next zone]",
              "Effects, done in order; see the language of effects.")
          .usual("nothing is done");
  static final Field<String> BRANCH_GO =
      required("go", NAME, "zone kind", "Where it leads; see the language of destinations.");
  static final MapShape BRANCH =
      MapShape.of(
              "branch",
              "One way that a key may go. The first branch of a list whose condition holds is taken; where none holds the key"
                  + " is refused. A key may also lead to a destination alone, or to one branch, without a list.",
              BRANCH_WHEN,
              BRANCH_DO,
              BRANCH_GO)
          .example(
              """
              keys:
                ok: zone kind
                next: { do: next zone, go: stay }
                back:
                  - { when: zone.kind = unused, go: zone number }
                  - { go: zone name }
              """);

  /** A branch as read: its values may be missing where they were wrong. */
  record BranchText(Optional<Fields> fields, String destination) {}

  static final Shape<List<BranchText>> ACTION =
      either(
          NAME.as(text -> List.of(new BranchText(Optional.empty(), text))),
          BRANCH.as(fields -> List.of(new BranchText(Optional.of(fields), ""))),
          list(either(
                  NAME.as(text -> new BranchText(Optional.empty(), text)),
                  BRANCH.as(fields -> new BranchText(Optional.of(fields), ""))))
              .of(1, 100));

  // Keypads and keys

  static final Field<KeypadKind.Shows> KEYPAD_SHOWS =
      required(
          "shows",
          words(
              ordered(
                  "text",
                  KeypadKind.Shows.TEXT,
                  "words",
                  KeypadKind.Shows.WORDS,
                  "lamps",
                  KeypadKind.Shows.LAMPS)),
          "text",
          "What it can show: any text, a fixed set of words and some digits, or lamps.");
  static final Field<Integer> KEYPAD_LINES =
      optional("lines", wholeNumber(1, 20), "2", "Lines of its display.").usual("`1`");
  static final Field<Integer> KEYPAD_COLUMNS =
      optional(
              "columns", wholeNumber(1, 200), "20", "Characters of a line; a text keypad needs it.")
          .usual("not for words and lamps");
  static final Field<List<String>> KEYPAD_WORDS =
      optional(
              "words",
              list(NAME).of(1, 200),
              "[ZONE, OPEN]",
              "Everything a keypad of words or lamps can show.")
          .usual("not for text");
  static final Field<Integer> KEYPAD_DIGITS =
      optional("digits", wholeNumber(0, 40), "2", "Digits that a keypad of words can show besides.")
          .usual("`0`");
  static final Field<List<String>> KEYPAD_KEYS =
      required(
          "keys",
          list(KEY).of(1, 100).withoutRepetition(),
          "[\"1\", ok, back]",
          "Its keys, each by a name of your own.");
  static final Field<Map<String, Span>> KEYPAD_LONG_KEYS =
      optional(
              "long keys",
              names(NameKey.name("a key"), TIME),
              "{ hold ok: 2 s }",
              "Keys that are held, or pressed together, each under a name of its own, with how long.")
          .usual("none");
  static final Field<Span> KEYPAD_LAG =
      required("lag", TIME, "0.3 s", "How long after a press the next one is heard.");
  static final Field<Boolean> KEYPAD_MIRRORS =
      optional(
              "mirrors",
              yesNo(),
              "yes",
              "Whether it shares one programming session with the other keypads that do.")
          .usual("`yes`");
  static final Field<Span> KEYPAD_RESTARTS =
      optional(
              "restarts",
              TIME,
              "15 s",
              "How long this kind is out of use after programming was left.")
          .usual("`0 s`");
  static final MapShape KEYPAD =
      MapShape.of(
              "keypad",
              "A kind of keypad. The first is the usual one; it should be a text keypad.",
              KEYPAD_SHOWS,
              KEYPAD_LINES,
              KEYPAD_COLUMNS,
              KEYPAD_WORDS,
              KEYPAD_DIGITS,
              KEYPAD_KEYS,
              KEYPAD_LONG_KEYS,
              KEYPAD_LAG,
              KEYPAD_MIRRORS,
              KEYPAD_RESTARTS)
          .example(
              """
              keypads:
                Ledge: { shows: text, lines: 2, columns: 20, keys: ["0", "1", ok, back], long keys: { hold back: 2 s }, lag: 0.3 s }
                Stub:  { shows: words, words: [ZONE, OPEN], digits: 2, keys: ["0", "1", ok], lag: 0.5 s, restarts: 20 s }
              """);

  static final Field<Map<String, String>> TYPING_CHARACTERS =
      optional(
              "characters",
              names(NameKey.name("a key"), KEY),
              "{ \"1\": \"1\" }",
              "The character that each key types.")
          .usual("the keys `0` to `9` type themselves");
  static final Field<Map<String, Map<String, String>>> TYPING_SHIFT =
      optional(
              "shift",
              names(NameKey.name("a key"), names(NameKey.name("a key"), KEY)),
              "{ star: { \"1\": A } }",
              "For a key that shifts the next one: what that types. Works where an entry says `hexadecimal: yes`.")
          .usual("no key shifts");
  static final Field<Map<String, String>> TYPING_LETTERS =
      optional(
              "letters",
              names(NameKey.name("a key"), KEY),
              "{ \"2\": \"ABC2\" }",
              "Multi-tap: the characters that repeated taps of a key go through.")
          .usual("no text by multi-tap");
  static final Field<Span> TYPING_TAP_PAUSE =
      optional("tap pause", TIME, "1.2 s", "Pause after which the letter being tapped is finished.")
          .usual("only the `advance` key, or another letter key, finishes it");
  static final MapShape TYPING =
      MapShape.of(
          "typing",
          "What keys type.",
          TYPING_CHARACTERS,
          TYPING_SHIFT,
          TYPING_LETTERS,
          TYPING_TAP_PAUSE);

  // Capacity

  static final Field<Map<Wiring, Range>> CAPACITY_ZONES =
      optional(
          "zones",
          names(
              new NameKey<>(
                  "a kind of connection",
                  "one of wired, radio, bus",
                  "^(wired|radio|bus)$",
                  Set.of(),
                  PanelDescriptionShape::wiring),
              RANGE),
          "{ wired: 1..8, radio: 9..40 }",
          "Zone numbers by how the device reaches the panel.");
  static final Field<Integer> CAPACITY_PARTITIONS =
      optional("partitions", wholeNumber(0, 9999), "3", "How many partitions.");
  static final Field<Integer> CAPACITY_USERS =
      optional("users", wholeNumber(0, 99999), "20", "How many users.");
  static final Field<Integer> CAPACITY_KEYPADS =
      optional("keypads", wholeNumber(0, 9999), "6", "How many keypads.");
  static final Field<Integer> CAPACITY_OUTPUTS =
      optional("outputs", wholeNumber(0, 9999), "4", "How many outputs.");
  static final Field<Current> CAPACITY_AUXILIARY =
      optional(
          "auxiliary current",
          quantity(Current::parse, Current.units()),
          "600 mA",
          "Current for devices.");
  static final Field<Current> CAPACITY_CHARGE =
      optional(
          "charge current",
          quantity(Current::parse, Current.units()),
          "350 mA",
          "Current that charges the battery.");
  static final Field<List<keenward.core.quantities.Capacity>> CAPACITY_BATTERIES =
      optional(
          "batteries",
          list(
              quantity(
                  keenward.core.quantities.Capacity::parse,
                  keenward.core.quantities.Capacity.units())),
          "[7 Ah, 12 Ah]",
          "Sizes of battery that fit.");
  static final Field<Resistance> CAPACITY_LOOP =
      optional(
          "loop resistance",
          quantity(Resistance::parse, Resistance.units()),
          "100 ohm",
          "Highest resistance of a zone's loop without its resistors.");
  static final MapShape CAPACITY =
      MapShape.of(
          "capacity",
          "What the panel can connect and supply.",
          CAPACITY_ZONES,
          CAPACITY_PARTITIONS,
          CAPACITY_USERS,
          CAPACITY_KEYPADS,
          CAPACITY_OUTPUTS,
          CAPACITY_AUXILIARY,
          CAPACITY_CHARGE,
          CAPACITY_BATTERIES,
          CAPACITY_LOOP);

  // Memory

  static final Field<Range> RECORD_NUMBERS =
      required("numbers", RANGE, "1..30", "Numbers of the records.");
  static final Field<PlanRecords> RECORD_FROM =
      optional(
              "from",
              words(planRecords()),
              "zones",
              "What of the site plan they stand for, number by number.")
          .usual("nothing");
  static final MapShape RECORD =
      MapShape.of("record", "A kind of numbered record.", RECORD_NUMBERS, RECORD_FROM)
          .example(
              """
              records:
                zone:      { numbers: 1..30, from: zones }
                partition: { numbers: 1..3, from: partitions }
              """);

  static final Field<String> OPTION_CODE =
      optional("code", KEY, "\"3\"", "What is typed for it where it is typed.")
          .usual("it is not typed");
  static final Field<String> OPTION_SHOWS =
      optional("shows", NAME, "Way through", "What the display shows for it.").usual("the word");
  static final MapShape OPTION =
      MapShape.of(
          "option", "A word of a choice, or an option of a set.", OPTION_CODE, OPTION_SHOWS);

  static final Shape<Object> OPTIONS =
      Shapes.<Object>either(
          list(NAME).of(1, 64).withoutRepetition(),
          names(NameKey.name("a word"), Shapes.<Object>either(KEY, OPTION)),
          RANGE);

  static final Field<Integer> SPECIAL_IS =
      required("is", wholeNumber(0, 1_000_000_000), "0", "The number that it means.");
  static final Field<String> SPECIAL_SHOWS =
      optional("shows", NAME, "never", "What the display shows for it.").usual("what is typed");
  static final MapShape SPECIAL =
      MapShape.of("special", "A number with a way of its own.", SPECIAL_IS, SPECIAL_SHOWS);

  static final Field<Range> FIELD_NUMBER =
      optional("number", RANGE, "10..120", "**Type.** A whole number, as the panel counts.")
          .usual("another type");
  static final Field<Object> FIELD_CHOICE =
      optional("choice", OPTIONS, "[unused, wired, radio]", "**Type.** One of several words.")
          .usual("another type");
  static final Field<Object> FIELD_SET =
      optional("set", OPTIONS, "1..3", "**Type.** Any of several options at once.")
          .usual("another type");
  static final Field<Range> FIELD_DIGITS =
      optional("digits", RANGE, "4", "**Type.** Digits that keep their leading zeros; how many.")
          .usual("another type");
  static final Field<Integer> FIELD_TEXT =
      optional("text", wholeNumber(1, 200), "14", "**Type.** Text; how many characters at most.")
          .usual("another type");
  static final Field<List<String>> FIELD_WORD_LIST =
      optional(
              "word list",
              list(NAME).of(1, 2000).withoutRepetition(),
              "[DOOR, HALL]",
              "**Type.** Words of the panel's own list, which are numbered from 1.")
          .usual("another type");
  static final Field<Range> FIELD_SERIAL =
      optional("serial", RANGE, "8", "**Type.** The serial of a transmitter; how many digits.")
          .usual("another type");
  static final Field<Range> FIELD_CODE =
      optional(
              "code",
              RANGE,
              "4..6",
              "**Type.** A code; how many digits. Codes are held by reference: no digits are ever in a description.")
          .usual("another type");
  static final Field<Integer> FIELD_STEP =
      optional(
              "step",
              wholeNumber(1, 1_000_000),
              "5",
              "Number: distance between neighbours, counted from the smallest.")
          .usual("`1`");
  static final Field<String> FIELD_UNIT =
      optional("unit", text(20), "s", "Number: what one counts. `s`, `min` and `h` are times.")
          .usual("a bare number");
  static final Field<Integer> FIELD_EACH =
      optional(
              "each",
              wholeNumber(1, 1_000_000),
              "10",
              "Number: how many of the unit one stands for, where the panel counts in tens of seconds, say.")
          .usual("`1`");
  static final Field<Integer> FIELD_WIDTH =
      optional(
              "width",
              wholeNumber(0, 20),
              "2",
              "Number: digits shown and typed, with leading zeros.")
          .usual("as many as needed");
  static final Field<Map<String, Fields>> FIELD_SPECIAL =
      optional(
              "special",
              names(NameKey.name("what is typed"), SPECIAL),
              "{ \"00\": { is: 0, shows: never } }",
              "Number: numbers with a way of their own.")
          .usual("none");
  static final Field<FieldType.Written> FIELD_WRITTEN =
      optional(
              "written",
              words(ordered("list", FieldType.Written.LIST, "sum", FieldType.Written.SUM)),
              "sum",
              "Set: how it is typed as a number: the codes one after another, or their sum.")
          .usual("`list`");
  static final Field<Boolean> FIELD_HEXADECIMAL =
      optional("hexadecimal", yesNo(), "yes", "Digits, serial: whether A to F count as digits.")
          .usual("`no`");
  static final Field<String> FIELD_LETTERS =
      optional(
              "letters",
              LINE,
              "\"A-Z0-9 .-\"",
              "Text: the characters it may have; `A-Z` is a range, a hyphen at the end itself.")
          .usual("capital letters, digits and the blank");
  static final Field<Integer> FIELD_MOST =
      optional("most", wholeNumber(1, 40), "3", "Word list: how many words.").usual("`1`");
  static final Field<String> FIELD_DEFAULT =
      optional("default", LINE, "wired", "What a new panel holds. Numbers and choices need it.")
          .usual("nothing, no option, no text");
  static final Field<Object> FIELD_FROM =
      optional(
              "from",
              Shapes.<Object>either(NAME, names(NameKey.name("an option"), NAME)),
              "zone.response",
              "The fact of the site plan that it takes. For a set, options may take yes-or-no facts of their own: `{ rings: zone.chime }`.")
          .usual("the plan never touches it");
  static final Field<Map<String, String>> FIELD_WORDS =
      optional(
              "words",
              names(NameKey.name("a word of the plan"), NAME),
              "{ follower: way through }",
              "The plan's words, each with the field's word for it.")
          .usual("the same words");
  static final Field<Boolean> FIELD_SHORTEN =
      optional(
              "shorten",
              yesNo(),
              "yes",
              "Text: whether a name that is too long may be shortened: vowels go first, from the end, then blanks, then the end.")
          .usual("`no`: too long is a finding");
  static final Field<List<String>> FIELD_ON_CHANGE =
      optional(
              "on change",
              oneOrMore(LINE),
              "reset zone.name",
              "Effects when it is stored with another value than before.")
          .usual("nothing");
  static final Field<String> FIELD_ONLY_WHEN =
      optional(
              "only when",
              LINE,
              "zone.kind = radio",
              "Condition on other fields under which it means anything.")
          .usual("always");
  static final Field<Boolean> FIELD_WRITE_ONLY =
      optional("write only", yesNo(), "yes", "Whether no screen shows what it holds.")
          .usual("`no`");
  static final Field<String> FIELD_NOTE =
      optional("note", longText(2000), "", "Anything to know.").usual("nothing");
  static final MapShape FIELD =
      MapShape.of(
              "field",
              "A field of the memory. Exactly one of the types. The name `panel` heads the fields that there are once; the"
                  + " others stand under the kind of record that has them. Elsewhere a field is called by its name if there is"
                  + " one, and `record.name` if each record has one, such as `zone.kind`.",
              FIELD_NUMBER,
              FIELD_CHOICE,
              FIELD_SET,
              FIELD_DIGITS,
              FIELD_TEXT,
              FIELD_WORD_LIST,
              FIELD_SERIAL,
              FIELD_CODE,
              FIELD_STEP,
              FIELD_UNIT,
              FIELD_EACH,
              FIELD_WIDTH,
              FIELD_SPECIAL,
              FIELD_WRITTEN,
              FIELD_HEXADECIMAL,
              FIELD_LETTERS,
              FIELD_MOST,
              FIELD_DEFAULT,
              FIELD_FROM,
              FIELD_WORDS,
              FIELD_SHORTEN,
              FIELD_ON_CHANGE,
              FIELD_ONLY_WHEN,
              FIELD_WRITE_ONLY,
              FIELD_NOTE)
          .example(
              """
              memory:
                panel:
                  exit-time: { number: 1..25, unit: s, each: 10, default: 6, from: panel.exit time }
                zone:
                  kind: { choice: [unused, wired, radio], default: unused, from: zone.wiring, on change: reset zone.name }
                  acts: { choice: { door: "1", way through: { code: "2", shows: Way thru } }, default: door, from: zone.response, words: { entry-exit: door, follower: way through } }
                  ways: { set: { rings: "1", skips: "2" }, from: { rings: zone.chime, skips: zone.bypass } }
                  name: { text: 12, from: zone.name, shorten: yes }
              """);

  // Entries

  static final Field<Range> TYPED_LENGTH = required("length", RANGE, "1..2", "How many digits.");
  static final Field<String> INTO =
      optional(
              "into",
              NAME,
              "zone.kind",
              "**Goal.** The field that takes the value; `value` is the one at the current location.")
          .usual("another goal");
  static final Field<String> RECORD_TARGET =
      optional(
              "record",
              NAME,
              "zone",
              "**Goal.** The kind of record whose number it is; that record becomes the current one.")
          .usual("another goal");
  static final Field<Boolean> LOCATION_TARGET =
      optional(
              "location",
              yesNo(),
              "yes",
              "**Goal.** The number of a location; `then` usually goes to `location`.")
          .usual("another goal");
  static final Field<Boolean> ASIDE =
      optional("aside", yesNo(), "yes", "**Goal.** Kept aside, to be asked for again.")
          .usual("another goal");
  static final Field<String> AGAIN =
      optional(
              "again",
              NAME,
              "account",
              "**Goal.** Must equal what was kept aside; then this field takes it.")
          .usual("another goal");
  static final Field<String> EQUALS =
      optional(
              "equals",
              NAME,
              "engineer-code",
              "**Goal.** Must equal what this field holds; nothing is stored.")
          .usual("another goal");
  static final Field<Map<String, List<BranchText>>> ITEMS =
      optional(
              "items",
              names(NameKey.name("what is typed"), ACTION),
              "{ \"1\": zones }",
              "**Goal.** A choice by number: each with where it leads.")
          .usual("another goal");
  static final Field<Boolean> TYPED_HEXADECIMAL =
      optional("hexadecimal", yesNo(), "yes", "Whether shift keys work here.").usual("`no`");
  static final Field<Boolean> ADVANCES =
      optional("advances", yesNo(), "yes", "Whether the last digit confirms by itself.")
          .usual("`no`");
  static final Field<String> CONFIRM =
      optional("confirm", KEY, "ok", "Key that confirms.").usual("there is none");
  static final Field<String> ERASE =
      optional("erase", KEY, "back", "Key that takes back the last one.").usual("there is none");
  static final Field<List<BranchText>> THEN =
      optional(
              "then", ACTION, "zone kind", "Where it leads once the value was taken; see *branch*.")
          .usual("the same screen");
  static final Field<List<BranchText>> EMPTY =
      optional(
              "empty",
              ACTION,
              "zone kind",
              "Where it leads when nothing was entered (skip unchanged).")
          .usual("refused");
  static final Field<List<BranchText>> WRONG =
      optional("wrong", ACTION, "ready", "Where it leads when the value is refused.")
          .usual("refused; what was typed is cleared");
  static final MapShape TYPED =
      MapShape.of(
              "digits entry",
              "Digits are typed. Exactly one of the goals.",
              TYPED_LENGTH,
              INTO,
              RECORD_TARGET,
              LOCATION_TARGET,
              ASIDE,
              AGAIN,
              EQUALS,
              ITEMS,
              TYPED_HEXADECIMAL,
              ADVANCES,
              CONFIRM,
              ERASE,
              THEN,
              EMPTY,
              WRONG)
          .example(
              """
              screens:
                zone number: { shows: ["Zone?", "{typed}"], digits: { length: 1..2, record: zone, confirm: ok, then: zone kind } }
                exit:        { shows: ["Exit", "{typed|exit-time}"], digits: { length: 2, into: exit-time, advances: yes, then: top }, keys: { ok: top } }
              """);

  static final MapShape CODED =
      MapShape.of(
              "code entry",
              "A whole code is typed; it counts as one key, `code:` with its reference. Exactly one of the goals `into`, `again`, `equals`, `aside`.",
              INTO,
              AGAIN,
              EQUALS,
              ASIDE,
              CONFIRM,
              THEN,
              EMPTY,
              WRONG)
          .example(
              """
              screens:
                engineer: { programming: no, shows: ["Code", "{typed *}"], code: { equals: engineer-code, then: top, wrong: ready } }
              """);

  static final Field<String> ENTRY_FIELD =
      required(
          "field", NAME, "zone.kind", "The field; `value` is the one at the current location.");
  static final Field<String> NEXT =
      optional("next", KEY, "down", "Key to the next one.").usual("there is none");
  static final Field<String> PREVIOUS =
      optional("previous", KEY, "up", "Key to the one before.").usual("there is none");
  static final Field<Boolean> WRAPS =
      optional("wraps", yesNo(), "yes", "Whether the first follows the last.").usual("`no`");
  static final MapShape SCROLL =
      MapShape.of(
              "scroll entry",
              "A choice or a number is changed step by step from what it holds. `{zone.kind}` on the display follows the steps; confirming without one stores nothing.",
              ENTRY_FIELD,
              NEXT,
              PREVIOUS,
              WRAPS,
              CONFIRM,
              THEN)
          .example(
              """
              screens:
                zone kind: { shows: ["Zone {zone} is", "{zone.kind}"], scroll: { field: zone.kind, next: down, previous: up, confirm: ok, then: zone name } }
              """);

  static final Field<Map<String, List<BranchText>>> MENU_ITEMS =
      required(
          "items",
          names(NameKey.name("what is shown"), ACTION),
          "{ Zones: zone number }",
          "What is shown for each, and where it leads.");
  static final MapShape MENU =
      MapShape.of(
              "menu",
              "A menu whose items are moved through and confirmed. It starts at the first; `{cursor}` on the display shows the present one.",
              MENU_ITEMS,
              NEXT,
              PREVIOUS,
              WRAPS,
              CONFIRM)
          .example(
              """
              screens:
                top: { shows: ["> {cursor}"], menu: { items: { Zones: zone number, Save: leave saving }, next: down, previous: up, wraps: yes, confirm: ok } }
              """);

  static final Field<Boolean> AT_ONCE =
      optional("at once", yesNo(), "yes", "Whether each press stores.")
          .usual("`no`: confirming does");
  static final MapShape SWITCH =
      MapShape.of(
          "switch entry",
          "Options of a set are switched on and off by the key that types their code, starting from what the field holds.",
          ENTRY_FIELD,
          AT_ONCE,
          CONFIRM,
          THEN);
  static final Field<String> SWITCH_KEY =
      required("switch", KEY, "star", "Key that switches the option under the cursor.");
  static final MapShape SWITCH_AT_CURSOR =
      MapShape.of(
          "cursor switch entry",
          "Options of a set are moved to and switched. `{cursor}` shows the present one.",
          ENTRY_FIELD,
          NEXT,
          PREVIOUS,
          WRAPS,
          SWITCH_KEY,
          CONFIRM,
          THEN);

  static final Field<Boolean> FROM_CURRENT =
      optional(
              "from current",
              yesNo(),
              "yes",
              "Whether typing goes on at the end of what the field holds.")
          .usual("`no`: it starts anew");
  static final Field<String> ADVANCE =
      optional("advance", KEY, "right", "Key that ends the letter being tapped.")
          .usual("there is none");
  static final Field<String> CLEAR =
      optional("clear", KEY, "star", "Key that empties the text.").usual("there is none");
  static final MapShape LETTERED =
      MapShape.of(
              "letters entry",
              "Text by multi-tap with the letters under `typing`.",
              ENTRY_FIELD,
              FROM_CURRENT,
              ADVANCE,
              ERASE,
              CLEAR,
              CONFIRM,
              THEN,
              EMPTY)
          .example(
              """
              screens:
                zone name: { shows: ["{zone} name", "{typed|zone.name}"], letters: { field: zone.name, advance: right, erase: left, confirm: ok, then: zone number, empty: zone number } }
              """);

  static final Field<Integer> WORD_DIGITS =
      required("digits", wholeNumber(1, 6), "3", "How many digits a word's number has.");
  static final MapShape WORD_BY_NUMBER =
      MapShape.of(
          "word number entry",
          "Words of a word list, each by its number; they start anew.",
          ENTRY_FIELD,
          WORD_DIGITS,
          ERASE,
          CONFIRM,
          THEN,
          EMPTY);
  static final Field<String> ADD =
      required("add", KEY, "star", "Key that adds the word under the cursor.");
  static final MapShape WORD_BY_SCROLL =
      MapShape.of(
          "word scroll entry",
          "Words of a word list, moved to and added; they start anew. `{cursor}` shows the present word.",
          ENTRY_FIELD,
          NEXT,
          PREVIOUS,
          WRAPS,
          ADD,
          ERASE,
          CONFIRM,
          THEN,
          EMPTY);

  static final Field<String> HEAR_SERIAL =
      required("serial", NAME, "zone.unit", "Field that takes the serial.");
  static final Field<String> HEAR_PART =
      optional(
              "part",
              NAME,
              "zone.part",
              "Field that takes the input that sent: a choice with the same words.")
          .usual("the panel does not tell inputs apart");
  static final Field<Span> HEAR_WAIT =
      required("wait", TIME, "90 s", "How long it listens; idle time does not run meanwhile.");
  static final Field<Integer> HEAR_TIMES =
      optional("times", wholeNumber(1, 9), "2", "How many times in a row the same must be heard.")
          .usual("`1`");
  static final Field<List<BranchText>> HEAR_KNOWN =
      optional(
              "known",
              ACTION,
              "zone twice",
              "Where it leads when another record holds that transmitter (and input) already; `{known}` shows which.")
          .usual("refused");
  static final Field<List<BranchText>> HEAR_EXPIRED =
      required("expired", ACTION, "zone number", "Where it leads when nothing was heard.");
  static final MapShape HEAR =
      MapShape.of(
              "hear entry",
              "Waits for a transmitter and learns it.",
              HEAR_SERIAL,
              HEAR_PART,
              HEAR_WAIT,
              HEAR_TIMES,
              THEN,
              HEAR_KNOWN,
              HEAR_EXPIRED)
          .example(
              """
              screens:
                listen: { shows: ["{zone} send now", "{zone.unit}"], hear: { serial: zone.unit, part: zone.part, wait: 90 s, then: zone number, known: zone twice, expired: zone number } }
              """);

  // Screens

  static final Field<Span> AFTER_WAIT =
      required("wait", TIME, "2 s", "How long no key was pressed.");
  static final Field<List<BranchText>> AFTER_THEN =
      required("then", ACTION, "top", "Where it leads then.");
  static final MapShape AFTER =
      MapShape.of("after", "What a screen does by itself.", AFTER_WAIT, AFTER_THEN);

  static final Field<Boolean> SCREEN_PROGRAMMING =
      optional("programming", yesNo(), "no", "Whether programming is open here.").usual("`yes`");
  static final Field<List<String>> SCREEN_SHOWS =
      optional(
              "shows",
              list(LINE).of(1, 20),
              "[\"Zone {zone:2}\", \"{zone.kind}\"]",
              "Lines on text keypads; see the language of lines.")
          .usual("it decides");
  static final Field<Map<String, List<String>>> SCREEN_ON =
      optional(
              "on",
              names(NameKey.name("a keypad"), list(LINE).of(1, 20)),
              "{ Stub: [\"ZONE {zone:2}\"] }",
              "Lines on a keypad that shows something else. A keypad of words or lamps that is missing here shows nothing.")
          .usual("nothing there");
  static final Field<Map<String, List<BranchText>>> SCREEN_KEYS =
      optional(
              "keys",
              names(NameKey.name("a key"), ACTION),
              "{ back: top }",
              "Keys with a meaning of their own, and where they lead; see *branch*.")
          .usual("none");
  static final Field<Fields> SCREEN_DIGITS =
      optional("digits", TYPED, "", "**Entry.** Digits.").usual("no such entry");
  static final Field<Fields> SCREEN_CODE =
      optional("code", CODED, "", "**Entry.** A code.").usual("no such entry");
  static final Field<Fields> SCREEN_SCROLL =
      optional("scroll", SCROLL, "", "**Entry.** A choice or a number step by step.")
          .usual("no such entry");
  static final Field<Fields> SCREEN_MENU =
      optional("menu", MENU, "", "**Entry.** A menu.").usual("no such entry");
  static final Field<Fields> SCREEN_SWITCH =
      optional("switch", SWITCH, "", "**Entry.** Options by the key of their code.")
          .usual("no such entry");
  static final Field<Fields> SCREEN_SWITCH_AT_CURSOR =
      optional("switch at cursor", SWITCH_AT_CURSOR, "", "**Entry.** Options by moving to them.")
          .usual("no such entry");
  static final Field<Fields> SCREEN_LETTERS =
      optional("letters", LETTERED, "", "**Entry.** Text by multi-tap.").usual("no such entry");
  static final Field<Fields> SCREEN_WORD_NUMBER =
      optional(
              "word by number",
              WORD_BY_NUMBER,
              "",
              "**Entry.** Words of the panel's list by number.")
          .usual("no such entry");
  static final Field<Fields> SCREEN_WORD_SCROLL =
      optional(
              "word by scroll",
              WORD_BY_SCROLL,
              "",
              "**Entry.** Words of the panel's list by moving to them.")
          .usual("no such entry");
  static final Field<Fields> SCREEN_HEAR =
      optional("hear", HEAR, "", "**Entry.** A transmitter.").usual("no such entry");
  static final Field<Fields> SCREEN_AFTER =
      optional("after", AFTER, "", "What it does by itself when no key comes.").usual("it waits");
  static final Field<List<BranchText>> SCREEN_DECIDE =
      optional(
              "decide",
              ACTION,
              "",
              "A screen that is never seen: on arrival it leads on at once. It has nothing else.")
          .usual("it is seen");
  static final Field<String> SCREEN_NOTE =
      optional("note", longText(2000), "", "Anything to know.").usual("nothing");
  static final MapShape SCREEN =
      MapShape.of(
          "screen",
          "A place in the dialogue. At most one entry. Keys that neither `keys` nor the entry names are refused with a beep."
              + " The words `stay`, `location`, `next location`, `previous location` and everything that starts with `leave` are no names of screens.",
          SCREEN_PROGRAMMING,
          SCREEN_SHOWS,
          SCREEN_ON,
          SCREEN_KEYS,
          SCREEN_DIGITS,
          SCREEN_CODE,
          SCREEN_SCROLL,
          SCREEN_MENU,
          SCREEN_SWITCH,
          SCREEN_SWITCH_AT_CURSOR,
          SCREEN_LETTERS,
          SCREEN_WORD_NUMBER,
          SCREEN_WORD_SCROLL,
          SCREEN_HEAR,
          SCREEN_AFTER,
          SCREEN_DECIDE,
          SCREEN_NOTE);

  static final Field<Range> LOCATION_NUMBERS =
      required("numbers", RANGE, "101..130", "Numbers that are typed to go there.");
  static final Field<Integer> LOCATION_EVERY =
      optional("every", wholeNumber(1, 100_000), "10", "Distance from one number to the next.")
          .usual("`1`");
  static final Field<String> LOCATION_FIELD =
      required("field", NAME, "zone.kind", "The field there.");
  static final Field<Integer> LOCATION_FIRST =
      optional(
              "first record",
              wholeNumber(0, 1_000_000),
              "1",
              "Record of the first number; the others follow.")
          .usual("the first of its kind");
  static final Field<String> LOCATION_SCREEN =
      required(
          "screen",
          reference("a screen", "/screens/*"),
          "by digits",
          "Screen that shows and changes it, by the name `value`.");
  static final MapShape LOCATION =
      MapShape.of(
              "location",
              "Numbered locations: where a panel is programmed by going to a number.",
              LOCATION_NUMBERS,
              LOCATION_EVERY,
              LOCATION_FIELD,
              LOCATION_FIRST,
              LOCATION_SCREEN)
          .example(
              """
              locations:
                - { numbers: 101..108, field: zone.kind, screen: by digits }
                - { numbers: 210..280, every: 10, field: zone.ways, first record: 1, screen: by options }
                - { numbers: 900, field: exit-time, screen: by digits }
              """);

  // Leaving and manners

  static final Shape<Leaving.Saves> SAVES =
      words(
          ordered(
              "nothing",
              Leaving.Saves.NOTHING,
              "stored",
              Leaving.Saves.CONFIRMED,
              "typed too",
              Leaving.Saves.TYPED_TOO));
  static final Field<Leaving.Saves> LEAVING_KEEPS =
      required(
          "keeps",
          SAVES,
          "stored",
          "What becomes of what was entered: lost, what was stored is kept, or even what was just being typed.");
  static final Field<String> GOES =
      required("goes", reference("a screen", "/screens/*"), "ready", "Screen afterwards.");
  static final Field<Span> LEAVING_RESTART =
      optional("restart", TIME, "20 s", "How long the panel is deaf afterwards.").usual("`0 s`");
  static final Field<Boolean> LOCKS =
      optional("locks", yesNo(), "yes", "Whether programming is locked from then on.")
          .usual("`no`");
  static final Field<Boolean> LEAVING_SAFE =
      required(
          "safe",
          yesNo(),
          "yes",
          "Whether it is the documented way, which loses and locks nothing.");
  static final MapShape LEAVING =
      MapShape.of(
          "way of leaving",
          "A way out of programming that keys lead to by `leave` and its name.",
          LEAVING_KEEPS,
          GOES,
          LEAVING_RESTART,
          LOCKS,
          LEAVING_SAFE);

  static final Field<Span> IDLE_AFTER = required("after", TIME, "75 s", "Time without a key.");
  static final Field<Leaving.Saves> IDLE_KEEPS =
      required("keeps", SAVES, "nothing", "What becomes of what was entered.");
  static final MapShape IDLE =
      MapShape.of(
          "idle",
          "How programming drops out when left alone.",
          IDLE_AFTER,
          IDLE_KEEPS,
          GOES,
          LOCKS);

  static final Field<Leaving.Saves> POWER_KEEPS =
      optional("keeps", SAVES, "nothing", "What becomes of what was entered when power fails.")
          .usual("`nothing`");
  static final Field<Span> POWER_START =
      optional("start", TIME, "10 s", "How long the panel is deaf when power comes back.")
          .usual("`0 s`");
  static final MapShape POWER =
      MapShape.of("power", "What failing power does.", POWER_KEEPS, POWER_START);

  // The whole

  static final Field<Integer> VERSION =
      required("keenward-panel", wholeNumber(1, 1), "1", "Version of this format.");
  static final Field<String> PANEL =
      required("panel", NAME, "Dunlin 40", "The panel's name; a site plan calls it so.");
  static final Field<String> FAMILY =
      required(
          "family",
          words(
              ordered(
                  "menu tree",
                  "menu tree",
                  "numbered locations",
                  "numbered locations",
                  "prompted wizard",
                  "prompted wizard",
                  "other",
                  "other")),
          "menu tree",
          "Family of dialogue, for people; it decides nothing.");
  static final Field<String> ABOUT =
      optional(
              "about",
              longText(4000),
              "",
              "Where the description comes from, and what was not tried.")
          .usual("nothing");
  static final Field<Map<String, Fields>> KEYPADS =
      required(
          "keypads", names(NameKey.name("a keypad"), KEYPAD), "", "Kinds of keypad; see *keypad*.");
  static final Field<Fields> TYPING_PART =
      optional("typing", TYPING, "", "What keys type; see *typing*.")
          .usual("digits type themselves");
  static final Field<Fields> CAPACITY_PART =
      optional("capacity", CAPACITY, "", "What the panel can connect and supply; see *capacity*.");
  static final Field<Map<String, Fields>> RECORDS =
      optional(
              "records",
              names(NameKey.name("a kind of record", "panel"), RECORD),
              "",
              "Kinds of numbered record; see *record*.")
          .usual("none");
  static final Field<Map<String, Map<String, Fields>>> MEMORY =
      required(
          "memory",
          names(NameKey.name("a kind of record, or panel"), names(NameKey.name("a field"), FIELD)),
          "",
          "Fields by the kind of record that has them; see *field*.");
  static final Field<Map<String, Fields>> SCREENS =
      required("screens", names(NameKey.name("a screen"), SCREEN), "", "Screens; see *screen*.");
  static final Field<List<Fields>> LOCATIONS =
      optional("locations", list(LOCATION), "", "Numbered locations; see *location*.")
          .usual("none");
  static final Field<String> START =
      required(
          "start",
          reference("a screen", "/screens/*"),
          "ready",
          "The screen when nobody is programming.");
  static final Field<Map<String, Fields>> LEAVING_PART =
      required(
          "leaving",
          names(NameKey.name("a way of leaving", "idle", "power lost"), LEAVING),
          "",
          "Ways of leaving; see *way of leaving*.");
  static final Field<Boolean> KEPT =
      required(
          "kept",
          words(ordered("at once", Boolean.TRUE, "when told", Boolean.FALSE)),
          "when told",
          "Whether a stored field survives at once, or only by the effect `keep` or by a way of leaving that keeps it.");
  static final Field<Fields> IDLE_PART =
      optional("idle", IDLE, "", "Dropping out when left alone; see *idle*.")
          .usual("it never does");
  static final Field<Fields> POWER_PART =
      optional("power", POWER, "", "What failing power does; see *power*.")
          .usual("nothing is kept");
  static final Field<List<String>> WHILE_OPEN =
      optional(
          "while open",
          list(LINE),
          "[burglary zones are not watched]",
          "What the panel does not do while programming is open.");
  static final Field<List<String>> RECOVERY =
      optional(
              "recovery",
              list(LINE),
              "",
              "How to get back in when locked out: steps in order, with what a return to factory state keeps and loses. Mains work is for a licensed person.")
          .usual("none");

  /** The root of the format. */
  public static final MapShape ROOT =
      MapShape.of(
          "panel description",
          "What a control panel can hold, and how its programming dialogue goes.",
          VERSION,
          PANEL,
          FAMILY,
          ABOUT,
          KEYPADS,
          TYPING_PART,
          CAPACITY_PART,
          RECORDS,
          MEMORY,
          KEPT,
          START,
          SCREENS,
          LOCATIONS,
          LEAVING_PART,
          IDLE_PART,
          POWER_PART,
          WHILE_OPEN,
          RECOVERY);

  private static Wiring wiring(String word) {
    for (Wiring wiring : Wiring.values()) {
      if (wiring.word().equals(word)) {
        return wiring;
      }
    }
    throw new IllegalArgumentException(word);
  }

  private static Map<String, PlanRecords> planRecords() {
    Map<String, PlanRecords> words = new LinkedHashMap<>();
    for (PlanRecords records : PlanRecords.values()) {
      words.put(records.word(), records);
    }
    return words;
  }

  private static <T> Map<String, T> ordered(String first, T one, String second, T two) {
    Map<String, T> words = new LinkedHashMap<>();
    words.put(first, one);
    words.put(second, two);
    return words;
  }

  private static <T> Map<String, T> ordered(
      String first, T one, String second, T two, String third, T three) {
    Map<String, T> words = ordered(first, one, second, two);
    words.put(third, three);
    return words;
  }

  private static <T> Map<String, T> ordered(
      String first, T one, String second, T two, String third, T three, String fourth, T four) {
    Map<String, T> words = ordered(first, one, second, two, third, three);
    words.put(fourth, four);
    return words;
  }
}
