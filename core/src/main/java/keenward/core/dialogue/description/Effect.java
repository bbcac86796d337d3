package keenward.core.dialogue.description;

import java.util.List;

/** Something that a key does besides leading to another screen. */
public sealed interface Effect {

  /** Stores a fixed value into a field. */
  record Set(FieldReference field, Value value) implements Effect {}

  /** Puts a field back to its initial value. */
  record Reset(FieldReference field) implements Effect {}

  /** Puts every field of the current record of a kind back to its initial value. */
  record ResetRecord(String record) implements Effect {}

  /** Puts the whole memory back to its initial values, except the named fields. */
  record ResetAll(List<String> except) implements Effect {
    public ResetAll {
      except = List.copyOf(except);
    }
  }

  /** Makes another record of a kind the current one. */
  record MoveRecord(String record, Move move, boolean wraps) implements Effect {}

  /** Makes the record with this number the current one. */
  record ChooseRecord(String record, int number) implements Effect {}

  /** Makes the record that already knows the transmitter just heard the current one. */
  record ChooseOther(String record) implements Effect {}

  /** Commits everything stored so far. */
  record Keep() implements Effect {}

  /** Gives up everything stored since the last commit. */
  record Drop() implements Effect {}

  /** Ends a lock on programming. */
  record Unlock() implements Effect {}

  /** Which neighbour to move to. */
  enum Move {
    NEXT,
    PREVIOUS
  }
}
