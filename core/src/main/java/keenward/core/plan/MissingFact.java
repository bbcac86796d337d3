package keenward.core.plan;

/**
 * A fact that a sum or a list would need and the plan does not give.
 *
 * @param place place in the plan where it belongs, or the nearest thing that is there
 * @param why what could not be told for want of it
 * @param lineToAdd the line that would let it be told; dots stand for what has to be found out
 */
public record MissingFact(PlanPath place, String why, String lineToAdd) {

  /** One line for people, which always begins with the words "not assessed". */
  public String message() {
    return "not assessed: " + why + "; add `" + lineToAdd + "`";
  }
}
