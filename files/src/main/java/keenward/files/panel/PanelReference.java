package keenward.files.panel;

import java.util.stream.Collectors;
import keenward.core.dialogue.planned.PlanFact;
import keenward.core.dialogue.planned.PlanFacts;
import keenward.files.shape.JsonSchema;
import keenward.files.shape.ReferencePage;

/** The published references of panel descriptions and found memories. */
public final class PanelReference {
  /** A small description with everything that a description needs. */
  public static final String EXAMPLE =
      """
      keenward-panel: 1
      panel: Example 4
      family: menu tree
      keypads:
        main: { shows: text, lines: 2, columns: 20, keys: ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", ok, back, more], long keys: { hold ok: 2 s }, lag: 0.3 s }
      typing:
        letters: { "2": "AB2", "3": "CD3", "4": "EF4" }
        tap pause: 1.5 s
      records:
        zone: { numbers: 1..4, from: zones }
      memory:
        panel:
          code: { code: 4, default: as delivered, write only: yes }
          exit-time: { number: 10..90, step: 10, unit: s, default: 30, from: panel.exit time }
        zone:
          task: { choice: [off, door, inside, fire], default: off, from: zone.response, words: { entry-exit: door, instant: inside } }
          name: { text: 8, letters: "A-F2-4", from: zone.name, shorten: yes, only when: zone.task != off }
      kept: when told
      start: ready
      screens:
        ready:       { programming: no, shows: [Ready], keys: { hold ok: code } }
        code:        { programming: no, shows: [Code, "{typed *}"], code: { equals: code, then: top, wrong: ready } }
        top:         { shows: ["> {cursor}"], menu: { items: { Zones: zone number, Exit time: exit time, New code: new code, Save: leave saving }, next: more, wraps: yes, confirm: ok }, keys: { back: leave losing } }
        zone number: { shows: [Zone?, "{typed}"], digits: { length: 1, record: zone, advances: yes, then: zone task }, keys: { back: top } }
        zone task:
          shows: ["Zone {zone}", "{zone.task}"]
          scroll:
            field: zone.task
            next: more
            wraps: yes
            confirm: ok
            then:
              - { when: zone.task = off, do: [reset zone.name, keep], go: zone number }
              - { go: zone name }
          keys: { back: zone number }
        zone name:   { shows: ["Zone {zone} name", "{typed|zone.name}"], letters: { field: zone.name, advance: more, confirm: ok, then: { do: keep, go: zone number }, empty: zone number }, keys: { back: zone task } }
        exit time:   { shows: [Seconds to leave, "{typed|exit-time}"], digits: { length: 2, into: exit-time, confirm: ok, then: top, empty: top }, keys: { back: top } }
        new code:    { shows: [New code, "{typed *}"], code: { into: code, confirm: ok, then: top, empty: top }, keys: { back: top } }
      leaving:
        saving: { keeps: stored, goes: ready, safe: yes }
        losing: { keeps: nothing, goes: ready, safe: no }
      idle: { after: 60 s, keeps: nothing, goes: ready }
      """;

