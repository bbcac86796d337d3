package keenward.core.dialogue.order;

/** One thing that a person does. */
public sealed interface Act {

  /**
   * Presses a key, several times over where {@code times} says so.
   *
   * @param key name of the key
   * @param times how often
   * @param heldTenths how long each press is held; 0 for a short press
   * @param types the character that comes out of it, or empty
   */
  record Press(String key, int times, int heldTenths, String types) implements Act {
    public Press {
      if (times < 1 || heldTenths < 0) {
        throw new IllegalArgumentException(key + " pressed " + times + " times");
      }
    }
  }

  /**
   * Enters a whole code.
   *
   * @param reference which code; the digits are held elsewhere
   */
  record EnterCode(String reference) implements Act {}

  /** Waits on purpose, in tenths of a second. */
  record Wait(int tenths) implements Act {
    public Wait {
      if (tenths < 1) {
        throw new IllegalArgumentException("a wait of " + tenths);
      }
    }
  }

  /**
   * Makes a transmitter send.
   *
   * @param serial its serial number
   * @param part which of its inputs, by the panel's word; empty where the panel knows none
   * @param times how often
   */
  record Transmit(String serial, String part, int times) implements Act {
    public Transmit {
      if (times < 1) {
        throw new IllegalArgumentException(serial + " sends " + times + " times");
      }
    }
  }

  /** Takes mains and battery away. */
  record PowerOff() implements Act {}

  /** Puts mains and battery back. */
  record PowerOn() implements Act {}

  /** How many keys this is; a code counts as one. */
  default int keys() {
    return switch (this) {
      case Press press -> press.times();
      case EnterCode code -> 1;
      default -> 0;
    };
  }
}
