package keenward.endtoend.architecture.crooked.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Breaks no rule. */
public record Tidy(List<String> names, LocalDate visited) {

  /** The day after the visit at which the names were written, in words. */
  public String words() {
    return String.format(Locale.ROOT, "%s %s", visited.plusDays(1), String.join(", ", names));
  }
}
