package keenward.core.dialogue.machine;

import org.jspecify.annotations.Nullable;

/**
 * Ends a turn early: refused, or undecidable without a slot's value. Never leaves the interpreter.
 */
final class Interrupted extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient @Nullable Refusal refusal;
  private final transient @Nullable Slot slot;

  private Interrupted(@Nullable Refusal refusal, @Nullable Slot slot) {
    super("", null, false, false);
    this.refusal = refusal;
    this.slot = slot;
  }

  static Interrupted refused(Refusal refusal) {
    return new Interrupted(refusal, null);
  }

  static Interrupted needs(Slot slot) {
    return new Interrupted(null, slot);
  }

  @Nullable Refusal refusal() {
    return refusal;
  }

  @Nullable Slot slot() {
    return slot;
  }
}
