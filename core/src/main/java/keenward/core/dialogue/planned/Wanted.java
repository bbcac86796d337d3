package keenward.core.dialogue.planned;

import keenward.core.dialogue.description.Value;

/** What the plan wants a slot to hold. */
public sealed interface Wanted {

  /** This value. */
  record Exactly(Value value) implements Wanted {}

  /**
   * Some options on, some off, the others as they are.
   *
   * @param mask bits of the options that the plan speaks of
   * @param bits which of them are on
   */
  record Options(long mask, long bits) implements Wanted {}

  /**
   * What the slot is to hold, given what it holds now. Unknown where options are left alone whose
   * present state is not known.
   */
  default Value over(Value found) {
    return switch (this) {
      case Exactly exactly -> exactly.value();
      case Options options ->
          switch (found) {
            case Value.Members members ->
                new Value.Members((members.bits() & ~options.mask()) | options.bits());
            case Value.Unknown unknown -> unknown;
            default -> new Value.Members(options.bits());
          };
    };
  }
}
