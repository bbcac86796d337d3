package keenward.core.rules.labels;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
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

/** A zone's name says what it is, and not where. */
public final class NameWithoutPlace implements Rule {

  private static final Set<String> WORDS_OF_THE_TRADE =
      Set.of(
          "zone",
          "input",
          "detector",
          "sensor",
          "device",
          "pir",
          "motion",
          "contact",
          "reed",
          "alarm",
          "spare",
          "new",
          "wireless",
          "radio",
          "wired",
          "no",
          "nr",
          "number");

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LABELS, 2, "name-without-place", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Looks for zone names made only of numbers and words such as zone, sensor or motion.")
          .consequence("Nobody on the telephone can tell the owner, or the police, where to look.")
          .limits("Knows English words only.")
          .remedy("Name the room or opening.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Motion 1, response: instant, device: motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store motion, response: instant, device: motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Motion at stairs, response: instant, device: motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      report.judged();
      boolean saysNothing =
          Arrays.stream(zone.name().toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
              .allMatch(word -> word.isEmpty() || WORDS_OF_THE_TRADE.contains(word));
      if (saysNothing) {
        report.found(
            zone.path().then("name"),
            Words.atStart(zone) + " has a name that does not say where it is.",
            "Name its room or opening.",
            Involved.zone(zone.number()));
      }
    }
  }
}
