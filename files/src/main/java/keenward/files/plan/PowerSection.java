package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.math.BigDecimal;
import java.time.LocalDate;
import keenward.core.plan.Battery;
import keenward.core.plan.Cable;
import keenward.core.plan.Fact;
import keenward.core.plan.Junction;
import keenward.core.plan.Supply;
import keenward.core.quantities.Capacity;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Current;
import keenward.core.quantities.Length;
import keenward.core.quantities.Temperature;
import keenward.core.quantities.Voltage;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.ReferenceShape;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** Power supplies, joint boxes and the cables that carry power. */
final class PowerSection {

  static final Field<Fact<Capacity>> CAPACITY =
      optional("capacity", capacity(), "7 Ah", "Capacity of one at the 20-hour rate.");
  static final Field<Fact<LocalDate>> BATTERY_FITTED =
      optional("fitted", Shapes.date().orUnknown(), "2026-10-02", "Date it was fitted.");
  static final Field<Fact<Integer>> COUNT =
      optional(
              "count",
              Shapes.wholeNumber(1, 20).orUnknown(),
              "2",
              "How many are connected in parallel.")
          .usual("1");
  static final Field<Fact<Boolean>> ALIKE =
      optional(
          "alike",
          Common.yesNo(),
          "yes",
          "Where there are several: whether all are of one type, capacity and age.");
  static final MapShape BATTERY =
      MapShape.of(
          "battery", "The standby battery of a supply.", CAPACITY, BATTERY_FITTED, COUNT, ALIKE);

  static final Field<Fact<String>> SUPPLY_ROOM =
      optional("room", Common.room().orUnknown(), "Workshop", "Room it is in.");
  static final Field<Fact<Voltage>> VOLTAGE =
      optional("voltage", Common.voltage(), "13.6 V", "Output voltage with mains present.");
  static final Field<Fact<Current>> RATING =
      optional(
          "rating", Common.current(), "750 mA", "Continuous current that it may give to devices.");
  static final Field<Fact<Current>> OWN_STANDBY_CURRENT =
      optional(
          "own standby current",
          Common.current(),
          "110 mA",
          "Current of the board itself at rest.");
  static final Field<Fact<Current>> OWN_ALARM_CURRENT =
      optional(
          "own alarm current", Common.current(), "160 mA", "Current of the board itself in alarm.");
  static final Field<Fact<Current>> CHARGE_CURRENT =
      optional("charge current", Common.current(), "400 mA", "Greatest charging current.");
  static final Field<Fact<Current>> TOTAL_CURRENT =
      optional(
          "total current",
          Common.current(),
          "1.5 A",
          "Current that its board, its devices and its battery share with mains present.");
  static final Field<Fact<Capacity>> LARGEST_BATTERY =
      optional("largest battery", capacity(), "7 Ah", "Largest battery that its case holds.");
  static final Field<Fact<Battery>> FITTED_BATTERY =
      optional(
          "battery",
          BATTERY.as(PowerSection::battery).orUnknown(),
          "{ capacity: 7 Ah, fitted: 2026-10-02 }",
          "The battery fitted or planned.");
  static final Field<Fact<Temperature>> LOWEST_TEMPERATURE =
      optional(
          "lowest temperature",
          Shapes.quantity(Temperature::parse, Temperature.units()).orUnknown(),
          "10 C",
          "Lowest temperature round the battery.");
  static final Field<Fact<Temperature>> USUAL_TEMPERATURE =
      optional(
          "usual temperature",
          Shapes.quantity(Temperature::parse, Temperature.units()).orUnknown(),
          "20 C",
          "Mean temperature round the battery over the year; heat ages it.");
  static final Field<Fact<Voltage>> CUT_OFF =
      optional(
          "cut off",
          Common.voltage(),
          "10.5 V",
          "Battery voltage at which it switches the battery off, so that it is not ruined.");
  static final Field<Fact<Double>> AGEING_FACTOR =
      optional(
          "ageing factor",
          Shapes.decimal("1", "3").as(BigDecimal::doubleValue).orUnknown(),
          "1.25",
          "Factor by which the battery is chosen larger for its old age.");
  static final Field<Fact<Boolean>> SIGNALS_MAINS_FAILURE =
      optional(
          "signals mains failure",
          Common.yesNo(),
          "yes",
          "Whether a mains failure is signalled to the monitoring centre.");
  static final Field<Fact<Boolean>> RESETS_SMOKE_DETECTORS =
      optional(
          "resets smoke detectors",
          Common.yesNo(),
          "yes",
          "Whether a reset at the keypad takes the voltage off its output, so that latching smoke detectors let go.");

