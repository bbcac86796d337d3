package keenward.usecases.job;

import java.time.LocalDate;
import java.util.Set;
import keenward.usecases.order.FoundMemory;
import org.jspecify.annotations.Nullable;

/**
 * What a person may say about a job beside the plan.
 *
 * @param asOf the day on which ages are judged, and the date on papers
 * @param panel name or path of a panel description that stands in for the plan's own; null for none
 * @param keypad kind of keypad in use; null for the usual one
 * @param found what the panel holds now
 * @param consents panel fields that may be overwritten unseen
 */
public record JobOptions(
    LocalDate asOf,
    @Nullable String panel,
    @Nullable String keypad,
    FoundMemory found,
    Set<String> consents) {

  public JobOptions {
    consents = Set.copyOf(consents);
  }

  /** Nothing but the date: the plan's own panel, with its factory values. */
  public static JobOptions on(LocalDate asOf) {
    return new JobOptions(asOf, null, null, new FoundMemory.Defaults(), Set.of());
  }
}
