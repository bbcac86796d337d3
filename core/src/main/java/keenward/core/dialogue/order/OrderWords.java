package keenward.core.dialogue.order;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.ShownForm;
import keenward.core.dialogue.machine.Slot;

/** Orders in words, so that paper, terminal and page say the same. */
public final class OrderWords {
  private OrderWords() {}

  /** What to do, act by act: {@code down × 3}, {@code code "engineer"}, {@code wait 1.5 s}. */
  public static List<String> acts(List<Act> acts) {
    List<String> words = new ArrayList<>();
    for (Act act : acts) {
      words.add(act(act));
    }
    return words;
  }

  /** What to do. */
  public static String act(Act act) {
    return switch (act) {
      case Act.Press press -> press(press);
      case Act.EnterCode code -> "code \"" + code.reference() + "\"";
      case Act.Wait wait -> "wait " + time(wait.tenths());
      case Act.Transmit send ->
          "make transmitter "
              + send.serial()
              + (send.part().isEmpty() ? " send" : " send from its " + send.part())
              + (send.times() == 1 ? "" : ", " + send.times() + " times");
      case Act.PowerOff off -> "take away mains and battery";
      case Act.PowerOn on -> "put back mains and battery";
    };
  }

  private static String press(Act.Press press) {
    StringBuilder words = new StringBuilder(press.key());
    if (press.times() > 1) {
      words.append(" × ").append(press.times());
    }
    if (!press.types().isEmpty() && !press.types().equals(press.key())) {
      words.append(" (").append(press.types().equals(" ") ? "space" : press.types()).append(')');
    }
    if (press.heldTenths() > 0) {
      words.append(" for ").append(time(press.heldTenths()));
    }
    return words.toString();
  }

  /** A field's value as the panel shows it; a code by its reference. */
  public static String value(Slot slot, Value value) {
    return switch (value) {
      case Value.Secret secret -> "code \"" + secret.reference() + "\"";
      case Value.Nothing nothing -> "nothing";
      case Value.Unknown unknown -> "not known";
      default -> ShownForm.of(slot.field().type(), value, 0);
    };
  }

  /** An instruction in one line. */
  public static String line(Instruction instruction) {
    return switch (instruction) {
      case Instruction.ScrollUntil scroll -> scroll(scroll);
      case Instruction.SwitchEach each -> switches(each);
      case Instruction.Halt halt -> "Stop. " + halt.why();
      case Instruction.Branch branch -> "What does it show for " + branch.about().describe() + "?";
      case Instruction.Step step -> String.join(", ", acts(step.acts()));
    };
  }

  private static String scroll(Instruction.ScrollUntil scroll) {
    StringBuilder words = new StringBuilder();
    for (Instruction.Way way : scroll.ways()) {
      if (!words.isEmpty()) {
        words.append("; ");
      }
      List<String> from = new ArrayList<>();
      for (Value value : way.from()) {
        from.add(value(scroll.about(), value));
      }
      words
          .append("from ")
          .append(
              from.size() > 4
                  ? from.get(0) + " to " + from.get(from.size() - 1)
                  : String.join(", ", from))
          .append(" press ")
          .append(way.key().key());
    }
    return words
        .append(" until it shows ")
        .append(value(scroll.about(), scroll.wanted()))
        .toString();
  }

  private static String switches(Instruction.SwitchEach each) {
    StringBuilder words = new StringBuilder();
    for (Instruction.Switch one : each.switches()) {
      if (!words.isEmpty()) {
        words.append("; ");
      }
      for (String first : acts(one.first())) {
        words.append(first).append(", ");
      }
      words
          .append(one.wanted() ? "if " + one.shown() + " is off" : "if " + one.shown() + " is on")
          .append(" press ")
          .append(act(one.toggle()));
    }
    return words.toString();
  }

  /** A time in seconds, such as {@code 1.5 s}. */
  public static String time(int tenths) {
    return tenths % 10 == 0 ? tenths / 10 + " s" : tenths / 10 + "." + tenths % 10 + " s";
  }

  /** How long a person is likely to need for an order: {@code 45 s}, or {@code 92 min}. */
  public static String effort(Effort effort) {
    int seconds = effort.personTenths() / 10;
    return seconds < 120 ? seconds + " s" : seconds / 60 + " min";
  }
}