  static final MapShape SUPPLY =
      MapShape.of(
              "supply",
              "A power supply with its standby battery: the panel's own, or a separate one. Mains work belongs to"
                  + " licensed people.",
              SUPPLY_ROOM,
              VOLTAGE,
              RATING,
              OWN_STANDBY_CURRENT,
              OWN_ALARM_CURRENT,
              CHARGE_CURRENT,
              TOTAL_CURRENT,
              LARGEST_BATTERY,
              FITTED_BATTERY,
              LOWEST_TEMPERATURE,
              USUAL_TEMPERATURE,
              CUT_OFF,
              AGEING_FACTOR,
              SIGNALS_MAINS_FAILURE,
              RESETS_SMOKE_DETECTORS)
          .example(
              """
              supplies:
                Main:
                  voltage: 13.6 V
                  rating: 750 mA
                  own standby current: 110 mA
                  own alarm current: 160 mA
                  charge current: 400 mA
                  total current: 1.5 A
                  largest battery: 7 Ah
                  battery: { capacity: 7 Ah, fitted: 2026-10-02 }
                  lowest temperature: 10 C
                  usual temperature: 20 C
                  cut off: 10.5 V
                  ageing factor: 1.25
                  signals mains failure: yes
                  resets smoke detectors: yes
              """);

  static final Field<Fact<String>> JUNCTION_ROOM =
      optional("room", Common.room().orUnknown(), "Shop", "Room it is in.");
  static final MapShape JUNCTION =
      MapShape.of("junction", "A joint box where cables meet.", JUNCTION_ROOM);

  static final Field<String> FROM =
      required("from", end(), "Main", "Supply, junction or device nearer the supply.");
  static final Field<String> TO =
      required("to", end(), "Shop motion", "Junction or device further from it.");
  static final Field<Fact<Length>> LENGTH =
      optional("length", Common.length(), "18 m", "Length of the run, one way.");
  static final Field<Fact<Conductor>> CONDUCTOR =
      optional(
          "conductor",
          Shapes.quantity(Conductor::parse, Conductor.units()).orUnknown(),
          "0.22 mm2",
          "Size of each conductor.");
  static final Field<Fact<Boolean>> DOUBLED =
      optional("doubled", Common.yesNo(), "no", "Whether two cores are used for each pole.")
          .usual("`no`");
  static final Field<Fact<Temperature>> CONDUCTOR_TEMPERATURE =
      optional(
              "temperature",
              Shapes.quantity(Temperature::parse, Temperature.units()).orUnknown(),
              "55 C",
              "Highest temperature of its conductors.")
          .usual("40 C");
  static final Field<Fact<Current>> FUSE =
      optional(
          "fuse",
          Shapes.quantity(Current::parse, Current.units()).orUnknown(),
          "500 mA",
          "Rated current of the fuse or current limit at its near end.");
  static final MapShape CABLE =
      MapShape.of(
              "cable",
              "One run of cable that carries power. Names of supplies, junctions and devices differ from each other.",
              FROM,
              TO,
              LENGTH,
              CONDUCTOR,
              DOUBLED,
              CONDUCTOR_TEMPERATURE,
              FUSE)
          .example(
              """
              supplies: { Main: { voltage: 13.6 V } }
              junctions: { Roof box: { room: unknown } }
              devices: { Shop motion: { kind: motion, standby current: 12 mA, supply: Main } }
              cables:
                C1: { from: Main, to: Roof box, length: 18 m, conductor: 0.22 mm2, doubled: no }
                C2: { from: Roof box, to: Shop motion, length: 20 ft, conductor: 22 AWG }
              """);

  private PowerSection() {}

  private static Shape<Fact<Capacity>> capacity() {
    return Shapes.quantity(Capacity::parse, Capacity.units()).orUnknown();
  }

  private static ReferenceShape<String> end() {
    return Shapes.reference(
        "a supply, a junction or a device", "/supplies/*", "/junctions/*", "/devices/*");
  }

  private static Battery battery(Fields fields) {
    return new Battery(
        fields.fact(CAPACITY), fields.fact(BATTERY_FITTED), fields.fact(COUNT), fields.fact(ALIKE));
  }

  static Supply supply(String name, Fields fields) {
    return new Supply(
        name,
        fields.fact(SUPPLY_ROOM),
        fields.fact(VOLTAGE),
        fields.fact(RATING),
        fields.fact(OWN_STANDBY_CURRENT),
        fields.fact(OWN_ALARM_CURRENT),
        fields.fact(CHARGE_CURRENT),
        fields.fact(TOTAL_CURRENT),
        fields.fact(LARGEST_BATTERY),
        fields.fact(FITTED_BATTERY),
        fields.fact(LOWEST_TEMPERATURE),
        fields.fact(USUAL_TEMPERATURE),
        fields.fact(CUT_OFF),
        fields.fact(AGEING_FACTOR),
        fields.fact(SIGNALS_MAINS_FAILURE),
        fields.fact(RESETS_SMOKE_DETECTORS));
  }

  static Junction junction(String name, Fields fields) {
    return new Junction(name, fields.fact(JUNCTION_ROOM));
  }

  static Cable cable(String name, Fields fields) {
    return new Cable(
        name,
        fields.get(FROM),
        fields.get(TO),
        fields.fact(LENGTH),
        fields.fact(CONDUCTOR),
        fields.fact(DOUBLED),
        fields.fact(CONDUCTOR_TEMPERATURE),
        fields.fact(FUSE));
  }
}
