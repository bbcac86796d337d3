package keenward.core.building.contact;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
public record FittedContact(Device device, Opening opening) {

  /** When a contact trips as its leaf opens. */
  public sealed interface Trips {

    /** There. */
    record At(ContactTrip trip) implements Trips {}

    /** Not before the leaf stands at a right angle. */
    record Never() implements Trips {}

    /** The plan does not say how it is fitted. */
    record NotKnown() implements Trips {}
  }

  /** The contacts of a plan that are on an opening, in its order. */
  public static List<FittedContact> all(SitePlan plan) {
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

  /** The gap between it and its magnet. */
  public Optional<Double> gapMetres() {
    return device.magnet().find().flatMap(magnet -> metres(magnet.gap()));
  }

  private Optional<Double> fromHingeMetres() {
    return device.magnet().find().map(MagnetFit::fromHinge).flatMap(FittedContact::metres);
  }

  /** The working gap on this opening. */
  public Optional<Double> workingMetres() {
    return gaps().flatMap(gaps -> metres(gaps.working())).map(this::onOpening);
  }

  /** The release gap on this opening. */
  private Optional<Double> releaseMetres() {
    return gaps().flatMap(gaps -> metres(gaps.release())).map(this::onOpening);
  }

  /** When it trips. */
  public Trips trips() {
    Optional<Double> gap = gapMetres();
    Optional<Double> release = releaseMetres();
    Optional<Double> fromHinge = fromHingeMetres().filter(metres -> metres > 0);
    Optional<Double> leaf = leafMetres();
    boolean turns = ContactTrip.turns(opening);
    if (gap.isEmpty() || release.isEmpty() || (turns && (fromHinge.isEmpty() || leaf.isEmpty()))) {
      return new Trips.NotKnown();
    }
    Optional<ContactTrip> trip =
        turns
            ? ContactTrip.ofTurning(
                gap.get(), release.get(), fromHinge.orElseThrow(), leaf.orElseThrow())
            : Optional.of(ContactTrip.ofSliding(gap.get(), release.get()));
    return trip.<Trips>map(Trips.At::new).orElseGet(Trips.Never::new);
  }

  /** How wide its leaf is: of a double door half of it. */
  private Optional<Double> leafMetres() {
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
}
