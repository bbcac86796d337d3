package keenward.core.dialogue.replay;

import keenward.core.dialogue.machine.Refusal;

/** Refusals in words. */
final class Refusals {
  private Refusals() {}

  static String words(Refusal refusal) {
    return switch (refusal) {
      case NO_MEANING -> "the key has no meaning there";
      case NOT_ON_THIS_KEYPAD -> "the keypad has no such key";
      case TOO_SOON -> "the key came too soon";
      case RESTARTING -> "it is restarting";
      case NO_POWER -> "it has no power";
      case LOCKED -> "programming is locked";
      case OPEN_ELSEWHERE -> "programming is open at another keypad";
      case NOT_NOW -> "not in this state";
      case NOTHING_TYPED -> "nothing was typed";
      case TOO_SHORT -> "too few digits";
      case FULL -> "no more fits";
      case OUT_OF_RANGE -> "the value is out of range";
      case NOT_EQUAL -> "it is not the same";
      case NO_SUCH_NUMBER -> "there is no such number";
      case AT_THE_END -> "there is nothing further";
      case KNOWN_ALREADY -> "the transmitter is known already";
      case NOT_LISTENING -> "nobody listens for a transmitter";
      case ENDLESS -> "it goes round in a circle";
    };
  }
}
