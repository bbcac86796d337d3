package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Fact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.Person;
import keenward.core.plan.Site;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.Worded;
import keenward.core.plan.Zone;
import keenward.core.quantities.Span;
import keenward.core.reporting.EventCodes;
import keenward.core.reporting.ZoneEvent;
import keenward.core.reporting.ZoneEvents;

/** What the monitoring centre has to know. */
final class AccountSheet {

  private AccountSheet() {}

  static Sheet of(PapersInput input) {
    SitePlan plan = input.plan();
    Optional<Monitoring> monitoring = plan.monitoring().find();
    List<View> missing = new ArrayList<>();
    if (monitoring.isEmpty()) {
      missing.add(
          Say.missing(
              "account, paths and response, since the plan names no monitoring centre",
              "monitoring: { centre: ..., phone: ..., account: \"....\" }",
              "monitoring"));
    }
    View view =
        new View()
            .flag("monitored", monitoring.isPresent())
            .views("premises", premises(plan.site()))
            .views("account", monitoring.map(each -> account(each, missing)).orElse(List.of()))
            .views("partitions", ZoneScheduleSheet.partitions(plan))
            .views("zones", plan.zones().stream().map(zone -> zone(plan, zone)).toList())
            .views("users", plan.users().stream().map(AccountSheet::user).toList())
            .views("keyholders", monitoring.map(each -> keyholders(plan, each)).orElse(List.of()))
            .text("response", monitoring.map(each -> Say.factOrBlank(each.response())).orElse(""))
            .text("event-source", EventCodes.SOURCE);
    missing.addAll(ZoneScheduleSheet.missing(plan));
    if (monitoring.isPresent() && monitoring.get().keyholders().isEmpty()) {
      missing.add(Say.missing("whom the centre calls", "keyholders: [..., ...]", "monitoring"));
    }
    view.views("missing", missing);
    return Sheet.of("account-form", "Monitoring account form", "monitoring centre", view);
  }

  private static List<View> premises(Site site) {
    List<View> facts = new ArrayList<>();
    fact(facts, "Premises", site.name());
    fact(facts, "Address", String.join(", ", site.addressLines()));
    fact(facts, "Kind", site.premises().find().map(Worded::word).orElse(""));
    fact(facts, "Time zone", Say.factOrBlank(site.timezone()));
    fact(facts, "Site reference", Say.factOrBlank(site.reference()));
    fact(facts, "Alarm firm", Say.factOrBlank(site.company()));
    fact(facts, "Its telephone", Say.factOrBlank(site.contact()));
    fact(facts, "Telephone at the premises", "");
    fact(facts, "Way there, gates, dogs, hazards", "");
    return facts;
  }

  private static List<View> account(Monitoring monitoring, List<View> missing) {
    List<View> facts = new ArrayList<>();
    fact(facts, "Centre", stated("centre", monitoring.centre(), missing));
    fact(facts, "Its telephone", stated("phone", monitoring.phone(), missing));
    fact(facts, "Account", stated("account", monitoring.account(), missing));
    fact(facts, "Event codes", stated("format", monitoring.format().map(Worded::word), missing));
    fact(facts, "Paths", String.join(", ", monitoring.paths().stream().map(Worded::word).toList()));
    fact(facts, "Polled every", Say.factOrBlank(monitoring.polling().map(Span::written)));
    fact(
        facts,
        "Test signal every",
        stated("test every", monitoring.testInterval().map(Span::written), missing));
    fact(
        facts,
        "Openings and closings",
        stated(
            "openings and closings",
            monitoring.openingsAndClosings().map(yes -> yes ? "reported" : "not reported"),
            missing));
    fact(facts, "Permit", stated("permit", monitoring.permit(), missing));
    fact(facts, "Receiver and line", "");
    fact(facts, "Keeper of the encryption key", "");
    return facts;
  }

  private static String stated(String key, Fact<String> fact, List<View> missing) {
    if (!fact.isGiven()) {
      missing.add(Say.missing(key, key + ": ...", "monitoring"));
    }
    return Say.factOrBlank(fact);
  }

  private static void fact(List<View> facts, String what, String value) {
    facts.add(new View().text("what", what).text("value", value));
  }

  private static View zone(SitePlan plan, Zone zone) {
    ZoneEvent event = ZoneEvents.of(plan, zone);
    return new View()
        .number("number", zone.number())
        .text("name", zone.name())
        .text("partition", Say.list(zone.partitions()))
        .text("room", new ZoneWords(plan, zone).rooms())
        .text("response", zone.response().word())
        .number("event", event.code())
        .text("meaning", EventCodes.meaning(event.code()))
        .text("restore", Say.yesNo(zone.reportsRestore()));
  }

  private static View user(User user) {
    return new View()
        .number("number", user.number())
        .text("name", user.name())
        .text("role", user.role().word())
        .text("partitions", Say.list(user.partitions()));
  }

  private static List<View> keyholders(SitePlan plan, Monitoring monitoring) {
    List<View> views = new ArrayList<>();
    for (String name : monitoring.keyholders()) {
      String phone =
          plan.people().stream()
              .filter(person -> person.name().equals(name))
              .findFirst()
              .map(Person::phone)
              .map(Say::factOrBlank)
              .orElse("");
      views.add(
          new View().number("order", views.size() + 1).text("name", name).text("phone", phone));
    }
    return views;
  }
}
