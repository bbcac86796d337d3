package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Battery;
import keenward.core.plan.Service;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.plan.Zone;
import keenward.core.quantities.Quantity;

/** A label inside the panel door: it names neither site nor account, no code and no weakness. */
final class LabelSheet {
  private static final int MOST_IN_ONE_COLUMN = 32;

  private LabelSheet() {}

  static Sheet of(PapersInput input) {
    SitePlan plan = input.plan();
    Optional<Service> service = plan.service().find();
    List<View> missing = new ArrayList<>();
    if (!plan.site().reference().isGiven()) {
      missing.add(Say.missing("a reference that names nobody", "reference: K-0001", "site"));
    }
    if (plan.supplies().isEmpty()) {
      missing.add(
          Say.missing(
              "the battery", "supplies: { Main: { battery: { capacity: ... Ah } } }", "supplies"));
    }
    missing.addAll(ZoneScheduleSheet.missing(plan));
    List<List<Zone>> halves = halves(plan);
    View view =
        new View()
            .text("reference", Say.factOrBlank(plan.site().reference()))
            .text("company", Say.factOrBlank(plan.site().company()))
            .text("phone", Say.factOrBlank(plan.site().contact()))
            .views("supplies", plan.supplies().stream().map(LabelSheet::supply).toList())
            .views("zones", zones(plan, plan.zones()))
            .flag("two", halves.size() > 1)
            .views(
                "halves",
                halves.stream().map(half -> new View().views("zones", zones(plan, half))).toList())
            .text(
                "last",
                service
                    .map(each -> Say.factOrBlank(each.lastVisit().map(Object::toString)))
                    .orElse(""))
            .text("next", service.flatMap(LabelSheet::next).orElse(""))
            .views("missing", missing);
    return Sheet.of("door-label", "Panel door label", "inside the panel door", view);
  }

  /** The zones side by side where there are many, so that the label stays in one piece. */
  private static List<List<Zone>> halves(SitePlan plan) {
    List<Zone> zones = plan.zones();
    if (zones.size() <= MOST_IN_ONE_COLUMN) {
      return zones.isEmpty() ? List.of() : List.of(zones);
    }
    int middle = (zones.size() + 1) / 2;
    return List.of(zones.subList(0, middle), zones.subList(middle, zones.size()));
  }

  private static List<View> zones(SitePlan plan, List<Zone> zones) {
    return zones.stream().map(zone -> zone(plan, zone)).toList();
  }

  private static View supply(Supply supply) {
    Optional<Battery> battery = supply.battery().find();
    return new View()
        .text("name", supply.name())
        .text(
            "capacity",
            battery.map(each -> Say.factOrBlank(each.capacity().map(Quantity::written))).orElse(""))
        .text(
            "fitted",
            battery.map(each -> Say.factOrBlank(each.fitted().map(Object::toString))).orElse(""));
  }

  private static View zone(SitePlan plan, Zone zone) {
    ZoneWords words = new ZoneWords(plan, zone);
    return new View()
        .number("number", zone.number())
        .text("name", zone.name())
        .text("loop", words.isRadio() ? "radio" : loop(zone, words))
        .flag("wired", !words.isRadio());
  }

  /** Their number and values say how they are wired, in the room that a label has. */
  private static String loop(Zone zone, ZoneWords words) {
    return zone.resistors().isEmpty() ? words.loop() : words.resistors();
  }

  private static Optional<String> next(Service service) {
    return service
        .lastVisit()
        .find()
        .flatMap(last ->
            service.interval().find().map(each -> last.plusMonths(each.months()).toString()));
  }
}
