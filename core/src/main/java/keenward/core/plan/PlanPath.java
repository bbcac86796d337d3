package keenward.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * A place in a plan: the keys and list indices that lead to it, such as {@code zones / 2 /
 * response}. It names the place without knowing the file; the edge that read the file turns it into
 * line and column.
 *
 * @param steps keys, or list indices counted from 0, from the top
 */
public record PlanPath(List<String> steps) {

  public PlanPath {
    steps = List.copyOf(steps);
  }

  /** The place reached by these keys; numbers are written in decimal. */
  public static PlanPath of(Object... steps) {
    List<String> texts = new ArrayList<>(steps.length);
    for (Object step : steps) {
      texts.add(step.toString());
    }
    return new PlanPath(texts);
  }

  /** A place below this one. */
  public PlanPath then(Object step) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(step.toString());
    return new PlanPath(longer);
  }

  /** As a JSON Pointer (RFC 6901). */
  public String pointer() {
    StringBuilder pointer = new StringBuilder();
    for (String step : steps) {
      pointer.append('/').append(step.replace("~", "~0").replace("/", "~1"));
    }
    return pointer.toString();
  }

  /** As a person would read it. */
  @Override
  public String toString() {
    return String.join(" / ", steps);
  }
}
