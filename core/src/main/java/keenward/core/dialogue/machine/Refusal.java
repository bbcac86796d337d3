package keenward.core.dialogue.machine;

/** Why the panel did not do what was asked; most panels answer with a beep. */
public enum Refusal {
  /** The key has no meaning on this screen. */
  NO_MEANING,
  /** The keypad has no such key, or there is no such keypad. */
  NOT_ON_THIS_KEYPAD,
  /** Pressed before the panel had dealt with the key before: lost. */
  TOO_SOON,
  /** The panel, or this keypad, is restarting. */
  RESTARTING,
  /** There is no power. */
  NO_POWER,
  /** Programming is locked. */
  LOCKED,
  /** Programming is open at another keypad. */
  OPEN_ELSEWHERE,
  /** None of the key's conditions holds. */
  NOT_NOW,
  /** Nothing was typed. */
  NOTHING_TYPED,
  /** Fewer characters than needed. */
  TOO_SHORT,
  /** No more characters fit. */
  FULL,
  /** The value is none that the field may hold. */
  OUT_OF_RANGE,
  /** Not the same as what it must equal. */
  NOT_EQUAL,
  /** No item, location or record with that number. */
  NO_SUCH_NUMBER,
  /** There is nothing further in that direction. */
  AT_THE_END,
  /** Another record knows this transmitter already. */
  KNOWN_ALREADY,
  /** Nobody is listening for a transmitter. */
  NOT_LISTENING,
  /** The description leads round in a circle. */
  ENDLESS
}
