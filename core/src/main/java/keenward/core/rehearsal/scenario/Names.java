package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;

/** Finds the parts of a system by the names that a script gives them. */
final class Names {

  private final SystemModel model;

  Names(SystemModel model) {
    this.model = model;
  }

  int zone(Line line) {
    return find(line, "zone", model.zones(), ZoneModel::name, ZoneModel::number);
  }

  int partition(Line line) {
    return find(
        line, "partition", model.partitions(), PartitionModel::name, PartitionModel::number);
  }

  int user(Line line) {
    return find(line, "user", model.users(), UserModel::name, UserModel::number);
  }

  int keypad(Line line) {
    return find(line, "keypad", model.keypads(), KeypadModel::name, ignored -> -1);
  }

  /** The keypad after {@code at}; none when the line does not say. */
  int keypadIfStated(Line line) {
    return line.take("at") ? keypad(line) : SystemModel.NONE;
  }

  /** By name, or where the trade numbers by the kind's word and the number: {@code zone 3}. */
  private static <T> int find(
      Line line, String kind, List<T> all, Function<T, String> name, Function<T, Integer> number) {
    boolean numbered = line.take(kind);
    Token token = line.takeAny("the name of a " + kind);
    if (numbered && !token.quoted() && isNumber(token.text())) {
      for (int index = 0; index < all.size(); index++) {
        if (number.apply(all.get(index)) == Integer.parseInt(token.text())) {
          return index;
        }
      }
      throw new Mistake(
          token.column(), "there is no " + kind + " " + token.text(), "the number of a " + kind);
    }
    List<String> names = new ArrayList<>(all.size());
    for (T each : all) {
      names.add(name.apply(each));
    }
    List<Integer> exact = matching(names, token.text(), false);
    List<Integer> found = exact.isEmpty() ? matching(names, token.text(), true) : exact;
    if (found.size() == 1) {
      return found.getFirst();
    }
    if (found.isEmpty()) {
      throw new Mistake(
          token.column(),
          "there is no " + kind + " " + quoted(token.text()),
          NearestName.find(token.text(), names)
              .map(near -> "the name of a " + kind + ", perhaps " + quoted(near))
              .orElse("the name of a " + kind));
    }
    throw new Mistake(
        token.column(),
        found.size() + " " + kind + "s are named " + quoted(token.text()),
        "its number, such as " + kind + " " + number.apply(all.get(found.getFirst())));
  }

  private static List<Integer> matching(List<String> names, String wanted, boolean folded) {
    List<Integer> found = new ArrayList<>();
    for (int index = 0; index < names.size(); index++) {
      boolean same =
          folded
              ? Wording.folded(names.get(index)).equals(Wording.folded(wanted))
              : names.get(index).equals(wanted);
      if (same) {
        found.add(index);
      }
    }
    return found;
  }

  static boolean isNumber(String text) {
    if (text.isEmpty() || text.length() > 6) {
      return false;
    }
    for (int index = 0; index < text.length(); index++) {
      if (text.charAt(index) < '0' || text.charAt(index) > '9') {
        return false;
      }
    }
    return true;
  }

  static String quoted(String name) {
    return "\"" + name + "\"";
  }
}
