package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.scenario.TimeText;

/** Writes a script about a system, line by line. */
final class ScriptText {

  private static final int SECOND = 10;

  private final SystemModel model;
  private final List<String> zones;
  private final List<String> partitions;
  private final List<String> users;
  private final List<String> keypads;
  private final StringBuilder text = new StringBuilder();
  private int now;

  ScriptText(SystemModel model) {
    this.model = model;
    zones = spoken("zone", model.zones(), each -> each.name(), each -> each.number());
    partitions =
        spoken("partition", model.partitions(), each -> each.name(), each -> each.number());
    users = spoken("user", model.users(), each -> each.name(), each -> each.number());
    keypads = spoken("", model.keypads(), each -> each.name(), each -> 0);
  }

  /**
   * A name that a script can say without doubt: in quotes, by number where that is not enough, or
   * not at all.
   */
  private static <T> List<String> spoken(
      String kind, List<T> all, Function<T, String> name, Function<T, Integer> number) {
    List<String> spoken = new ArrayList<>();
    for (T each : all) {
      int same = 0;
      for (T other : all) {
        same += folded(name.apply(other)).equals(folded(name.apply(each))) ? 1 : 0;
      }
      boolean clear = same == 1 && isQuotable(name.apply(each));
      String byNumber = kind.isEmpty() ? "" : kind + " " + number.apply(each);
      spoken.add(clear ? "\"" + name.apply(each) + "\"" : byNumber);
    }
    return spoken;
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static boolean isQuotable(String name) {
    for (int index = 0; index < name.length(); index++) {
      if (name.charAt(index) == '"' || Character.isISOControl(name.charAt(index))) {
        return false;
      }
    }
    return true;
  }

  SystemModel model() {
    return model;
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
    return zones.get(index);
  }

  String partition(int index) {
    return partitions.get(index);
  }

  String user(int index) {
    return users.get(index);
  }

  /** {@code at} and the keypad; nothing when there is none that can be said. */
  String at(Order order) {
    return order.keypad() == SystemModel.NONE || keypads.get(order.keypad()).isEmpty()
        ? ""
        : " at " + keypads.get(order.keypad());
  }

  @Override
  public String toString() {
    return text.toString();
  }

  /** Who gives an order, and where. */
  record Order(int user, int keypad) {}
}
