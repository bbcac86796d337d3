package keenward.core.dialogue.search;

import java.util.Optional;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.Reason;

/** Reasons in words. */
final class Reasons {
  private Reasons() {}

  static Reason consentNeeded(Slot slot) {
    return new Reason(
        Reason.Kind.CONSENT_NEEDED,
        Optional.of(slot),
        "What " + slot.describe() + " holds now is not known and is not shown where it is entered.",
        "Say what it holds in the found file, or agree to overwrite "
            + slot.field().name()
            + " unseen.");
  }

  static Reason resetUnseen(Slot slot, Slot cause) {
    return new Reason(
        Reason.Kind.CONSENT_NEEDED,
        Optional.of(slot),
        "What "
            + slot.describe()
            + " holds now is not known, the plan says nothing about it, and setting "
            + cause.describe()
            + " resets it.",
        "Plan it, say what it holds in the found file, or agree to overwrite "
            + slot.field().name()
            + " unseen.");
  }

  static Reason notShown(Slot slot) {
    return new Reason(
        Reason.Kind.NOT_SHOWN,
        Optional.of(slot),
        "What "
            + slot.describe()
            + " holds now is not known and is not shown, and the keys depend on it.",
        "Say what it holds in the found file, or use a keypad that shows it.");
  }

  static Reason transmitterKnown(Slot slot, String serial, String other) {
    return new Reason(
        Reason.Kind.TRANSMITTER_KNOWN,
        Optional.of(slot),
        slot.describe()
            + " cannot learn transmitter "
            + serial
            + ": "
            + other
            + " has the same input of it.",
        "Free it there, or plan another transmitter or input.");
  }

  static Reason notOnThisKeypad(Task task, Slot slot) {
    return new Reason(
        Reason.Kind.NOT_ON_THIS_KEYPAD,
        Optional.of(slot),
        slot.describe()
            + " cannot be set to "
            + OrderWords.value(slot, task.wanted.get(slot))
            + " with the keys of keypad \""
            + task.keypad.name()
            + "\".",
        "Use another keypad, or plan another value.");
  }

  static Reason notWritable(Slot slot) {
    return new Reason(
        Reason.Kind.NOT_WRITABLE,
        Optional.of(slot),
        "No screen of the description stores " + slot.describe() + ".",
        "Add the screen to the panel's description, or leave the field out of the plan.");
  }

  static Reason tooLarge(Slot slot) {
    return new Reason(
        Reason.Kind.TOO_LARGE,
        Optional.of(slot),
        "The search for keys that set " + slot.describe() + " was given up.",
        "Give a found file that says more of what the panel holds.");
  }

  static Reason noWay(Task task, Slot slot) {
    return new Reason(
        Reason.Kind.NO_WAY,
        Optional.of(slot),
        "No keys lead to "
            + slot.describe()
            + " = "
            + OrderWords.value(slot, task.wanted.get(slot))
            + " without changing what the plan says nothing about.",
        "Compare the description with the panel, or plan the other field as well.");
  }
}
