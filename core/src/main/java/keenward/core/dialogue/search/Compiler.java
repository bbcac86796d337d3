package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.Assumption;
import keenward.core.dialogue.order.Effort;
import keenward.core.dialogue.order.Group;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.order.Shortness;
import keenward.core.dialogue.order.StoppingPlace;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.progress.Progress;

/** Makes an order. Nothing that it makes is to be used before it was replayed. */
public final class Compiler {
  private final OrderRequest request;
  private final Progress progress;
  private final Interpreter interpreter;

  private Compiler(OrderRequest request, Interpreter interpreter, Progress progress) {
    this.request = request;
    this.interpreter = interpreter;
    this.progress = progress;
  }

  /** An order, or reasons why there is none. */
  public sealed interface Outcome {
    /** An order, not yet proved. */
    record Made(WorkOrder order) implements Outcome {}

    /** None, and why. */
    record NotMade(List<Reason> reasons) implements Outcome {
      public NotMade {
        reasons = List.copyOf(reasons);
      }
    }
  }

  /**
   * Makes an order for {@code request}.
   *
   * @param interpreter the meaning of the request's description
   */
  public static Outcome compile(OrderRequest request, Interpreter interpreter, Progress progress) {
    return new Compiler(request, interpreter, progress).compile();
  }

  private Outcome compile() {
    Optional<KeypadKind> keypad = request.description().findKeypad(request.keypad());
    if (keypad.isEmpty()) {
      return new Outcome.NotMade(List.of(noKeypad()));
    }
    List<Reason> misfits = new ArrayList<>();
    request.planned().forEach((slot, value) -> Fit.refusal(slot, value).ifPresent(misfits::add));
    if (!misfits.isEmpty()) {
      return new Outcome.NotMade(misfits);
    }
    Map<Slot, Assumption> assumptions = assumptions();
    Memory found = request.found();
    for (Assumption assumption : assumptions.values()) {
      found = found.with(assumption.slot(), assumption.holds());
    }
    Task task = new Task(interpreter, keypad.get(), found, request.planned(), request.consents());
    return compile(task, List.copyOf(assumptions.values()));
  }

  private Reason noKeypad() {
    List<String> names = new ArrayList<>();
    for (KeypadKind keypad : request.description().keypads()) {
      names.add(keypad.name());
    }
    return new Reason(
        Reason.Kind.NO_SUCH_KEYPAD,
        Optional.empty(),
        request.description().panel() + " has no keypad \"" + request.keypad() + "\".",
        "Choose one of: " + String.join(", ", names) + ".");
  }

  /**
   * Codes that let one in are held by whoever carries out the order, even where nobody wrote them
   * down.
   */
  private Map<Slot, Assumption> assumptions() {
    Map<Slot, Assumption> assumptions = new LinkedHashMap<>();
    Set<String> asked = new TreeSet<>();
    for (Screen screen : request.description().screens().values()) {
      if (!screen.programming()
          && screen.entry().isPresent()
          && screen.entry().get() instanceof Entry.Coded coded
          && coded.target() instanceof Target.Check check) {
        asked.addAll(new DescriptionFacts(request.description()).names(check.field()));
      }
    }
    for (Slot slot : interpreter.layout().slots()) {
      if (asked.contains(slot.field().name())
          && slot.field().type() instanceof FieldType.Code
          && !request.found().get(slot).known()) {
        assumptions.put(
            slot,
            new Assumption(
                slot,
                new Value.Secret(slot.describe() + " as set now"),
                "Whoever carries out the order holds the "
                    + slot.describe()
                    + " that is set now."));
      }
    }
    return assumptions;
  }

