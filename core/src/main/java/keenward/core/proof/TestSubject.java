package keenward.core.proof;

/** What a step tests. */
public sealed interface TestSubject {

  /** A short name for lists, unique in a test plan. */
  String label();

  /**
   * One input that a zone uses.
   *
   * @param zone zone number
   * @param zoneName zone name
   * @param input what is watched, in words; empty when the plan does not say
   */
  record ZoneInput(int zone, String zoneName, String input) implements TestSubject {
    @Override
    public String label() {
      boolean saysMore = !input.isEmpty() && !input.equals(zoneName);
      return "zone " + zone + " " + zoneName + (saysMore ? ", " + input : "");
    }
  }

  /**
   * Something supervised, a time, or an errand.
   *
   * @param label its name
   */
  record Item(String label) implements TestSubject {}
}
