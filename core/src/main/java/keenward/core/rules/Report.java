package keenward.core.rules;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;

/** Takes down what one rule has to say about one plan. */
public final class Report {
  private final RuleCard card;
  private final List<Finding> findings = new ArrayList<>();
  private final List<NotAssessed> notAssessed = new ArrayList<>();
  private int judged;

  /** A blank report of a rule. */
  public Report(RuleCard card) {
    this.card = card;
  }

  /** Counts something that could be judged, whatever the verdict. */
  public void judged() {
    judged(1);
  }

  /** Counts several things that could be judged. */
  public void judged(int things) {
    judged += things;
  }

  /** A fault of the rule's own severity. */
  public void found(PlanPath place, String what, String remedy, Involved involved) {
    found(card.severity(), place, what, remedy, involved);
  }

  /** A fault that matters less than the rule's worst. */
  public void found(
      Severity severity, PlanPath place, String what, String remedy, Involved involved) {
    if (severity.compareTo(card.severity()) < 0) {
      throw new IllegalArgumentException(
          card.code() + " finds nothing worse than " + card.severity());
    }
    findings.add(new Finding(card.code(), severity, place, what, remedy, involved));
  }

  /** Something that could not be judged. */
  public void notAssessed(PlanPath place, String why, String lineToAdd) {
    notAssessed.add(new NotAssessed(card.code(), place, why, lineToAdd));
  }

  /** Something that could not be judged for want of a fact. */
  public void notAssessed(MissingFact fact) {
    notAssessed(fact.place(), fact.why(), fact.lineToAdd());
  }

  /** The faults, in the order found. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** What could not be judged, in the order met. */
  public List<NotAssessed> notAssessed() {
    return List.copyOf(notAssessed);
  }

  /** How many things were judged. */
  public int judgedCount() {
    return judged;
  }
}
