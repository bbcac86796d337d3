package keenward.core.dialogue.order;

import java.util.Optional;
import keenward.core.dialogue.machine.Slot;

/**
 * Why there is no order.
 *
 * @param kind what sort of reason
 * @param slot the field that it is about, if it is about one
 * @param what what is the matter, in a sentence
 * @param remedy what to do about it
 */
public record Reason(Kind kind, Optional<Slot> slot, String what, String remedy) {

  /** Sorts of reasons. */
  public enum Kind {
    /** The description has no such keypad. */
    NO_SUCH_KEYPAD,
    /** The field cannot hold the planned value. */
    OUT_OF_RANGE,
    /** No screen of the dialogue stores the field. */
    NOT_WRITABLE,
    /** The field can be stored, but not with the keys of this keypad. */
    NOT_ON_THIS_KEYPAD,
    /** Programming cannot be opened. */
    NO_WAY_IN,
    /** No way was found to what was planned. */
    NO_WAY,
    /** Programming cannot be left safely. */
    NO_SAFE_WAY_OUT,
    /** The value is not known and not shown, so the keys depend on what cannot be seen. */
    NOT_SHOWN,
    /** The value is not known and not shown; it may be overwritten only with consent. */
    CONSENT_NEEDED,
    /** Another record has, or is planned to have, the same input of the same transmitter. */
    TRANSMITTER_KNOWN,
    /** The search was given up. */
    TOO_LARGE,
    /** The replay refuted what the search found. */
    NOT_PROVED
  }
}
