package keenward.core.dialogue.machine;

/** What reaches the panel. */
public sealed interface Input {

  /**
   * A key is pressed.
   *
   * @param keypad kind of keypad, by name
   * @param key key by name, or {@code code:REFERENCE} for a whole code
   */
  record Press(String keypad, String key) implements Input {}

  /** Time passes, in tenths of a second. */
  record TimePasses(int tenths) implements Input {}

  /**
   * A transmitter is heard.
   *
   * @param serial its serial, as the panel writes it
   * @param part the input that sent, by the panel's word for it; empty where the panel knows none
   */
  record TransmitterHeard(String serial, String part) implements Input {}

  /** Mains and battery are gone. */
  record PowerLost() implements Input {}

  /** Power is back. */
  record PowerBack() implements Input {}
}
