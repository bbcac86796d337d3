package keenward.core.rules.records;

import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.plan.UnplacedRow;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A row of an imported list has no place in the plan. */
public final class RowNotPlaced implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RECORDS, 1, "row-not-placed", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Lists the rows of an import that did not fit, until somebody has dealt with them.")
          .consequence(
              "A detector that is on the wall is missing from the plan, the test and the papers.")
          .limits("Says nothing about rows that were placed wrongly.")
          .remedy("Make a zone of the row, or delete it from `unplaced:` once it is settled.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              unplaced:
                - { text: "1;Side door;contact", why: zone 1 is there already }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
                2: { name: Side door,  response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact, note: row 1 of the old list }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<UnplacedRow> rows = input.plan().unplaced();
    for (int index = 0; index < rows.size(); index++) {
      UnplacedRow row = rows.get(index);
      report.judged();
      report.found(
          PlanPath.of("unplaced", index),
          "Row '" + row.text() + "' of an import has no place in the plan: " + row.why() + ".",
          "Make a zone of it, or delete it here once it is settled.",
          Involved.NOTHING);
    }
  }
}
