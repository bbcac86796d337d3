package keenward.core.rehearsal.planned;

import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.scenario.TimeText;

/** Writes a script about a system, line by line. */
final class ScriptText {

  private static final int SECOND = 10;

  private final SpokenNames names;
  private final StringBuilder text = new StringBuilder();
  private int now;

  ScriptText(SpokenNames names) {
    this.names = names;
  }

  SystemModel model() {
    return names.model();
  }

  /** Goes to a time of day on a day, in seconds since midnight of the first. */
  ScriptText at(int seconds) {
    now = seconds * SECOND;
    return this;
  }

  /** Lets seconds pass. */
  ScriptText later(int seconds) {
    now += seconds * SECOND;
    return this;
  }

  int nowSeconds() {
    return now / SECOND;
  }

  ScriptText comment(String words) {
    text.append("# ").append(words).append('\n');
    return this;
  }

  /** Something happens now. */
  ScriptText line(String statement) {
    text.append(TimeText.clock(now)).append(' ').append(statement).append('\n');
    return this;
  }

  String zone(int index) {
    return names.zones().get(index);
  }

  String partition(int index) {
    return names.partitions().get(index);
  }

  String user(int index) {
    return names.users().get(index);
  }

  /** {@code at} and the keypad; nothing when there is none that can be said. */
  String at(Order order) {
    return order.keypad() == SystemModel.NONE || names.keypads().get(order.keypad()).isEmpty()
        ? ""
        : " at " + names.keypads().get(order.keypad());
  }

  @Override
  public String toString() {
    return text.toString();
  }

  /** Who gives an order, and where. */
  record Order(int user, int keypad) {}
}
