package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import keenward.core.quantities.Level;

/**
 * One fitted device.
 *
 * @param name name, unique in the plan
 * @param type name of its type
 * @param traits its traits, those of its type already filled in where it says nothing itself
 * @param room name of the room it is in
 * @param opening name of the opening it watches
 * @param at where it is on the floor of its room
 * @param endsAt for a beam: where its other end is
 * @param height mounting height
 * @param bearing direction it looks, clockwise from north
 * @param magnet for a magnetic contact: how it and its magnet sit
 * @param supply name of the supply that feeds it
 * @param serial printed serial number, as text
 * @param keypadKind for a keypad: which keypad kind of the panel description it is
 * @param fitted date it was fitted
 * @param measuredLevel for a radio device: the level at which the receiver or repeater that hears
 *     it best was seen to hear it
 * @param note anything else
 */
public record Device(
    String name,
    Fact<String> type,
    DeviceTraits traits,
    Fact<String> room,
    Fact<String> opening,
    Fact<Point> at,
    Fact<Point> endsAt,
    Fact<Length> height,
    Fact<Angle> bearing,
    Fact<MagnetFit> magnet,
    Fact<String> supply,
    Fact<String> serial,
    Fact<String> keypadKind,
    Fact<LocalDate> fitted,
    Fact<Level> measuredLevel,
    Fact<String> note) {

  /** What the device is; a device without a kind is refused by the reader. */
  public DeviceKind kind() {
    return traits
        .kind()
        .find()
        .orElseThrow(() -> new IllegalStateException("device " + name + " has no kind"));
  }
}
