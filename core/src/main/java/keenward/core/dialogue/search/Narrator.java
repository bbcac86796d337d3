package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.machine.Display;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Effort;
import keenward.core.dialogue.order.Instruction;
import org.jspecify.annotations.Nullable;

/**
 * Turns a script into instructions: what shows, what to press, what is stored, what is at stake.
 */
final class Narrator {
  private static final int KEY_TENTHS = 12;
  private static final int READING_TENTHS = 14;

  private final Task task;
  private final Ways ways;
  private final Drops drops;
  private int number;

  /**
   * A narrator.
   *
   * @param firstNumber number of the first instruction
   */
  Narrator(Task task, Ways ways, Drops drops, int firstNumber) {
    this.task = task;
    this.ways = ways;
    this.drops = drops;
    this.number = firstNumber;
  }

  /** Instructions and what they take. */
  record Told(List<Instruction> instructions, Effort effort) {
    Told {
      instructions = List.copyOf(instructions);
    }
  }

  Told tell(List<Item> items) {
    List<Instruction> instructions = new ArrayList<>();
    Effort effort = Effort.NONE;
    for (int index = 0; index < items.size(); index++) {
      boolean looksAfterwards =
          index + 1 < items.size()
              && items.get(index + 1) instanceof Item.Split split
              && split.afterwards();
      Told told = tell(items.get(index), looksAfterwards ? items.get(index + 1) : null);
      instructions.addAll(told.instructions());
      effort = effort.plus(told.effort());
    }
    return new Told(instructions, effort);
  }

  private Told tell(Item item, @Nullable Item next) {
    return switch (item) {
      case Item.Do deed -> step(deed, next instanceof Item.Split split ? split.slot() : null);
      case Item.Scroll scroll -> scroll(scroll);
      case Item.Switching switching -> switching(switching);
      case Item.Split split -> branch(split);
      case Item.Halt halt -> halt(halt);
    };
  }

  private Display display(State state) {
    return task.interpreter.display(state, task.keypad.name());
  }

  /** A display of which nothing is said yet: the cases that follow say what it may show. */
  private static Display anything(Slot slot) {
    return new Display(List.of("?"), List.of(slot));
  }

  private Told step(Item.Do deed, @Nullable Slot decides) {
    int own = number++;
    Labels labels = new Labels();
    List<State> states = new ArrayList<>();
    State state = deed.sample();
    Run run = new Run(task.interpreter, task.keypad.name(), state);
    int personTenths = READING_TENTHS;
    int panelTenths = 0;
    for (Act act : deed.acts()) {
      states.add(run.state());
      Run next = repeat(new Run(task.interpreter, task.keypad.name(), run.state()), act);
      int tenths = Cost.tenths(next.cost());
      panelTenths += tenths;
      personTenths += Math.max(act.keys() * KEY_TENTHS, tenths);
      labels.add(act, run.state(), next.state());
      run = next;
    }
    Display then = decides == null ? display(deed.after()) : anything(decides);
    Instruction step =
        new Instruction.Step(
            own,
            deed.from().screen(),
            display(deed.from()),
            labels.acts(),
            then,
            deed.after().screen(),
            deed.stored(),
            panelTenths,
            drops.mayWait(deed.from()),
            drops.leftAlone(own, states),
            drops.powerFails(own, states));
    return new Told(List.of(step), effort(deed.acts(), panelTenths, personTenths));
  }

  private static Effort effort(List<Act> acts, int panelTenths, int personTenths) {
    int keys = 0;
    int others = 0;
    for (Act act : acts) {
      keys += act.keys();
      others += act.keys() == 0 ? 1 : 0;
    }
    return new Effort(keys, others, panelTenths, personTenths);
  }

  private static Run repeat(Run run, Act act) {
    return switch (act) {
      case Act.Press press -> run.press(press.key(), press.times());
      case Act.EnterCode code -> run.press(Run.CODE + code.reference());
      case Act.Wait wait -> run.pause(wait.tenths());
      case Act.Transmit send -> run.transmit(send.serial(), send.part());
      case Act.PowerOff off -> run.cutPower();
      case Act.PowerOn on -> run;
    };
  }

  private Told scroll(Item.Scroll scroll) {
    int own = number++;
    int most = 0;
    for (Instruction.Way way : scroll.ways()) {
      most = Math.max(most, way.atMost());
    }
    return new Told(
        List.of(
            new Instruction.ScrollUntil(
                own,
                scroll.from().screen(),
                display(scroll.from()),
                scroll.slot(),
                scroll.wanted(),
                scroll.ways(),
                display(scroll.reached()))),
        new Effort(
            most,
            0,
            most * task.keypad.lagTenths(),
            READING_TENTHS + most * Math.max(KEY_TENTHS, task.keypad.lagTenths())));
  }

