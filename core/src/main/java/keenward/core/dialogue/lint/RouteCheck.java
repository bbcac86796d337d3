package keenward.core.dialogue.lint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;

/**
 * Routes that go nowhere sensible: circles of deciding screens, dead branches, leaving without a
 * way.
 */
final class RouteCheck {
  private final PanelDescription description;
  private final List<LintFinding> findings;

  private RouteCheck(PanelDescription description, List<LintFinding> findings) {
    this.description = description;
    this.findings = findings;
  }

  static void check(PanelDescription description, List<LintFinding> findings) {
    RouteCheck check = new RouteCheck(description, findings);
    for (Screen screen : description.screens().values()) {
      check.checkCircle(screen);
      Actions.forEach(screen, action -> check.checkBranches(screen, action));
      if (screen.programming()) {
        Actions.forEach(screen, action -> check.checkWayOut(screen, action));
      }
      check.checkMenu(screen);
    }
  }

  private void checkCircle(Screen screen) {
    if (screen.decide().isEmpty()) {
      return;
    }
    Set<String> seen = new HashSet<>();
    Deque<String> open = new ArrayDeque<>(next(screen));
    while (!open.isEmpty()) {
      String name = open.pop();
      if (name.equals(screen.name())) {
        add(
            LintSeverity.ERROR,
            Places.screen(screen.name()),
            "leads round to itself without ever showing anything",
            "lead on to a screen that is shown");
        return;
      }
      Screen other = description.screens().get(name);
      if (other != null && other.decide().isPresent() && seen.add(name)) {
        open.addAll(next(other));
      }
    }
  }

  private static List<String> next(Screen screen) {
    List<String> names = new ArrayList<>();
    screen
        .decide()
        .ifPresent(action -> {
          for (Action.Branch branch : action.branches()) {
            if (branch.destination() instanceof Destination.ToScreen to) {
              names.add(to.screen());
            }
          }
        });
    return names;
  }

  /** A branch is dead when an earlier one takes everything that it asks for. */
  private void checkBranches(Screen screen, Action action) {
    List<Condition> earlier = new ArrayList<>();
    for (Action.Branch branch : action.branches()) {
      for (Condition before : earlier) {
        if (before.equals(Condition.ALWAYS)
            || before.equals(branch.when())
            || covers(before, branch.when())) {
          add(
              LintSeverity.ERROR,
              Places.screen(screen.name()),
              "a branch can never be taken, because an earlier one always is when it would be",
              "remove it, or put it first");
        }
      }
      earlier.add(branch.when());
    }
  }

  private static boolean covers(Condition before, Condition after) {
    return before instanceof Condition.FieldIs first
        && after instanceof Condition.FieldIs second
        && first.field().equals(second.field())
        && first.values().containsAll(second.values());
  }

  private void checkWayOut(Screen screen, Action action) {
    for (Action.Branch branch : action.branches()) {
      if (branch.destination() instanceof Destination.ToScreen to) {
        Screen next = description.screens().get(to.screen());
        if (next != null && next.decide().isEmpty() && !next.programming()) {
          add(
              LintSeverity.ERROR,
              Places.screen(screen.name()),
              "leads out of programming to '" + to.screen() + "' without a way of leaving",
              "use 'leave' with the name of a way of leaving");
        }
      }
    }
  }

  private void checkMenu(Screen screen) {
    if (screen.entry().isPresent() && screen.entry().get() instanceof Entry.Menu menu) {
      Set<String> shown = new HashSet<>();
      for (Entry.Item item : menu.items()) {
        if (!shown.add(item.shown())) {
          add(
              LintSeverity.ERROR,
              Places.screen(screen.name()),
              "two choices of the menu look the same: '" + item.shown() + "'",
              "word one of them differently");
        }
      }
    }
  }

  private void add(LintSeverity severity, String place, String what, String remedy) {
    findings.add(new LintFinding(severity, place, what, remedy));
  }
}