  private Outcome compile(Task task, List<Assumption> assumptions) {
    ScreenGraph graph = new ScreenGraph(task.description, task.keypad, task.facts.powerWindow());
    Estimate estimate = new Estimate(task, graph);
    Ways ways = new Ways(task, graph, progress);
    Planner planner = new Planner(task, estimate, ways, progress);
    List<Scope.Unit> units = planner.units();
    if (units.isEmpty()) {
      return new Outcome.Made(nothing(task, assumptions));
    }
    List<Reason> beforehand = new Beforehand(task, estimate).reasons(units);
    if (!beforehand.isEmpty()) {
      return new Outcome.NotMade(beforehand);
    }
    return switch (planner.plan(units)) {
      case Plan.Found found ->
          new Outcome.Made(
              order(task, ways, found, new Bound(task, estimate).atLeast(units), assumptions));
      case Plan.Failed failed ->
          new Outcome.NotMade(new Diagnosis(task, estimate, ways, progress).of(failed));
    };
  }

  private static WorkOrder nothing(Task task, List<Assumption> assumptions) {
    return new WorkOrder(
        task.description.panel(),
        task.keypad.name(),
        List.of(),
        List.of(),
        List.of(),
        assumptions,
        Effort.NONE,
        new Shortness(0, 0, true),
        task.description.manners().whileOpen());
  }

  private static WorkOrder order(
      Task task, Ways ways, Plan.Found plan, int atLeast, List<Assumption> assumptions) {
    Path path = plan.path();
    List<Grouping.Part> parts = new Grouping(task, ways, path).parts();
    Drops drops = drops(task, path, parts);
    SideNotes notes = new SideNotes(task, path.end().working());
    notes.look(path.items());
    List<Group> groups = new ArrayList<>();
    Effort effort = Effort.NONE;
    int number = 1;
    for (Grouping.Part part : parts) {
      List<Item> items = items(part.edges());
      Narrator.Told told = new Narrator(task, ways, drops, number).tell(items);
      number += Count.of(items);
      effort = effort.plus(told.effort());
      groups.add(
          new Group(
              part.part(),
              part.record(),
              part.number(),
              told.instructions(),
              told.effort(),
              part.stop().map(stop -> stop(task, ways, part, stop))));
    }
    int acts = Cost.acts(path.cost());
    boolean exact = plan.exact() && plain(path);
    return new WorkOrder(
        task.description.panel(),
        task.keypad.name(),
        groups,
        notes.passing(),
        notes.unseen(),
        assumptions,
        effort,
        new Shortness(acts, exact ? acts : Math.min(acts, atLeast), exact),
        task.description.manners().whileOpen());
  }

  /** Whether nothing depends on what is shown, so that there is one length to speak of. */
  private static boolean plain(Path path) {
    for (Item item : path.items()) {
      if (!(item instanceof Item.Do)) {
        return false;
      }
    }
    return true;
  }

  private static StoppingPlace stop(Task task, Ways ways, Grouping.Part part, State stop) {
    Drops none = new Drops(task, List.of(), Set.of());
    return new StoppingPlace(
        stop.screen(),
        task.interpreter.display(stop, task.keypad.name()),
        new Narrator(task, ways, none, 1).tell(part.leave()).instructions(),
        new Narrator(task, ways, none, 1).tell(part.comeBack()).instructions());
  }

  private static List<Item> items(List<Edge> edges) {
    List<Item> items = new ArrayList<>();
    for (Edge edge : edges) {
      items.addAll(edge.items());
    }
    return items;
  }

  private static Drops drops(Task task, Path path, List<Grouping.Part> parts) {
    List<Drops.Mark> marks = new ArrayList<>();
    int number = 1;
    for (Grouping.Part part : parts) {
      boolean first = true;
      for (Item item : items(part.edges())) {
        marks.add(new Drops.Mark(number, item.from().working(), first));
        number += Count.of(item);
        first = false;
      }
    }
    Set<Integer> stored = new TreeSet<>();
    for (Stored one : Stores.of(path.items())) {
      stored.add(one.slot().index());
    }
    return new Drops(task, marks, stored);
  }
}
