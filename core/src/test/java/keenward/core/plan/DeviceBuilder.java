package keenward.core.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Current;
import keenward.core.quantities.Frequency;
import keenward.core.quantities.Length;
import keenward.core.quantities.Level;
import keenward.core.quantities.Period;
import keenward.core.quantities.SoundLevel;
import keenward.core.quantities.Span;
import keenward.core.quantities.Voltage;

/** Builds a device of a test's plan. */
public final class DeviceBuilder {
  private final String name;
  private final DeviceKind kind;
  private Fact<String> type = Fact.missing();
  private Fact<Wiring> wiring = Fact.missing();
  private List<String> inputs = List.of();
  private Fact<Current> standbyCurrent = Fact.missing();
  private Fact<Current> alarmCurrent = Fact.missing();
  private Fact<Voltage> minimumVoltage = Fact.missing();
  private Fact<Coverage> coverage = Fact.missing();
  private Fact<Period> cellLife = Fact.missing();
  private Fact<Period> replaceAfter = Fact.missing();
  private Fact<Integer> grade = Fact.missing();
  private Fact<Boolean> latching = Fact.missing();
  private Fact<SoundOutput> sound = Fact.missing();
  private Fact<Span> alarmTime = Fact.missing();
  private Fact<MagnetGaps> gaps = Fact.missing();
  private Fact<LoadKind> load = Fact.missing();
  private Fact<MagnetFit> magnet = Fact.missing();
  private Fact<String> room = Fact.missing();
  private Fact<String> opening = Fact.missing();
  private Fact<Point> at = Fact.missing();
  private Fact<Point> endsAt = Fact.missing();
  private Fact<Length> height = Fact.missing();
  private Fact<Angle> bearing = Fact.missing();
  private Fact<String> supply = Fact.missing();
  private Fact<String> serial = Fact.missing();
  private Fact<LocalDate> fitted = Fact.missing();
  private Fact<Level> sensitivity = Fact.missing();
  private Fact<Frequency> frequency = Fact.missing();
  private Fact<Level> radioPower = Fact.missing();
  private Fact<Span> checkIn = Fact.missing();
  private Fact<Level> measuredLevel = Fact.missing();

  DeviceBuilder(String name, DeviceKind kind) {
    this.name = name;
    this.kind = kind;
  }

  /** Names its type; the traits of the type are not filled in. */
  public DeviceBuilder type(String typeName) {
    type = Fact.of(typeName);
    return this;
  }

  public DeviceBuilder wired() {
    wiring = Fact.of(Wiring.WIRED);
    return this;
  }

  public DeviceBuilder bus() {
    wiring = Fact.of(Wiring.BUS);
    return this;
  }

  public DeviceBuilder radio() {
    wiring = Fact.of(Wiring.RADIO);
    return this;
  }

  public DeviceBuilder radio(String serialNumber) {
    serial = Fact.of(serialNumber);
    return radio();
  }

  public DeviceBuilder hears(String level) {
    sensitivity = Fact.of(Quantities.of(Level.parse(level)));
    return this;
  }

  public DeviceBuilder on(Frequency radioFrequency) {
    frequency = Fact.of(radioFrequency);
    return this;
  }

  public DeviceBuilder sends(String level) {
    radioPower = Fact.of(Quantities.of(Level.parse(level)));
    return this;
  }

