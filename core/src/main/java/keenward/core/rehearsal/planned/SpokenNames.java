package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import keenward.core.rehearsal.SystemModel;

/**
 * How a script names the things of a system without doubt: in quotes, by number where that is not
 * enough, or not at all.
 *
 * @param model the system
 * @param zones names of its zones, in their order
 * @param partitions names of its partitions
 * @param users names of its users
 * @param keypads names of its keypads; empty for one that can't be named
 */
record SpokenNames(
    SystemModel model,
    List<String> zones,
    List<String> partitions,
    List<String> users,
    List<String> keypads) {

  static SpokenNames of(SystemModel model) {
    return new SpokenNames(
        model,
        spoken("zone", model.zones(), each -> each.name(), each -> each.number()),
        spoken("partition", model.partitions(), each -> each.name(), each -> each.number()),
        spoken("user", model.users(), each -> each.name(), each -> each.number()),
        spoken("", model.keypads(), each -> each.name(), each -> 0));
  }

  private static <T> List<String> spoken(
      String kind, List<T> all, Function<T, String> name, Function<T, Integer> number) {
    Map<String, Integer> times = new HashMap<>();
    all.forEach(each -> times.merge(folded(name.apply(each)), 1, Integer::sum));
    List<String> spoken = new ArrayList<>();
    for (T each : all) {
      String own = name.apply(each);
      boolean clear = times.getOrDefault(folded(own), 0) == 1 && isQuotable(own);
      String byNumber = kind.isEmpty() ? "" : kind + " " + number.apply(each);
      spoken.add(clear ? "\"" + own + "\"" : byNumber);
    }
    return List.copyOf(spoken);
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
}
