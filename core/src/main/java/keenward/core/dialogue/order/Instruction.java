package keenward.core.dialogue.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Display;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.Stored;

/**
 * A line of an order. Lines are numbered from 1 through the whole order, those within branches
 * included.
 */
public sealed interface Instruction {

  /** Running number in the order. */
  int number();

  /** Name of the screen where it starts. */
  String screen();

  /** What the display must show before anything is done; no lines where the keypad is blind. */
  Display now();

  /**
   * Something to do.
   *
   * @param acts in order
   * @param then what the display must show afterwards
   * @param thenScreen name of the screen afterwards
   * @param stored what gets stored
   * @param takesTenths how long it takes at the least, by the panel's own lag
   * @param mayWaitTenths how long one may wait before starting, or between two keys; absent where
   *     nothing drops out
   * @param whenLeftAlone what follows if it drops out here for want of a key; absent where it never
   *     does
   * @param whenPowerFails what follows if power fails here
   */
  record Step(
      int number,
      String screen,
      Display now,
      List<Act> acts,
      Display then,
      String thenScreen,
      List<Stored> stored,
      int takesTenths,
      OptionalInt mayWaitTenths,
      Optional<Setback> whenLeftAlone,
      Setback whenPowerFails)
      implements Instruction {
    public Step {
      acts = List.copyOf(acts);
      stored = List.copyOf(stored);
      if (acts.isEmpty()) {
        throw new IllegalArgumentException("a step that does nothing");
      }
    }

    /** Whether the keypad shows nothing of use before or after it. */
    public boolean blind() {
      return now.blind() || then.blind();
    }
  }

  /**
   * If it shows this do that, else something else. What the display shows picks exactly one case.
   *
   * @param about the field whose value is not known
   * @param cases in order; only the last may be the one for everything else
   */
  record Branch(int number, String screen, Display now, Slot about, List<Case> cases)
      implements Instruction {
    public Branch {
      cases = List.copyOf(cases);
    }
  }

  /**
   * One case of a {@link Branch}.
   *
   * @param values what the field holds in this case; empty for anything not named before
   * @param shows what the display shows; empty for anything not shown in the cases before
   * @param instructions what to do then; may be empty
   */
  record Case(List<Value> values, List<String> shows, List<Instruction> instructions) {
    public Case {
      values = List.copyOf(values);
      shows = List.copyOf(shows);
      instructions = List.copyOf(instructions);
    }

    /** Whether this is the case for everything not named before. */
    public boolean otherwise() {
      return values.isEmpty();
    }
  }

  /**
   * Scroll until the display shows the wanted value; nothing is pressed where it shows it already.
   *
   * @param about the field, whose value is not known
   * @param wanted the value to stop at
   * @param ways which key to press for which values
   * @param then what the display shows when it is reached
   */
  record ScrollUntil(
      int number,
      String screen,
      Display now,
      Slot about,
      Value wanted,
      List<Way> ways,
      Display then)
      implements Instruction {
    public ScrollUntil {
      ways = List.copyOf(ways);
    }
  }

  /**
   * One direction of a {@link ScrollUntil}.
   *
   * @param key the key to press
   * @param from the values from which this key is the shorter way
   * @param atMost how often it is pressed at most
   */
  record Way(Act.Press key, List<Value> from, int atMost) {
    public Way {
      from = List.copyOf(from);
    }
  }

  /**
   * Switch just those options that are not as they should be.
   *
   * @param about the field, whose value is not known
   * @param wanted the options that should be on
   * @param switches option by option, in order
   * @param then what the display shows when all are right
   */
  record SwitchEach(
      int number,
      String screen,
      Display now,
      Slot about,
      Value.Members wanted,
      List<Switch> switches,
      Display then)
      implements Instruction {
    public SwitchEach {
      switches = List.copyOf(switches);
    }
  }

  /**
   * One option of a {@link SwitchEach}.
   *
   * @param index place of the option among the field's options
   * @param shown how the display writes it
   * @param wanted whether it should be on
   * @param first keys that lead to the option; may be empty
   * @param toggle key that switches it, pressed only where it is not as wanted
   */
  record Switch(int index, String shown, boolean wanted, List<Act> first, Act toggle) {
    public Switch {
      first = List.copyOf(first);
    }
  }

  /**
   * Stop here: what was found rules out what was planned. Nothing more of the order holds.
   *
   * @param why what was found, and what to do about it
   * @param leave what to press to leave safely
   */
  record Halt(int number, String screen, Display now, String why, List<Act> leave)
      implements Instruction {
    public Halt {
      leave = List.copyOf(leave);
    }
  }

  /** All steps of these instructions, those within branches included, in order of their number. */
  static List<Step> steps(List<Instruction> instructions) {
    List<Step> steps = new ArrayList<>();
    for (Instruction instruction : instructions) {
      switch (instruction) {
        case Step step -> steps.add(step);
        case Branch branch -> {
          for (Case one : branch.cases()) {
            steps.addAll(steps(one.instructions()));
          }
        }
        case ScrollUntil scroll -> {
          // No step of its own: the keys depend on what is shown.
        }
        case SwitchEach each -> {
          // As above.
        }
        case Halt halt -> {
          // Nothing is pressed.
        }
      }
    }
    return steps;
  }
}