  private Told switching(Item.Switching switching) {
    int own = number++;
    int keys = 0;
    for (Instruction.Switch one : switching.switches()) {
      keys += one.first().size() + 1;
    }
    return new Told(
        List.of(
            new Instruction.SwitchEach(
                own,
                switching.from().screen(),
                display(switching.from()),
                switching.slot(),
                switching.wanted(),
                switching.switches(),
                display(switching.reached()))),
        new Effort(
            keys,
            0,
            keys * task.keypad.lagTenths(),
            READING_TENTHS + keys * Math.max(KEY_TENTHS, task.keypad.lagTenths())));
  }

  private Told branch(Item.Split split) {
    int own = number++;
    List<Instruction.Case> cases = new ArrayList<>();
    Effort longest = Effort.NONE;
    for (Item.Case one : split.cases()) {
      Told told = tell(one.items());
      longest = longest.orAtMost(told.effort());
      cases.add(
          new Instruction.Case(
              one.values(),
              one.values().isEmpty() ? List.of() : display(one.from()).lines(),
              told.instructions()));
    }
    Display now = split.afterwards() ? anything(split.slot()) : display(split.from());
    String screen =
        split.afterwards() ? split.cases().get(0).from().screen() : split.from().screen();
    return new Told(
        List.of(new Instruction.Branch(own, screen, now, split.slot(), cases)),
        longest.plus(new Effort(0, 0, 0, READING_TENTHS)));
  }

  private Told halt(Item.Halt halt) {
    int own = number++;
    List<Act> leave = new ArrayList<>();
    Optional<Path> out = ways.out(halt.from());
    if (out.isPresent()) {
      for (Item item : out.get().items()) {
        if (item instanceof Item.Do deed) {
          leave.addAll(deed.acts());
        }
      }
    }
    return new Told(
        List.of(
            new Instruction.Halt(
                own, halt.from().screen(), display(halt.from()), halt.why(), leave)),
        Effort.NONE);
  }

  /** Puts acts together and says what they type. */
  private final class Labels {
    private final List<Act> acts = new ArrayList<>();

    List<Act> acts() {
      return acts;
    }

    void add(Act act, State before, State after) {
      if (!(act instanceof Act.Press press)) {
        acts.add(act);
        return;
      }
      int held = task.keypad.keys().getOrDefault(press.key(), 0);
      boolean tapping = before.typing().pending().equals(press.key()) && lettered(before);
      String types = types(press.key(), before, after);
      Act last = acts.isEmpty() ? null : acts.get(acts.size() - 1);
      if (last instanceof Act.Press earlier
          && earlier.key().equals(press.key())
          && (tapping || (earlier.types().isEmpty() && types.isEmpty()))) {
        acts.set(acts.size() - 1, new Act.Press(press.key(), earlier.times() + 1, held, types));
      } else {
        acts.add(new Act.Press(press.key(), 1, held, types));
      }
    }

    private boolean lettered(State state) {
      return entry(state).filter(Entry.Lettered.class::isInstance).isPresent();
    }

    private Optional<Entry> entry(State state) {
      Screen screen = task.description.screens().get(state.screen());
      return screen == null ? Optional.empty() : screen.entry();
    }

    private String types(String key, State before, State after) {
      String text = after.typing().text();
      if (lettered(before)) {
        return after.typing().pending().equals(key) && !text.isEmpty()
            ? text.substring(text.length() - 1)
            : "";
      }
      if (after.screen().equals(before.screen())
          && text.length() == before.typing().text().length() + 1) {
        return text.substring(text.length() - 1);
      }
      Map<String, String> direct = task.description.keyMeanings().direct();
      Screen screen = task.description.screens().get(before.screen());
      boolean own = screen != null && screen.keys().containsKey(key);
      return !own && takesDigits(before, key) ? direct.getOrDefault(key, "") : "";
    }

    private boolean takesDigits(State state, String key) {
      return entry(state)
          .filter(entry ->
              switch (entry) {
                case Entry.Typed typed ->
                    !key.equals(typed.confirm()) && !key.equals(typed.erase());
                case Entry.WordByNumber words ->
                    !key.equals(words.confirm()) && !key.equals(words.erase());
                case Entry.ToggleByCode toggle -> !key.equals(toggle.confirm());
                default -> false;
              })
          .isPresent();
    }
  }
}
