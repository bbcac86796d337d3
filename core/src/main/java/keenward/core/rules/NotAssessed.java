package keenward.core.rules;

import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;

/**
 * Something that a rule could not judge.
 *
 * @param code code of the rule
 * @param place where the plan lacks a fact
 * @param why what could not be judged, and what is lacking
 * @param lineToAdd the line of plan text that would let it be judged; where the plan cannot supply
 *     it, the option to give
 */
public record NotAssessed(String code, PlanPath place, String why, String lineToAdd) {

  /** One line for people, which always begins with the words "not assessed". */
  public String message() {
    return new MissingFact(place, why, lineToAdd).message();
  }
}
