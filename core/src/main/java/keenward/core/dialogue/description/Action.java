package keenward.core.dialogue.description;

import java.util.List;

/**
 * What a key does: the first branch whose condition holds is taken; where none holds the key is
 * refused.
 */
public record Action(List<Branch> branches) {
  public Action {
    branches = List.copyOf(branches);
  }

  /**
   * One way that a key may go.
   *
   * @param when condition, judged before the effects
   * @param effects done in order
   * @param destination where it leads
   */
  public record Branch(Condition when, List<Effect> effects, Destination destination) {
    public Branch {
      effects = List.copyOf(effects);
    }
  }

  /** The action that only leads to {@code screen}. */
  public static Action to(String screen) {
    return new Action(
        List.of(new Branch(Condition.ALWAYS, List.of(), new Destination.ToScreen(screen))));
  }
}