  public DeviceBuilder checksIn(String span) {
    checkIn = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public DeviceBuilder measured(String level) {
    measuredLevel = Fact.of(Quantities.of(Level.parse(level)));
    return this;
  }

  public DeviceBuilder serialUnknown() {
    serial = Fact.unknown();
    return this;
  }

  public DeviceBuilder inputs(String... names) {
    inputs = Arrays.asList(names);
    return this;
  }

  public DeviceBuilder draws(String standby, String alarm) {
    standbyCurrent = Fact.of(Quantities.of(Current.parse(standby)));
    alarmCurrent = Fact.of(Quantities.of(Current.parse(alarm)));
    return this;
  }

  public DeviceBuilder drawsAtRest(String standby) {
    standbyCurrent = Fact.of(Quantities.of(Current.parse(standby)));
    return this;
  }

  public DeviceBuilder drawsUnknown() {
    standbyCurrent = Fact.unknown();
    alarmCurrent = Fact.unknown();
    return this;
  }

  public DeviceBuilder alarmTime(String span) {
    alarmTime = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public DeviceBuilder worksFrom(String voltage) {
    minimumVoltage = Fact.of(Quantities.of(Voltage.parse(voltage)));
    return this;
  }

  public DeviceBuilder covers(CoveragePattern pattern, String range, String angle) {
    coverage =
        Fact.of(
            new Coverage(
                Fact.of(pattern),
                Fact.of(Quantities.of(Length.parse(range))),
                Fact.of(Quantities.of(Angle.parse(angle))),
                Fact.missing(),
                Fact.missing()));
    return this;
  }

  /** After {@link #covers}. */
  public DeviceBuilder petAllowance(boolean yes) {
    coverage =
        coverage.map(each ->
            new Coverage(
                each.pattern(), each.range(), each.angle(), each.looksDown(), Fact.of(yes)));
    return this;
  }

  /** After {@link #covers}. */
  public DeviceBuilder looksDown(String angle) {
    coverage =
        coverage.map(each ->
            new Coverage(
                each.pattern(),
                each.range(),
                each.angle(),
                Fact.of(Quantities.of(Angle.parse(angle))),
                each.petAllowance()));
    return this;
  }

  public DeviceBuilder cellLife(String period) {
    cellLife = Fact.of(Quantities.of(Period.parse(period)));
    return this;
  }

  public DeviceBuilder replaceAfter(String period) {
    replaceAfter = Fact.of(Quantities.of(Period.parse(period)));
    return this;
  }

  public DeviceBuilder grade(int securityGrade) {
    grade = Fact.of(securityGrade);
    return this;
  }

  public DeviceBuilder latching(boolean yes) {
    latching = Fact.of(yes);
    return this;
  }

  public DeviceBuilder room(String roomName) {
    room = Fact.of(roomName);
    return this;
  }

  public DeviceBuilder on(String openingName) {
    opening = Fact.of(openingName);
    return this;
  }

  public DeviceBuilder endsAt(double xMetres, double yMetres) {
    endsAt = Fact.of(new Point(xMetres, yMetres));
    return this;
  }

  public DeviceBuilder at(double xMetres, double yMetres) {
    at = Fact.of(new Point(xMetres, yMetres));
    return this;
  }

  public DeviceBuilder mountedAt(String mountingHeight) {
    height = Fact.of(Quantities.of(Length.parse(mountingHeight)));
    return this;
  }

  public DeviceBuilder bearing(String angle) {
    bearing = Fact.of(Quantities.of(Angle.parse(angle)));
    return this;
  }

  public DeviceBuilder supply(String supplyName) {
    supply = Fact.of(supplyName);
    return this;
  }

  public DeviceBuilder fitted(String date) {
    fitted = Fact.of(Quantities.date(date));
    return this;
  }

  public DeviceBuilder sounds(String level, String distance) {
    sound =
        Fact.of(
            new SoundOutput(
                Fact.of(Quantities.of(SoundLevel.parse(level))),
                Fact.of(Quantities.of(Length.parse(distance)))));
    return this;
  }

  public DeviceBuilder load(LoadKind kind) {
    load = Fact.of(kind);
    return this;
  }

  /** Gaps of a contact. */
  public DeviceBuilder gaps(String working, String release) {
    gaps =
        Fact.of(
            new MagnetGaps(
                Fact.of(Quantities.of(Length.parse(working))),
                Fact.of(Quantities.of(Length.parse(release)))));
    return this;
  }

  public DeviceBuilder magnet(String gap, String fromHinge) {
    magnet =
        Fact.of(
            new MagnetFit(
                Fact.of(Quantities.of(Length.parse(gap))),
                Fact.of(Quantities.of(Length.parse(fromHinge)))));
    return this;
  }

  Device build() {
    return new Device(
        name,
        type,
        new DeviceTraits(
            Fact.of(kind),
            wiring,
            inputs,
            standbyCurrent,
            alarmCurrent,
            alarmTime,
            minimumVoltage,
            coverage,
            cellLife,
            replaceAfter,
            grade,
            sensitivity,
            frequency,
            radioPower,
            checkIn,
            latching,
            sound,
            gaps,
            load),
        room,
        opening,
        at,
        endsAt,
        height,
        bearing,
        magnet,
        supply,
        serial,
        Fact.missing(),
        fitted,
        measuredLevel,
        Fact.missing());
  }
}