  private static final String INTRODUCTION =
      """
      A panel description is one YAML file, `NAME.panel.yaml`, in UTF-8. It says what a control panel can hold and how its
      programming dialogue goes, so that a site plan can be turned into keystrokes, and the keystrokes can be proved before
      anyone presses them. Write it from the panel's manual and an hour at its keypad. This page is generated from the shape
      that the reader itself uses; editors can use [panel-description.schema.json](panel-description.schema.json).

      The YAML is small and strict, as for the [site plan](site-plan.md): no anchors, tags, tabs or names given twice; `yes`
      and `no` are the words for what is so or not; keys called by digits, and lines with braces, stand in quotation marks.

      ## A whole description

      ```yaml
      EXAMPLE```

      ## How it is understood

      A description is a machine. Its state is the screen, what is being typed, the current record of each kind, the memory
      as entered and the memory that survives, the time, and how programming was left.

      - **Keys.** A key does what `keys` of the screen says; else it belongs to the screen's entry; else it is refused, and
        nothing changes. A key pressed before the keypad's `lag` is over is lost.
      - **Where a key leads** is a list of branches: the first whose `when` holds is taken, its effects are done in order,
        then it goes. Where none holds, the key is refused. An effect that is impossible (there is no next record) refuses
        the key, and nothing changes. Coming to a screen, even the same, clears what was typed.
      - **Typing a value.** It is stored when it is confirmed and right. A number must be in range and on its step; a choice
        is typed by its `code`; a set by the codes of its options one after another (`0` for none), or as their sum.
        Confirming with nothing typed goes where `empty` says, and stores nothing. A value that is refused goes where `wrong`
        says; without it, what was typed is cleared and the screen stays.
      - **Two memories.** What is stored is entered first. With `kept: at once` it survives from then on; with `kept: when
        told` it survives from the next effect `keep`, or from leaving by a way that keeps. Idle time, power failure and ways
        of leaving say for themselves what they keep. Leaving makes the first record of each kind the current one.
      - **Codes** are typed as a whole and known by a reference; their digits stand in no file. `default: as delivered` names
        the code that a new panel has.
      - **Time.** Idle time counts from the last key while programming is open, and stands still while a screen listens for a
        transmitter. A restart makes the panel deaf; a keypad may take longer than the panel.
      - **Learning.** A screen that listens takes the first transmission whose input the field `part` has a word for. Is the
        serial (and input) held by another record, nothing is stored.

      ## Destinations

      | text | leads to |
      | --- | --- |
      | the name of a screen | that screen |
      | `stay` | the same screen anew |
      | `leave NAME` | out of programming, by that way of leaving |
      | `location` | the screen of the current location |
      | `next location`, `previous location` | the location with the next higher or lower number, on its screen |

      ## Conditions

      | text | holds when |
      | --- | --- |
      | `zone.kind = wired` | the field of the current record holds that |
      | `zone.kind = wired \\| radio` | it holds one of these |
      | `zone.kind != unused` | it holds another |
      | `record zone = 4` | zone 4 is the current one |
      | `within 60 s of power-up` | power came back no longer ago |
      | `locked` | programming is locked after a wrong way of leaving |
      | `keypad = NAME` | the key was pressed on that kind of keypad |

      `not` before one turns it round; several are joined by `and` or by `or`, not by both. Values are written as under
      [field](#field): numbers as the panel counts, words of choices, options joined by `+`, and `none` for no option, no
      text, no digits, no transmitter, no code.

      ## Effects

      | text | does |
      | --- | --- |
      | `set zone.kind = wired` | stores that value |
      | `reset zone.name` | stores what a new panel holds |
      | `reset record zone` | the same for every field of the current zone |
      | `reset all`, `reset all except code, account` | the same for the whole memory |
      | `next zone`, `previous zone` | moves to the neighbour; refused at the end |
      | `next zone around`, `previous zone around` | the same, going round |
      | `choose zone 4` | makes zone 4 the current one |
      | `choose known zone` | makes the zone current that holds the transmitter just heard |
      | `keep` | lets everything entered survive |
      | `drop` | gives up everything entered since the last `keep` |
      | `unlock` | ends a lock on programming |

      Effects under `on change` of a field are done whenever it is stored with another value than before.

      ## Lines of a display

      | text | shows |
      | --- | --- |
      | `{zone.kind}`, `{exit-time}` | what the field holds (`shows` of a word; `-` for nothing) |
      | `{zone}` | the number of the current zone |
      | `{typed}`, `{typed *}` | what is being typed, or a star for each character |
      | `{typed\\|zone.name}` | what is being typed; before anything is, what the field holds |
      | `{cursor}` | the item, option or word moved to |
      | `{known}` | the record that holds the transmitter just heard |
      | `{location}`, `{value}` | the number of the current location; what its field holds |
      | `{}` | nothing: an empty line |

      `{zone:2}` shows at least two characters: numbers get zeros in front, other text blanks behind. Everything else is shown
      as written. A keypad of words or lamps shows only its own words and digits, as `on` of the screen says; where `on` says
      nothing about it, the technician is blind there.

      ## Facts of a site plan

      What may follow `from:`. A field of a kind of record can take a fact of what that kind stands for (`from:` at the
      record); a field that there is once, a fact of the system. What the plan states and no field takes, or no word of a
      field says, is reported as something that the panel cannot express; what the plan says nothing about is left as found.

      FACTS

      ## What is proved

      `Linter` proves, whatever the memory holds: every screen can be reached; every field is written by some screen and
      shown by one, or is `write only`; from every screen a way leads to a way of leaving that is `safe`; no key means two
      things on one screen; every text fits its display at its longest; no branch, menu item or way of leaving is dead.
      """;

  private static final String FOUND_INTRODUCTION =
      """
      What a panel was found to hold is one YAML file, `NAME.found.yaml`, in UTF-8; an order is made from it by `--from FILE`.
      This page is generated from the shape that the reader itself uses; editors can use
      [found-memory.schema.json](found-memory.schema.json). Fields, records and values are those of the panel's
      [description](panel-description.md).
      """;

  private PanelReference() {}

  /** The reference page of panel descriptions, in Markdown. */
  public static String panelPage() {
    return ReferencePage.of(
        PanelDescriptionShape.ROOT,
        "The panel description file",
        INTRODUCTION.replace("EXAMPLE", EXAMPLE).replace("FACTS", facts()));
  }

  /** The JSON Schema of panel descriptions. */
  public static String panelSchema() {
    return JsonSchema.of(
        PanelDescriptionShape.ROOT,
        "urn:keenward:panel-description:1",
        "Keenward panel description");
  }

  /** The reference page of found memories, in Markdown. */
  public static String foundPage() {
    return ReferencePage.of(FoundMemoryShape.ROOT, "The found memory file", FOUND_INTRODUCTION);
  }

  /** The JSON Schema of found memories. */
  public static String foundSchema() {
    return JsonSchema.of(
        FoundMemoryShape.ROOT, "urn:keenward:found-memory:1", "Keenward found memory");
  }

  private static String facts() {
    return "| fact | stated for | is | meaning |\n| --- | --- | --- | --- |\n"
        + PlanFacts.ALL.stream().map(PanelReference::fact).collect(Collectors.joining("\n"));
  }

  private static String fact(PlanFact fact) {
    String words = fact.words().isEmpty() ? "" : ": `" + String.join("`, `", fact.words()) + "`";
    String kind =
        switch (fact.kind()) {
          case WORD -> "a word" + words;
          case WORDS -> "any of several words" + words;
          case YES_NO -> "`yes` or `no`";
          case NUMBERS -> "any of several numbers";
          case NUMBER -> "a whole number";
          case TIME -> "a time";
          case TEXT -> "a text";
          case CODE -> "a code, by reference";
        };
    String records = fact.records().map(each -> each.word()).orElse("the system");
    return "| `" + fact.path() + "` | " + records + " | " + kind + " | " + fact.meaning() + " |";
  }
}
