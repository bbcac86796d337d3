package keenward.files.plan;

import static java.nio.charset.StandardCharsets.UTF_8;

/** Reads plan texts of tests; the compulsory lines are added where a text lacks them. */
public final class ExamplePlan {

  private ExamplePlan() {}

  /** Reads a text that may leave out {@code keenward}, {@code site} and {@code zones}. */
  public static PlanReading read(String text) {
    return SitePlanReader.read("example.site.yaml", complete(text).getBytes(UTF_8));
  }

  private static String complete(String text) {
    StringBuilder whole = new StringBuilder();
    add(whole, text, "keenward: 1");
    add(whole, text, "site: Example");
    whole.append(text.stripTrailing()).append('\n');
    add(whole, text, "zones: {}");
    return whole.toString();
  }

  private static void add(StringBuilder whole, String text, String line) {
    String field = line.substring(0, line.indexOf(':') + 1);
    if (!("\n" + text).contains("\n" + field)) {
      whole.append(line).append('\n');
    }
  }
}
