package keenward.core.plan;

/**
 * A published set of rules that the site has to meet.
 *
 * @param standard which one
 * @param edition edition or year; decides between figures that changed
 * @param grade security grade 1 to 4, for the standards that have grades
 * @param name how the plan names it: the standard's word, or the name of one whose figures the
 *     program does not hold
 */
public record Regime(Standard standard, Fact<String> edition, Fact<Integer> grade, String name) {

  /** The regime in words, such as {@code en50131 grade 2}. */
  public String words() {
    return name
        + edition.find().map(text -> " " + text).orElse("")
        + grade.find().map(number -> " grade " + number).orElse("");
  }
}
