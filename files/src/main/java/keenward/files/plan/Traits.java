package keenward.files.plan;

import static keenward.files.shape.Field.optional;

import java.util.List;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.Fact;
import keenward.core.plan.LoadKind;
import keenward.core.plan.MagnetGaps;
import keenward.core.plan.SoundOutput;
import keenward.core.plan.Wiring;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Current;
import keenward.core.quantities.Frequency;
import keenward.core.quantities.Length;
import keenward.core.quantities.Level;
import keenward.core.quantities.Period;
import keenward.core.quantities.SoundLevel;
import keenward.core.quantities.Span;
import keenward.core.quantities.Voltage;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** What types and single devices state alike, and the types. */
final class Traits {

  static final Field<Fact<CoveragePattern>> PATTERN =
      optional(
          "pattern",
          Shapes.word(CoveragePattern.class).orUnknown(),
          "fan",
          "Shape of what it sees.");
  static final Field<Fact<Length>> RANGE = optional("range", Common.length(), "12 m", "Its reach.");
  static final Field<Fact<Angle>> ANGLE =
      optional(
          "angle",
          Shapes.quantity(Angle::parse, Angle.units()).orUnknown(),
          "90 deg",
          "Opening angle of a fan.");
  static final Field<Fact<Angle>> LOOKS_DOWN =
      optional(
          "looks down",
          Shapes.quantity(Angle::parse, Angle.units()).orUnknown(),
          "50 deg",
          "Steepest angle below the horizontal at which it still sees; with its mounting height it gives the zone"
              + " under it that it does not see.");
  static final Field<Fact<Boolean>> PET_ALLOWANCE =
      optional(
          "pet allowance",
          Common.yesNo(),
          "no",
          "Whether the pattern leaves room for an animal on the floor.");
  static final MapShape COVERAGE_SHAPE =
      MapShape.of(
          "coverage",
          "What a detector sees, as its data sheet states it.",
          PATTERN,
          RANGE,
          ANGLE,
          LOOKS_DOWN,
          PET_ALLOWANCE);

  static final Field<DeviceKind> KIND =
      optional("kind", Shapes.word(DeviceKind.class), "motion", "What it is.")
          .usual("that of its type");
  static final Field<Fact<Wiring>> WIRING =
      optional(
          "wiring", Shapes.word(Wiring.class).orUnknown(), "radio", "How it reaches the panel.");
  static final Field<List<String>> INPUTS =
      optional(
              "inputs",
              Shapes.list(Shapes.text(30)).of(1, 20).withoutRepetition(),
              "[contact, terminals, lid]",
              "Names of its inputs; the first is the one that a zone uses when it says nothing.")
          .usual("one input without a name");
  static final Field<Fact<Current>> STANDBY_CURRENT =
      optional("standby current", Common.current(), "12 mA", "Current at rest.");
  static final Field<Fact<Current>> ALARM_CURRENT =
      optional(
          "alarm current",
          Common.current(),
          "18 mA",
          "Current in alarm, the standby current included.");
  static final Field<Fact<Span>> ALARM_TIME =
      optional(
              "alarm time",
              Common.span(),
              "2 min",
              "How long it draws its current in alarm: a communicator while it sends, a keypad while it is lit.")
          .usual("the whole alarm; for sounders and strobes the `sounder time` of the panel");
  static final Field<Fact<Voltage>> MINIMUM_VOLTAGE =
      optional("minimum voltage", Common.voltage(), "9.5 V", "Least voltage at which it works.");
  static final Field<Fact<Coverage>> COVERAGE =
      optional("coverage", COVERAGE_SHAPE.as(Traits::coverage).orUnknown(), "", "What it sees.");
  static final Field<Fact<Period>> CELL_LIFE =
      optional("cell life", Common.period(), "5 y", "Life of its own cell.");
  static final Field<Fact<Period>> REPLACE_AFTER =
      optional("replace after", Common.period(), "10 y", "Age at which it is replaced.");
  static final Field<Fact<Integer>> SECURITY_GRADE =
      optional(
          "security grade",
          Shapes.wholeNumber(1, 4).orUnknown(),
          "2",
          "Grade that its maker declares.");
  static final Field<Fact<Level>> SENSITIVITY =
      optional(
          "sensitivity",
          Shapes.quantity(Level::parse, Level.units()).orUnknown(),
          "-105 dBm",
          "Radio sensitivity of a receiver.");
  static final Field<Fact<Frequency>> FREQUENCY =
      optional(
          "frequency",
          Shapes.quantity(Frequency::parse, Frequency.units()).orUnknown(),
          "868.3 MHz",
          "Radio frequency.");
  static final Field<Fact<Level>> RADIO_POWER =
      optional(
          "radio power",
          Shapes.quantity(Level::parse, Level.units()).orUnknown(),
          "10 dBm",
          "For a radio device that sends: its e.i.r.p.; where the data sheet gives e.r.p., 2.15 dB more.");
  static final Field<Fact<Span>> CHECK_IN =
      optional(
          "check-in",
          Common.span(),
          "15 min",
          "How often a radio device reports that it is there.");
  static final Field<Fact<Boolean>> LATCHING =
      optional(
          "latching",
          Common.yesNo(),
          "no",
          "Whether it stays in alarm until its supply is reset, as a wired smoke detector may.");

