package keenward.core.rules;

import java.time.LocalDate;
import java.util.Optional;
import keenward.core.plan.SitePlan;
import org.jspecify.annotations.Nullable;

/**
 * What the rules may look at: the plan, what goes with it, and what is computed from both, each computed once and only
 * when a rule asks for it. One input serves one check on one thread.
 */
public final class CheckInput {
  private final SitePlan plan;
  private final @Nullable LocalDate asOf;

  private CheckInput(SitePlan plan, @Nullable LocalDate asOf) {
    this.plan = plan;
    this.asOf = asOf;
  }

  /** A plan on its own. */
  public static CheckInput of(SitePlan plan) {
    return new CheckInput(plan, null);
  }

  /** The same with the day on which ages are judged; without it they are not assessed. */
  public CheckInput asOf(LocalDate day) {
    return new CheckInput(plan, day);
  }

  /** The plan. */
  public SitePlan plan() {
    return plan;
  }

  /** The day on which ages are judged. */
  public Optional<LocalDate> asOf() {
    return Optional.ofNullable(asOf);
  }
}
