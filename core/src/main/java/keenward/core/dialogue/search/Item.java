package keenward.core.dialogue.search;

import java.util.List;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;

/** A piece of a script: an instruction before it is put into words and numbers. */
sealed interface Item {

  /** The state in which it is done; what is unknown in it is unknown to the person as well. */
  State from();

  /**
   * Acts in a row on one screen.
   *
   * @param sample a narrower state than {@code from} in which the interpreter can follow every act
   * @param acts one by one
   * @param stored what they store, starting from {@code sample}
   * @param after the state afterwards, for all that {@code from} stands for
   */
  record Do(State from, State sample, List<Act> acts, List<Stored> stored, State after)
      implements Item {
    public Do {
      acts = List.copyOf(acts);
      stored = List.copyOf(stored);
    }
  }

  /** Scrolling until a value is shown. {@code reached} is the state then, wherever it came from. */
  record Scroll(State from, Slot slot, Value wanted, List<Instruction.Way> ways, State reached)
      implements Item {
    public Scroll {
      ways = List.copyOf(ways);
    }
  }

  /** Switching what is wrong. {@code reached} is the state then. */
  record Switching(
      State from, Slot slot, Value.Members wanted, List<Instruction.Switch> switches, State reached)
      implements Item {
    public Switching {
      switches = List.copyOf(switches);
    }
  }

  /**
   * A choice by what the display shows.
   *
   * @param afterwards whether what was done before the choice is what makes the difference, so that
   *     the display differs already
   */
  record Split(State from, Slot slot, List<Case> cases, boolean afterwards) implements Item {
    public Split {
      cases = List.copyOf(cases);
    }
  }

  /**
   * One case of a {@link Split}.
   *
   * @param values what the slot holds; empty for everything else
   * @param from the state narrowed to the case
   */
  record Case(List<Value> values, State from, List<Item> items) {
    public Case {
      values = List.copyOf(values);
      items = List.copyOf(items);
    }
  }

  /** The end, too early. */
  record Halt(State from, String why) implements Item {}
}