  static final Field<Fact<SoundLevel>> SOUND_LEVEL =
      optional(
          "level",
          Shapes.quantity(SoundLevel::parse, SoundLevel.units()).orUnknown(),
          "95 dB",
          "The level, A-weighted.");
  static final Field<Fact<Length>> SOUND_AT =
      optional("at", Common.length(), "3 m", "How far from it.");
  static final MapShape SOUND_SHAPE =
      MapShape.of(
          "sound", "How loud a sounder is, as its data sheet states it.", SOUND_LEVEL, SOUND_AT);
  static final Field<Fact<SoundOutput>> SOUND =
      optional("sound", SOUND_SHAPE.as(Traits::sound).orUnknown(), "", "How loud it is.");
  static final Field<Fact<Length>> WORKING_GAP =
      optional("working", Common.length(), "18 mm", "The widest gap at which it closes.");
  static final Field<Fact<Length>> RELEASE_GAP =
      optional("release", Common.length(), "25 mm", "The gap beyond which it is open.");
  static final MapShape GAPS_SHAPE =
      MapShape.of(
          "gaps of a contact",
          "The gaps between contact and magnet that a data sheet states, on wood or plastic.",
          WORKING_GAP,
          RELEASE_GAP);
  static final Field<Fact<MagnetGaps>> GAPS =
      optional(
          "gaps",
          GAPS_SHAPE.as(Traits::gaps).orUnknown(),
          "",
          "For a magnetic contact: the gaps at which it closes and opens.");

  static final Field<Fact<LoadKind>> LOAD =
      optional(
              "load",
              Shapes.word(LoadKind.class).orUnknown(),
              "power",
              "What it draws when its voltage falls: the same current, the same power (a switching regulator), or"
                  + " less, as a resistance does. Its currents are those at the nominal voltage.")
          .usual("`current`");

  static final MapShape TYPE =
      MapShape.of(
              "device type",
              "A bought device, described once and used by many devices.",
              KIND,
              WIRING,
              INPUTS,
              STANDBY_CURRENT,
              ALARM_CURRENT,
              ALARM_TIME,
              MINIMUM_VOLTAGE,
              COVERAGE,
              CELL_LIFE,
              REPLACE_AFTER,
              SECURITY_GRADE,
              SENSITIVITY,
              FREQUENCY,
              RADIO_POWER,
              CHECK_IN,
              LATCHING,
              SOUND,
              GAPS,
              LOAD)
          .example(
              """
              types:
                slim radio contact: { kind: contact, wiring: radio, inputs: [contact, terminals, lid], cell life: 5 y, replace after: 10 y, frequency: 868.3 MHz, gaps: { working: 18 mm, release: 25 mm } }
                inside sounder: { kind: sounder, wiring: wired, sound: { level: 95 dB, at: 3 m } }
                wide motion:
                  kind: motion
                  wiring: wired
                  standby current: 12 mA
                  alarm current: 18 mA
                  minimum voltage: 9.5 V
                  coverage: { pattern: fan, range: 12 m, angle: 90 deg, pet allowance: no }
              """);

  private Traits() {}

  private static Coverage coverage(Fields fields) {
    return new Coverage(
        fields.fact(PATTERN),
        fields.fact(RANGE),
        fields.fact(ANGLE),
        fields.fact(LOOKS_DOWN),
        fields.fact(PET_ALLOWANCE));
  }

  private static SoundOutput sound(Fields fields) {
    return new SoundOutput(fields.fact(SOUND_LEVEL), fields.fact(SOUND_AT));
  }

  private static MagnetGaps gaps(Fields fields) {
    return new MagnetGaps(fields.fact(WORKING_GAP), fields.fact(RELEASE_GAP));
  }

  static DeviceTraits bind(Fields fields) {
    return new DeviceTraits(
        fields.given(KIND),
        fields.fact(WIRING),
        fields.list(INPUTS),
        fields.fact(STANDBY_CURRENT),
        fields.fact(ALARM_CURRENT),
        fields.fact(ALARM_TIME),
        fields.fact(MINIMUM_VOLTAGE),
        fields.fact(COVERAGE),
        fields.fact(CELL_LIFE),
        fields.fact(REPLACE_AFTER),
        fields.fact(SECURITY_GRADE),
        fields.fact(SENSITIVITY),
        fields.fact(FREQUENCY),
        fields.fact(RADIO_POWER),
        fields.fact(CHECK_IN),
        fields.fact(LATCHING),
        fields.fact(SOUND),
        fields.fact(GAPS),
        fields.fact(LOAD));
  }
}
