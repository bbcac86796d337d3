package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.CrossZone;
import keenward.core.plan.Fact;
import keenward.core.plan.KeypadLockOut;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.PanelSettings;
import keenward.core.plan.Setting;
import keenward.core.quantities.Resistance;
import keenward.core.quantities.Span;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** The control panel and its system-wide settings. */
final class PanelSection {

  private static final Shape<Span> SPAN = Shapes.quantity(Span::parse, Span.units());

  static final Field<Integer> LOCK_OUT_AFTER =
      required(
          "after",
          Shapes.wholeNumber(0, 99),
          "6",
          "Number of wrong codes after which a keypad stops listening; 0 never.");
  static final Field<Fact<Span>> LOCK_OUT_FOR =
      optional("for", Common.span(), "90 s", "How long it stops.")
          .usual(usual(Setting.LOCK_OUT_PERIOD));
  static final MapShape LOCK_OUT =
      MapShape.of(
          "keypad lock-out", "When a keypad stops listening.", LOCK_OUT_AFTER, LOCK_OUT_FOR);

  static final Field<List<Integer>> CROSS_ZONES =
      required(
          "zones",
          Shapes.list(Common.zone()).of(2, 99).withoutRepetition(),
          "[2, 4]",
          "Zones of which two have to see something.");
  static final Field<Fact<Span>> CROSS_WINDOW =
      optional("window", Common.span(), "60 s", "Within which time.");
  static final MapShape CROSS_ZONE =
      MapShape.of(
          "cross-zone group",
          "Zones of which two have to see something within a window before a burglary is reported.",
          CROSS_ZONES,
          CROSS_WINDOW);

  static final Field<Fact<String>> DESCRIPTION =
      optional(
          "description",
          Common.line(),
          "Someword 40",
          "Name of a panel description, or a path that ends in .panel.yaml.");
  static final Field<Fact<String>> ROOM =
      optional("room", Common.room().orUnknown(), "Workshop", "Room it is in.");
  static final Field<Fact<String>> SUPPLY =
      optional("supply", Common.supply().orUnknown(), "Main", "Supply that feeds it.");
  static final Field<Map<Integer, Span>> ENTRY_DELAYS =
      optional(
              Setting.ENTRY_DELAY.word(),
              Shapes.<Map<Integer, Span>>either(
                  SPAN.as(span -> Map.of(1, span)),
                  Shapes.names(NameKey.number("the number of an entry delay", 1), SPAN)),
              "{ 1: 30 s, 2: 90 s }",
              "Entry delays by number; a plain time is number 1.")
          .usual(usual(Setting.ENTRY_DELAY));
  static final Field<Fact<Span>> EXIT_TIME =
      setting(Setting.EXIT_TIME, Common.span(), "60 s", "Time to leave after arming.");
  static final Field<Fact<Span>> SOUNDER_TIME =
      setting(Setting.SOUNDER_TIME, Common.span(), "5 min", "How long sounders run.");
  static final Field<Fact<Span>> ABORT_WINDOW =
      setting(
          Setting.ABORT_WINDOW,
          Common.span(),
          "30 s",
          "How long a burglary signal is held back so that a disarming can stop it; `0 s` sends at once.");
  static final Field<Fact<Span>> CANCEL_WINDOW =
      setting(
          Setting.CANCEL_WINDOW,
          Common.span(),
          "5 min",
          "How long after a sent alarm a disarming sends a cancel.");
  static final Field<Fact<Span>> RECENT_CLOSING_WINDOW =
      setting(
          Setting.RECENT_CLOSING_WINDOW,
          Common.span(),
          "2 min",
          "An alarm this soon after arming is reported as recent closing.");
  static final Field<Fact<Integer>> SWINGER_LIMIT =
      setting(
          Setting.SWINGER_LIMIT,
          Shapes.wholeNumber(0, 99).orUnknown(),
          "2",
          "Alarms of one zone that are reported in one arming period; 0 reports all.");
  static final Field<Fact<Boolean>> EXIT_RESTART =
      setting(
          Setting.EXIT_RESTART,
          Common.yesNo(),
          "yes",
          "Whether re-opening the exit door restarts the exit time, once.");
  static final Field<Fact<Boolean>> AUTOMATIC_STAY =
      setting(
          Setting.AUTOMATIC_STAY,
          Common.yesNo(),
          "yes",
          "Whether arming away without leaving arms stay.");
  static final Field<Fact<Span>> MAINS_FAILURE_REPORT =
      setting(
          Setting.MAINS_FAILURE_REPORT,
          Common.span(),
          "60 min",
          "How long mains may be absent before it is reported.");
  static final Field<Fact<Span>> RADIO_SUPERVISION =
      setting(
          Setting.RADIO_SUPERVISION,
          Common.span(),
          "24 h",
          "How long a radio device may be silent.");
  static final Field<Fact<KeypadLockOut>> KEYPAD_LOCK_OUT =
      optional(
              "keypad lock-out",
              LOCK_OUT.as(PanelSection::lockOut).orUnknown(),
              "{ after: 6, for: 90 s }",
              "When a keypad stops listening after wrong codes.")
          .usual("after " + usual(Setting.LOCK_OUT_AFTER));
  static final Field<List<CrossZone>> CROSS_ZONE_GROUPS =
      optional(
              "cross zones",
              Shapes.list(CROSS_ZONE.as(PanelSection::crossZone)),
              "[{ zones: [2, 4], window: 60 s }]",
              "Groups of zones that confirm each other.")
          .usual("none");

