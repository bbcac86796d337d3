package keenward.core.dialogue.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.progress.Progress;

/**
 * Tries every slip of one key: each key left out, pressed twice, or exchanged with the next, and
 * each step left alone until the panel drops out. What comes of it is told by the same replay as
 * the proof.
 */
public final class Slips {
  private Slips() {}

  /** Kinds of slips. */
  public enum Kind {
    LEFT_OUT,
    PRESSED_TWICE,
    EXCHANGED,
    LEFT_ALONE
  }

  /** How a slip comes to light. */
  public enum Outcome {
    /** It makes no difference. */
    HARMLESS,
    /** A display shows something else than the order says, or the panel refuses. */
    SHOWN,
    /** Every display is as the order says, yet the panel ends up holding something else. */
    ONLY_IN_THE_END
  }

  /**
   * A slip.
   *
   * @param atInstruction number of the instruction
   * @param key place of the key in it, from 0
   */
  public record Slip(int atInstruction, int key, Kind kind, Outcome outcome) {}

  /** All slips of a proved order, with what comes of each. */
  public static List<Slip> of(
      Interpreter interpreter,
      Memory found,
      WorkOrder order,
      Map<Slot, Value> planned,
      Progress progress) {
    Replay replay = new Replay(interpreter, found, order, planned, progress);
    int idle =
        interpreter.description().manners().idle().isPresent()
            ? interpreter.description().manners().idleTenths()
            : 0;
    List<Slip> slips = new ArrayList<>();
    for (int group = 0; group < order.groups().size(); group++) {
      progress.check("trying slips", group, order.groups().size());
      List<Instruction> instructions = order.groups().get(group).instructions();
      for (SlippedStep slipped : SlippedStep.all(instructions, idle)) {
        slips.add(
            new Slip(
                slipped.number(),
                slipped.key(),
                slipped.kind(),
                replay.outcome(group, slipped.instead(instructions))));
      }
    }
    return slips;
  }

  /** A slip in a step, as other acts for it and perhaps for the step after it. */
  record SlippedStep(
      int number, int key, Kind kind, List<Act> acts, Optional<Integer> next, List<Act> nextActs) {

    static List<SlippedStep> all(List<Instruction> instructions, int idle) {
      List<SlippedStep> all = new ArrayList<>();
      for (int index = 0; index < instructions.size(); index++) {
        switch (instructions.get(index)) {
          case Instruction.Step step -> {
            Optional<Instruction.Step> next =
                index + 1 < instructions.size()
                        && instructions.get(index + 1) instanceof Instruction.Step after
                    ? Optional.of(after)
                    : Optional.empty();
            of(step, next, idle, all);
          }
          case Instruction.Branch branch -> {
            for (Instruction.Case one : branch.cases()) {
              all.addAll(all(one.instructions(), idle));
            }
          }
          default -> {
            // How often a key is pressed there depends on what is shown.
          }
        }
      }
      return all;
    }

    private static void of(
        Instruction.Step step,
        Optional<Instruction.Step> next,
        int idle,
        List<SlippedStep> slipped) {
      List<Act> acts = single(step.acts());
      int number = step.number();
      for (int key = 0; key < acts.size(); key++) {
        List<Act> without = new ArrayList<>(acts);
        without.remove(key);
        if (without.isEmpty()) {
          without.add(new Act.Wait(1));
        }
        slipped.add(here(number, key, Kind.LEFT_OUT, without));
        List<Act> twice = new ArrayList<>(acts);
        twice.add(key, acts.get(key));
        slipped.add(here(number, key, Kind.PRESSED_TWICE, twice));
        if (key + 1 < acts.size()) {
          List<Act> exchanged = new ArrayList<>(acts);
          exchanged.set(key, acts.get(key + 1));
          exchanged.set(key + 1, acts.get(key));
          slipped.add(here(number, key, Kind.EXCHANGED, exchanged));
        } else if (next.isPresent()) {
          List<Act> after = single(next.get().acts());
          List<Act> exchanged = new ArrayList<>(acts);
          exchanged.set(key, after.get(0));
          List<Act> afterExchanged = new ArrayList<>(after);
          afterExchanged.set(0, acts.get(key));
          slipped.add(
              new SlippedStep(
                  number,
                  key,
                  Kind.EXCHANGED,
                  exchanged,
                  Optional.of(next.get().number()),
                  afterExchanged));
        }
      }
      if (idle > 0) {
        List<Act> late = new ArrayList<>(acts);
        late.add(0, new Act.Wait(idle));
        slipped.add(here(number, 0, Kind.LEFT_ALONE, late));
      }
    }

    private static SlippedStep here(int number, int key, Kind kind, List<Act> acts) {
      return new SlippedStep(number, key, kind, acts, Optional.empty(), List.of());
    }

    /** Every press on its own. */
    private static List<Act> single(List<Act> acts) {
      List<Act> single = new ArrayList<>();
      for (Act act : acts) {
        if (act instanceof Act.Press press) {
          for (int time = 0; time < press.times(); time++) {
            single.add(new Act.Press(press.key(), 1, press.heldTenths(), press.types()));
          }
        } else {
          single.add(act);
        }
      }
      return single;
    }

    /** The instructions with the slip in them. */
    List<Instruction> instead(List<Instruction> instructions) {
      List<Instruction> changed = new ArrayList<>();
      for (Instruction instruction : instructions) {
        changed.add(
            switch (instruction) {
              case Instruction.Step step when step.number() == number -> with(step, acts);
              case Instruction.Step step when next.isPresent() && next.get() == step.number() ->
                  with(step, nextActs);
              case Instruction.Branch branch -> instead(branch);
              default -> instruction;
            });
      }
      return changed;
    }

    private Instruction instead(Instruction.Branch branch) {
      List<Instruction.Case> cases = new ArrayList<>();
      for (Instruction.Case one : branch.cases()) {
        cases.add(new Instruction.Case(one.values(), one.shows(), instead(one.instructions())));
      }
      return new Instruction.Branch(
          branch.number(), branch.screen(), branch.now(), branch.about(), cases);
    }

    private static Instruction with(Instruction.Step step, List<Act> acts) {
      return new Instruction.Step(
          step.number(),
          step.screen(),
          step.now(),
          acts,
          step.then(),
          step.thenScreen(),
          step.stored(),
          step.takesTenths(),
          step.mayWaitTenths(),
          step.whenLeftAlone(),
          step.whenPowerFails());
    }
  }
}
