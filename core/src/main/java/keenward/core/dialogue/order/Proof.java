package keenward.core.dialogue.order;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.machine.Memory;

/**
 * What replaying an order showed.
 *
 * @param verdict whether it does what it should for everything that the memory may have held
 * @param refutations why not; empty where proved
 * @param finalMemory what the panel holds in the end, where the replay came to an end; a value that
 *     was never known and never touched is still unknown
 * @param keysReplayed keys that were replayed, over all cases
 * @param casesReplayed most cases that had to be told apart at the same time
 * @param halts numbers of the {@link Instruction.Halt}s that some memory leads to
 */
public record Proof(
    Verdict verdict,
    List<Refutation> refutations,
    Optional<Memory> finalMemory,
    int keysReplayed,
    int casesReplayed,
    List<Integer> halts) {
  public Proof {
    refutations = List.copyOf(refutations);
    halts = List.copyOf(halts);
  }

  /** Whether an order does what it should. */
  public enum Verdict {
    PROVED,
    REFUTED
  }

  /**
   * A place where the replay went another way.
   *
   * @param atInstruction number of the instruction; 0 for the end
   * @param what what was the matter, in a sentence
   */
  public record Refutation(int atInstruction, String what) {}

  /** Whether the order may be used. */
  public boolean proved() {
    return verdict == Verdict.PROVED;
  }
}
