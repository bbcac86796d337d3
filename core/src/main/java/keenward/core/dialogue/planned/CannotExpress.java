package keenward.core.dialogue.planned;

import keenward.core.plan.PlanPath;

/**
 * Something that the plan states and the panel cannot hold.
 *
 * @param place where the plan states it
 * @param what what cannot be held
 * @param expected what the panel can hold
 * @param remedy what to do
 */
public record CannotExpress(PlanPath place, String what, String expected, String remedy) {

  /**
   * What is expected where the panel has no setting for a fact, and may do the right thing without
   * one.
   */
  static final String NO_SETTING = "nothing";

  /**
   * Whether the panel just has no setting for it, so that somebody has to look what it does by
   * itself.
   */
  public boolean lacksSetting() {
    return expected.equals(NO_SETTING);
  }
}
