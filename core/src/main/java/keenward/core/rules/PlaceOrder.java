package keenward.core.rules;

import java.util.Comparator;
import java.util.List;
import keenward.core.plan.PlanPath;

/**
 * Orders places as a plan is read: sections from top to bottom, numbers by value and before names,
 * names by letter.
 */
public final class PlaceOrder implements Comparator<PlanPath> {

  /** The one order. */
  public static final PlaceOrder READING = new PlaceOrder();

  private static final List<String> SECTIONS =
      List.of(
          "site",
          "regime",
          "monitoring",
          "people",
          "floors",
          "types",
          "devices",
          "supplies",
          "junctions",
          "cables",
          "panel",
          "partitions",
          "zones",
          "users",
          "service",
          "unplaced");

  private PlaceOrder() {}

  @Override
  public int compare(PlanPath first, PlanPath second) {
    List<String> one = first.steps();
    List<String> other = second.steps();
    for (int index = 0; index < Math.min(one.size(), other.size()); index++) {
      int order =
          index == 0
              ? compareSections(one.getFirst(), other.getFirst())
              : compareSteps(one.get(index), other.get(index));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }

  private static int compareSections(String one, String other) {
    int order = Integer.compare(SECTIONS.indexOf(one), SECTIONS.indexOf(other));
    return order != 0 ? order : compareSteps(one, other);
  }

  private static int compareSteps(String one, String other) {
    boolean oneIsNumber = isNumber(one);
    if (oneIsNumber != isNumber(other)) {
      return oneIsNumber ? -1 : 1;
    }
    return oneIsNumber
        ? Long.compare(Long.parseLong(one), Long.parseLong(other))
        : one.compareTo(other);
  }

  private static boolean isNumber(String step) {
    return !step.isEmpty()
        && step.length() <= 18
        && step.chars().allMatch(letter -> letter >= '0' && letter <= '9');
  }
}
