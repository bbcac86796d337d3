package keenward.core.rules.contacts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.contact.ContactTrip;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.MagnetFit;
import keenward.core.plan.MagnetGaps;
import keenward.core.plan.Opening;
import keenward.core.plan.SitePlan;
import keenward.core.quantities.Length;

/**
 * A contact on its opening.
 *
 * @param device the contact
 * @param opening the opening
 */
record FittedContact(Device device, Opening opening) {

  /** The contacts of a plan that are on an opening, in its order. */
  static List<FittedContact> all(SitePlan plan) {
    Map<String, Opening> openings = new LinkedHashMap<>();
    plan.openings().forEach(opening -> openings.put(opening.name(), opening));
    List<FittedContact> contacts = new ArrayList<>();
    plan.devicesOf(DeviceKind.CONTACT)
        .forEach(device ->
            device
                .opening()
                .find()
                .map(openings::get)
                .ifPresent(opening -> contacts.add(new FittedContact(device, opening))));
    return contacts;
  }

  Optional<Double> gapMetres() {
    return device.magnet().find().flatMap(magnet -> metres(magnet.gap()));
  }

  Optional<Double> fromHingeMetres() {
    return device.magnet().find().map(MagnetFit::fromHinge).flatMap(FittedContact::metres);
  }

  /** The working gap on this opening. */
  Optional<Double> workingMetres() {
    return gaps().flatMap(gaps -> metres(gaps.working())).map(this::onOpening);
  }

  /** The release gap on this opening. */
  Optional<Double> releaseMetres() {
    return gaps().flatMap(gaps -> metres(gaps.release())).map(this::onOpening);
  }

  /** How wide its leaf is: of a double door half of it. */
  Optional<Double> leafMetres() {
    return metres(opening.width())
        .map(width ->
            switch (opening.kind()) {
              case DOUBLE_DOOR -> width / 2;
              default -> width;
            });
  }

  private Optional<MagnetGaps> gaps() {
    return device.traits().gaps().find();
  }

  private double onOpening(double metres) {
    return ContactTrip.onOpening(opening, metres);
  }

  private static Optional<Double> metres(Fact<Length> length) {
    return length.map(Length::metres).find();
  }

  /** Millimetres, in words. */
  static String millimetres(double metres) {
    return Math.round(1000 * metres) + " mm";
  }
}
