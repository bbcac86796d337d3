package keenward.core.dialogue.lint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.machine.Stored;

/** What trying the dialogue out shows: reach, ways out, writing and reading. */
final class ExplorationCheck {
  private final PanelDescription description;
  private final Exploration exploration;
  private final List<LintFinding> findings;
  private final Set<String> reached = new LinkedHashSet<>();

  ExplorationCheck(
      PanelDescription description, Exploration exploration, List<LintFinding> findings) {
    this.description = description;
    this.exploration = exploration;
    this.findings = findings;
    exploration.nodes().forEach(node -> reached.add(node.state().screen()));
  }

  void check() {
    if (!exploration.complete()) {
      add(
          LintSeverity.ERROR,
          "/screens",
          "the dialogue is too large to be proved: "
              + exploration.nodes().size()
              + " states were tried, and there are more",
          "use fewer conditions on different fields");
      // What was not tried may lead anywhere, so nothing more can be said.
      return;
    }
    checkReach();
    checkWaysOut();
    checkWriting();
    checkReading();
    checkLeaving();
  }

  private void checkReach() {
    for (Screen screen : description.screens().values()) {
      if (screen.decide().isEmpty() && !reached.contains(screen.name())) {
        add(
            LintSeverity.ERROR,
            Places.screen(screen.name()),
            "nothing leads to this screen",
            "lead a key to it, or remove it");
      }
    }
    Set<String> named = new HashSet<>();
    for (Screen screen : description.screens().values()) {
      Actions.forEach(
          screen,
          action ->
              action
                  .branches()
                  .forEach(branch -> {
                    if (branch.destination() instanceof Destination.ToScreen to) {
                      named.add(to.screen());
                    }
                  }));
    }
    for (Screen screen : description.screens().values()) {
      if (screen.decide().isPresent() && !named.contains(screen.name())) {
        add(
            LintSeverity.ERROR,
            Places.screen(screen.name()),
            "nothing leads to this screen",
            "lead a key to it, or remove it");
      }
    }
  }

  /**
   * A state is safe when something that a person can choose to do leads, whatever the memory holds,
   * to a safe departure or a safe state.
   */
  private void checkWaysOut() {
    List<Exploration.Node> nodes = exploration.nodes();
    Map<Integer, List<Integer>> before = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>();
    boolean[] waiting = new boolean[nodes.size()];
    for (int from = 0; from < nodes.size(); from++) {
      for (Exploration.Tried tried : nodes.get(from).tried()) {
        for (Exploration.Outcome outcome : tried.outcomes()) {
          before.computeIfAbsent(outcome.to(), any -> new ArrayList<>()).add(from);
        }
      }
      open.add(from);
      waiting[from] = true;
    }
    boolean[] safe = new boolean[nodes.size()];
    while (!open.isEmpty()) {
      int index = open.remove();
      waiting[index] = false;
      if (!safe[index] && hasSafeTrial(nodes.get(index), safe)) {
        safe[index] = true;
        for (int from : before.getOrDefault(index, List.of())) {
          if (!safe[from] && !waiting[from]) {
            open.add(from);
            waiting[from] = true;
          }
        }
      }
    }
    Set<String> named = new HashSet<>();
    for (int index = 0; index < nodes.size(); index++) {
      String screen = nodes.get(index).state().screen();
      boolean programming = exploration.interpreter().programmingOpen(nodes.get(index).state());
      if (programming && !safe[index] && named.add(screen)) {
        add(
            LintSeverity.ERROR,
            Places.screen(screen),
            "no safe way out from here, after: " + String.join(", ", exploration.way(index)),
            "lead a key towards a way of leaving that is safe");
      }
    }
  }

  private static boolean hasSafeTrial(Exploration.Node node, boolean[] safe) {
    for (Exploration.Tried tried : node.tried()) {
      boolean allSafe = tried.chosen();
      for (Exploration.Outcome outcome : tried.outcomes()) {
        allSafe &= outcome.left().isPresent() ? outcome.left().get().safe() : safe[outcome.to()];
      }
      if (allSafe) {
        return true;
      }
    }
    return false;
  }

  private void checkWriting() {
    Set<String> written = new HashSet<>();
    for (Exploration.Node node : exploration.nodes()) {
      for (Exploration.Tried tried : node.tried()) {
        for (Exploration.Outcome outcome : tried.outcomes()) {
          for (Stored stored : outcome.stored()) {
            written.add(stored.slot().field().name());
          }
        }
      }
    }
    for (Field field : description.fields()) {
      if (!written.contains(field.name())) {
        add(
            LintSeverity.ERROR,
            Places.field(field),
            "no screen writes this field",
            "add the screen that does, or remove the field");
      }
    }
  }

  private void checkReading() {
    Set<String> shown = new HashSet<>();
    Widths widths = new Widths(description);
    for (Screen screen : description.screens().values()) {
      if (reached.contains(screen.name())) {
        for (Template line : screen.lines()) {
          for (Template.Part part : line.parts()) {
            read(screen, part)
                .ifPresent(reference ->
                    widths.fields(screen, reference).forEach(field -> shown.add(field.name())));
          }
        }
      }
    }
    for (Field field : description.fields()) {
      if (!shown.contains(field.name()) && !field.writeOnly()) {
        add(
            LintSeverity.ERROR,
            Places.field(field),
            "no screen shows this field",
            "show it on a screen, or say write only: yes");
      }
      if (shown.contains(field.name()) && field.writeOnly()) {
        add(
            LintSeverity.WARNING,
            Places.field(field),
            "is called write only, but a screen shows it",
            "take out write only");
      }
    }
  }

  private static Optional<FieldReference> read(Screen screen, Template.Part part) {
    return switch (part) {
      case Template.FieldText field -> Optional.of(field.field());
      case Template.TypedText typed -> typed.masked() ? Optional.empty() : typed.otherwise();
      case Template.UnderCursor cursor ->
          screen.entry().isPresent() && screen.entry().get() instanceof Entry.Scroll scroll
              ? Optional.of(scroll.field())
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  private void checkLeaving() {
    Set<String> used = new HashSet<>();
    for (Exploration.Node node : exploration.nodes()) {
      for (Exploration.Tried tried : node.tried()) {
        for (Exploration.Outcome outcome : tried.outcomes()) {
          outcome.left().ifPresent(left -> used.add(left.way()));
        }
      }
    }
    for (String way : description.leaving().keySet()) {
      if (!used.contains(way)) {
        add(
            LintSeverity.ERROR,
            Places.of("leaving", way),
            "no key leads to this way of leaving",
            "lead a key to it, or remove it");
      }
    }
  }

  private void add(LintSeverity severity, String place, String what, String remedy) {
    findings.add(new LintFinding(severity, place, what, remedy));
  }
}
