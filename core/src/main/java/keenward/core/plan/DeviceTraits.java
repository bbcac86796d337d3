package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Current;
import keenward.core.quantities.Frequency;
import keenward.core.quantities.Level;
import keenward.core.quantities.Period;
import keenward.core.quantities.Span;
import keenward.core.quantities.Voltage;

/**
 * What is true of every piece of a bought device; stated for a type, for a single device, or for
 * both, where the device overrides its type.
 *
 * @param kind what it is
 * @param wiring how it reaches the panel
 * @param inputs names of its inputs; the first is the one a zone uses when it says nothing; empty
 *     means one unnamed input
 * @param standbyCurrent current drawn at rest
 * @param alarmCurrent current drawn in alarm, the standby current included
 * @param alarmTime how long it draws the current in alarm; all of the alarm where nothing is said
 * @param minimumVoltage least voltage at which it works
 * @param coverage what it sees
 * @param cellLife life of its own cell
 * @param replaceAfter age at which the device is replaced
 * @param securityGrade grade 1 to 4 that its maker declares
 * @param sensitivity radio sensitivity of a receiver
 * @param frequency radio frequency
 * @param radioPower for a radio device that sends: its e.i.r.p., the power that an aerial without
 *     direction would need for the same field
 * @param checkIn how often a radio device reports that it is there
 * @param latching whether it stays in alarm until its supply is reset (a wired smoke detector, say)
 * @param sound how loud it is
 * @param gaps for a magnetic contact: the gaps at which it closes and opens
 * @param load what it draws when its voltage falls
 */
public record DeviceTraits(
    Fact<DeviceKind> kind,
    Fact<Wiring> wiring,
    List<String> inputs,
    Fact<Current> standbyCurrent,
    Fact<Current> alarmCurrent,
    Fact<Span> alarmTime,
    Fact<Voltage> minimumVoltage,
    Fact<Coverage> coverage,
    Fact<Period> cellLife,
    Fact<Period> replaceAfter,
    Fact<Integer> securityGrade,
    Fact<Level> sensitivity,
    Fact<Frequency> frequency,
    Fact<Level> radioPower,
    Fact<Span> checkIn,
    Fact<Boolean> latching,
    Fact<SoundOutput> sound,
    Fact<MagnetGaps> gaps,
    Fact<LoadKind> load) {

  public DeviceTraits {
    inputs = List.copyOf(inputs);
  }

  /** Traits about which nothing is stated. */
  public static DeviceTraits none() {
    return new DeviceTraits(
        Fact.missing(),
        Fact.missing(),
        List.of(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing());
  }

  /** These traits, with those of a type where these say nothing. */
  public DeviceTraits over(DeviceTraits type) {
    return new DeviceTraits(
        kind.or(type.kind),
        wiring.or(type.wiring),
        inputs.isEmpty() ? type.inputs : inputs,
        standbyCurrent.or(type.standbyCurrent),
        alarmCurrent.or(type.alarmCurrent),
        alarmTime.or(type.alarmTime),
        minimumVoltage.or(type.minimumVoltage),
        coverage.or(type.coverage),
        cellLife.or(type.cellLife),
        replaceAfter.or(type.replaceAfter),
        securityGrade.or(type.securityGrade),
        sensitivity.or(type.sensitivity),
        frequency.or(type.frequency),
        radioPower.or(type.radioPower),
        checkIn.or(type.checkIn),
        latching.or(type.latching),
        sound.or(type.sound),
        gaps.or(type.gaps),
        load.or(type.load));
  }
}
