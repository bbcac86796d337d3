package keenward.core.dialogue.machine;

import java.util.List;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;

/** The longest window after power-up that any condition of a description asks for. */
final class Windows {
  private Windows() {}

  static int longest(PanelDescription description) {
    int[] longest = {0};
    for (Screen screen : description.screens().values()) {
      Actions.forEach(
          screen,
          action -> {
            for (Action.Branch branch : action.branches()) {
              longest[0] = Math.max(longest[0], of(branch.when()));
            }
          });
    }
    return longest[0];
  }

  private static int of(Condition condition) {
    return switch (condition) {
      case Condition.SincePowerUp since -> since.withinTenths();
      case Condition.Not not -> of(not.condition());
      case Condition.All all -> ofMost(all.conditions());
      case Condition.Any any -> ofMost(any.conditions());
      default -> 0;
    };
  }

  private static int ofMost(List<Condition> conditions) {
    int longest = 0;
    for (Condition condition : conditions) {
      longest = Math.max(longest, of(condition));
    }
    return longest;
  }
}
