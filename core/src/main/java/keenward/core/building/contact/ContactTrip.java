package keenward.core.building.contact;

import java.util.Optional;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;

/**
 * Where a magnetic contact trips. While the leaf opens, the magnet moves away from the contact
 * square to the gap between them; they are then sqrt(gap² + way²) apart, and the contact is open
 * once that exceeds its release gap. A magnet that moves away along the gap trips sooner, so this
 * errs to the late side.
 *
 * @param magnetMetres how far the magnet has moved
 * @param edgeMetres how far the edge away from the hinge stands open; for what slides or rolls the
 *     same as the magnet
 */
public record ContactTrip(double magnetMetres, double edgeMetres) {

  /** Gaps on metal are about half of those on wood. Common practice, no source. */
  public static final double SHARE_ON_METAL = 0.5;

  /** A gap of the data sheet as it is on this opening. */
  public static double onOpening(Opening opening, double gapMetres) {
    return opening.material().orNull() == Material.METAL ? SHARE_ON_METAL * gapMetres : gapMetres;
  }

  /** Whether its leaf turns about a hinge. */
  public static boolean turns(Opening opening) {
    return opening.kind() != OpeningKind.SLIDING_DOOR
        && opening.kind() != OpeningKind.ROLLER_SHUTTER;
  }

  /**
   * The trip of a contact on a leaf that turns; empty when it never trips.
   *
   * @param gapMetres gap with the leaf shut
   * @param releaseMetres gap beyond which the contact is open
   * @param fromHingeMetres how far along the leaf it sits
   * @param leafMetres how wide the leaf is
   */
  public static Optional<ContactTrip> ofTurning(
      double gapMetres, double releaseMetres, double fromHingeMetres, double leafMetres) {
    double magnet = magnetMetres(gapMetres, releaseMetres);
    // A quarter turn takes the magnet so far from where it was.
    double mostMetres = Math.sqrt(2) * fromHingeMetres;
    return magnet > mostMetres
        ? Optional.empty()
        : Optional.of(
            new ContactTrip(magnet, magnet == 0 ? 0 : magnet * leafMetres / fromHingeMetres));
  }

  /** The trip of a contact on what slides or rolls. */
  public static ContactTrip ofSliding(double gapMetres, double releaseMetres) {
    double magnet = magnetMetres(gapMetres, releaseMetres);
    return new ContactTrip(magnet, magnet);
  }

  private static double magnetMetres(double gapMetres, double releaseMetres) {
    return gapMetres >= releaseMetres
        ? 0
        : Math.sqrt(releaseMetres * releaseMetres - gapMetres * gapMetres);
  }
}
