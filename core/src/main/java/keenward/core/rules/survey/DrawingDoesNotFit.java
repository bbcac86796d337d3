package keenward.core.rules.survey;

import keenward.core.building.BuildingProblem;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Rooms, walls and openings of the drawing do not fit together. */
public final class DrawingDoesNotFit implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 3, "drawing-does-not-fit", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for outlines that cross or overlap, openings that have no wall or lie past its end, and the"
                  + " like.")
          .consequence(
              "What is computed from the drawing is wrong there: ways in, openings that nothing watches, lengths of"
                  + " cable.")
          .limits("Does not know the building: a drawing that fits may still be wrong.")
          .remedy("Measure again, and correct the outline or the opening.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Office: { use: office, outline: [[4, 0], [9, 0], [9, 4], [4, 4]] }
              zones:
                1: { name: Store door, response: perimeter, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Office: { use: office, outline: [[5, 0], [9, 0], [9, 4], [5, 4]] }
              zones:
                1: { name: Store door, response: perimeter, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Office: { use: office, outline: [[5.03, 0], [9, 0], [9, 4], [5.03, 4]] }
              zones:
                1: { name: Store door, response: perimeter, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    if (input.building().isDrawn()) {
      report.judged();
    }
    for (BuildingProblem problem : input.building().problems()) {
      report.judged();
      report.found(
          problem.path(),
          Words.capitalized(problem.what()) + "; expected " + problem.expected() + ".",
          Words.capitalized(problem.remedy()) + ".",
          Involved.NOTHING);
    }
  }
}