  static final Field<List<Resistance>> SINGLE_THRESHOLDS =
      optional(
          LoopWiring.SINGLE_RESISTOR.word(),
          rising(2),
          "[1 kohm, 8 kohm]",
          "Two: short to at rest, at rest to open.");
  static final Field<List<Resistance>> DOUBLE_THRESHOLDS =
      optional(
          LoopWiring.DOUBLE_RESISTOR.word(),
          rising(3),
          "[1 kohm, 7 kohm, 14 kohm]",
          "Three: short to at rest, at rest to alarm, alarm to cut.");
  static final Field<List<Resistance>> TRIPLE_THRESHOLDS =
      optional(
          LoopWiring.TRIPLE_RESISTOR.word(),
          rising(5),
          "[500 ohm, 1.5 kohm, 3 kohm, 4.5 kohm, 8 kohm]",
          "Five: between short, at rest, alarm, fault, both, cut in the order of their resistances.");
  static final MapShape LOOP_THRESHOLDS_SHAPE =
      MapShape.of(
          "loop thresholds",
          "Resistances at which the panel reads another state of a loop, rising, as its manual gives them.",
          SINGLE_THRESHOLDS,
          DOUBLE_THRESHOLDS,
          TRIPLE_THRESHOLDS);
  static final Field<Fields> LOOP_THRESHOLDS =
      optional(
          "loop thresholds",
          LOOP_THRESHOLDS_SHAPE,
          "{ double resistor: [1 kohm, 7 kohm, 14 kohm] }",
          "At which resistances the panel reads another state of a loop.");

  static final MapShape SHAPE =
      MapShape.of(
              "panel",
              "The control panel and its system-wide settings. What is left out takes the default of the regime, then of"
                  + " the panel description, then of the program; `plan show --with-defaults` shows what is in force and"
                  + " why.",
              DESCRIPTION,
              ROOM,
              SUPPLY,
              ENTRY_DELAYS,
              EXIT_TIME,
              SOUNDER_TIME,
              ABORT_WINDOW,
              CANCEL_WINDOW,
              RECENT_CLOSING_WINDOW,
              SWINGER_LIMIT,
              EXIT_RESTART,
              AUTOMATIC_STAY,
              MAINS_FAILURE_REPORT,
              RADIO_SUPERVISION,
              KEYPAD_LOCK_OUT,
              CROSS_ZONE_GROUPS,
              LOOP_THRESHOLDS)
          .example(
              """
              panel:
                description: Someword 40
                entry delays: { 1: 30 s, 2: 90 s }
                exit time: 60 s
                sounder time: 5 min
                abort window: 30 s
                cancel window: 5 min
                recent closing window: 2 min
                swinger limit: 2
                exit restart: yes
                automatic stay: yes
                mains failure report: 60 min
                radio supervision: 24 h
                keypad lock-out: { after: 6, for: 90 s }
                cross zones:
                  - { zones: [2, 4], window: 60 s }
              zones:
                2: { name: Shop motion, response: instant }
                4: { name: Store motion, response: instant }
              """);

  private PanelSection() {}

  private static Shape<List<Resistance>> rising(int count) {
    return Shapes.list(Shapes.quantity(Resistance::parse, Resistance.units())).of(count, count);
  }

  private static <T> Field<T> setting(
      Setting setting, Shape<T> shape, String example, String meaning) {
    return optional(setting.word(), shape, example, meaning).usual(usual(setting));
  }

  private static String usual(Setting setting) {
    return "that of the regime, the panel, or else " + setting.words(setting.programDefault());
  }

  private static KeypadLockOut lockOut(Fields fields) {
    return new KeypadLockOut(fields.get(LOCK_OUT_AFTER), fields.fact(LOCK_OUT_FOR));
  }

  private static CrossZone crossZone(Fields fields) {
    return new CrossZone(fields.get(CROSS_ZONES), fields.fact(CROSS_WINDOW));
  }

  static PanelSettings bind(Fields fields) {
    return new PanelSettings(
        fields.fact(DESCRIPTION),
        fields.fact(ROOM),
        fields.fact(SUPPLY),
        fields.find(ENTRY_DELAYS).orElse(Map.of()),
        fields.fact(EXIT_TIME),
        fields.fact(SOUNDER_TIME),
        fields.fact(ABORT_WINDOW),
        fields.fact(CANCEL_WINDOW),
        fields.fact(RECENT_CLOSING_WINDOW),
        fields.fact(SWINGER_LIMIT),
        fields.fact(EXIT_RESTART),
        fields.fact(AUTOMATIC_STAY),
        fields.fact(MAINS_FAILURE_REPORT),
        fields.fact(RADIO_SUPERVISION),
        fields.fact(KEYPAD_LOCK_OUT),
        fields.list(CROSS_ZONE_GROUPS),
        fields.find(LOOP_THRESHOLDS).map(PanelSection::loopThresholds).orElse(Map.of()));
  }

  private static Map<LoopWiring, List<Resistance>> loopThresholds(Fields fields) {
    Map<LoopWiring, List<Resistance>> thresholds = new EnumMap<>(LoopWiring.class);
    put(thresholds, LoopWiring.SINGLE_RESISTOR, fields.list(SINGLE_THRESHOLDS));
    put(thresholds, LoopWiring.DOUBLE_RESISTOR, fields.list(DOUBLE_THRESHOLDS));
    put(thresholds, LoopWiring.TRIPLE_RESISTOR, fields.list(TRIPLE_THRESHOLDS));
    return thresholds;
  }

  private static void put(
      Map<LoopWiring, List<Resistance>> thresholds, LoopWiring wiring, List<Resistance> rising) {
    if (!rising.isEmpty()) {
      thresholds.put(wiring, rising);
    }
  }
}
