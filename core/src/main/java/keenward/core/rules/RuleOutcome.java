package keenward.core.rules;

/**
 * How one rule went.
 *
 * @param code code of the rule
 * @param judged how many things it judged
 * @param findings how many faults it found
 * @param notAssessed how many things it could not judge
 */
public record RuleOutcome(String code, int judged, int findings, int notAssessed) {

  /** Whether it judged something, all that it had to judge, and found no fault. */
  public boolean hasPassed() {
    return judged > 0 && findings == 0 && notAssessed == 0;
  }

  /** Whether the plan holds nothing of what the rule is about. */
  public boolean hadNothingToJudge() {
    return judged == 0 && findings == 0 && notAssessed == 0;
  }
}
