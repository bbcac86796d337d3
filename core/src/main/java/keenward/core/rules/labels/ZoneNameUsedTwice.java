package keenward.core.rules.labels;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Two zones have one name. */
public final class ZoneNameUsedTwice implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LABELS, 1, "zone-name-used-twice", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks for two zones with the same name.")
          .consequence(
              "Whoever reads the keypad or answers the telephone does not know which of them alarmed, and walks into"
                  + " the wrong room.")
          .limits("Blanks and case make no difference. Names that only sound alike are let pass.")
          .remedy("Name each zone by its place.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Window, response: perimeter, device: contact }
                2: { name: Window, response: perimeter, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Office window, response: perimeter, device: contact }
                2: { name: Store window,  response: perimeter, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Window W, response: perimeter, device: contact }
                2: { name: Window E, response: perimeter, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<String, Zone> byName = new LinkedHashMap<>();
    for (Zone zone : input.plan().zones()) {
      report.judged();
      Zone first = byName.putIfAbsent(plain(zone.name()), zone);
      if (first != null) {
        report.found(
            zone.path().then("name"),
            "Zones "
                + first.number()
                + " and "
                + zone.number()
                + " are both named '"
                + zone.name()
                + "'.",
            "Give zone " + zone.number() + " a name that says where it is.",
            Involved.zones(List.of(first.number(), zone.number())));
      }
    }
  }

  private static String plain(String name) {
    return Words.withoutBlanks(name).toUpperCase(Locale.ROOT);
  }
}
