package keenward.core.rules;

/**
 * One rule. A rule keeps nothing between plans, and its verdict depends on its input alone.
 *
 * <p>Whatever it looks at and can judge it counts with {@link Report#judged()}; whatever it would
 * judge but lacks a fact for, it reports as not assessed with the line to add. A rule that does
 * neither had nothing to judge, which is no pass.
 */
public interface Rule {

  /** What the rule states about itself. */
  RuleCard card();

  /** Judges a plan. */
  void check(CheckInput input, Report report);
}
