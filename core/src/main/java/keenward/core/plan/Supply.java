package keenward.core.plan;

import keenward.core.quantities.Capacity;
import keenward.core.quantities.Current;
import keenward.core.quantities.Temperature;
import keenward.core.quantities.Voltage;

/**
 * A power supply with its standby battery: the panel's own, or a separate one.
 *
 * @param name name, unique in the plan
 * @param room name of the room it is in
 * @param voltage output voltage with mains present
 * @param rating continuous current it may give to devices
 * @param ownStandbyCurrent current of the board itself at rest
 * @param ownAlarmCurrent current of the board itself in alarm
 * @param chargeCurrent greatest charging current
 * @param totalCurrent current that board, devices and battery share with mains present
 * @param largestBattery largest battery that its case holds
 * @param battery the battery fitted or planned
 * @param lowestTemperature lowest temperature round the battery
 * @param usualTemperature mean temperature round the battery over the year
 * @param cutOff battery voltage at which it switches the battery off
 * @param ageingFactor factor by which the battery is chosen larger for its old age
 * @param signalsMainsFailure whether a mains failure is signalled to the monitoring centre
 * @param resetsSmokeDetectors whether a reset at the keypad takes the voltage off its output, so
 *     that latching smoke detectors let go
 */
public record Supply(
    String name,
    Fact<String> room,
    Fact<Voltage> voltage,
    Fact<Current> rating,
    Fact<Current> ownStandbyCurrent,
    Fact<Current> ownAlarmCurrent,
    Fact<Current> chargeCurrent,
    Fact<Current> totalCurrent,
    Fact<Capacity> largestBattery,
    Fact<Battery> battery,
    Fact<Temperature> lowestTemperature,
    Fact<Temperature> usualTemperature,
    Fact<Voltage> cutOff,
    Fact<Double> ageingFactor,
    Fact<Boolean> signalsMainsFailure,
    Fact<Boolean> resetsSmokeDetectors) {}
