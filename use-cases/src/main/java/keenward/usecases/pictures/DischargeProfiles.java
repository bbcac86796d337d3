package keenward.usecases.pictures;

import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OutageEvent;
import keenward.core.electrical.outage.Outages;
import keenward.drawing.discharge.DischargeProfile;

/** Draws how batteries are emptied. */
public final class DischargeProfiles {

  private DischargeProfiles() {}

  /** One profile for each outage. */
  public static List<DischargeProfile> of(Outages outages) {
    return outages.outages().stream().map(DischargeProfiles::profile).toList();
  }

  private static DischargeProfile profile(Outage outage) {
    List<DischargeProfile.Point> points = new ArrayList<>();
    for (Outage.Stretch stretch : outage.stretches()) {
      points.add(new DischargeProfile.Point(stretch.from().hours(), stretch.from().volts()));
      points.add(new DischargeProfile.Point(stretch.to().hours(), stretch.to().volts()));
    }
    List<DischargeProfile.Mark> marks = new ArrayList<>();
    for (OutageEvent event : outage.events()) {
      boolean isFailure =
          event.kind() == OutageEvent.Kind.DEVICE_DIES
              || event.kind() == OutageEvent.Kind.BATTERY_ENDS;
      if (isFailure || event.kind() == OutageEvent.Kind.LOW_BATTERY) {
        marks.add(
            new DischargeProfile.Mark(
                event.hours(),
                outage.at(event.hours()).volts(),
                event.line().name() + ", " + event.when(),
                isFailure && event.hours() < outage.wantedHours()));
      }
    }
    return new DischargeProfile(
        outage.supply(), points, outage.cutOff().value(), outage.wantedHours(), marks);
  }
}
