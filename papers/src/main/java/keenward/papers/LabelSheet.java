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
    View view =
        new View()
            .text("reference", Say.factOrBlank(plan.site().reference()))
            .text("company", Say.factOrBlank(plan.site().company()))
            .text("phone", Say.factOrBlank(plan.site().contact()))
            .views("supplies", plan.supplies().stream().map(LabelSheet::supply).toList())
            .views("zones", plan.zones().stream().map(zone -> zone(plan, zone)).toList())
            .text(
                "last",
                service
                    .map(each -> Say.factOrBlank(each.lastVisit().map(Object::toString)))
                    .orElse(""))
            .text("next", service.flatMap(LabelSheet::next).orElse(""))
            .views("missing", missing);
    return Sheet.of("door-label", "Panel door label", "inside the panel door", view);
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
        .text("loop", words.isRadio() ? "radio" : words.loop())
        .flag("wired", !words.isRadio());
  }

  private static Optional<String> next(Service service) {
    return service
        .lastVisit()
        .find()
        .flatMap(last ->
            service.interval().find().map(each -> last.plusMonths(each.months()).toString()));
  }
}
