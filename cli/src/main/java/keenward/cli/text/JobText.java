package keenward.cli.text;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import keenward.core.electrical.PowerBudget;
import keenward.core.rules.Finding;
import keenward.core.rules.Severity;
import keenward.usecases.job.SiteJob;

/** A job on one screen. */
public final class JobText {

  private static final int MOST_FINDINGS = 8;

  private JobText() {}

  /** What to say of one site, by the key that JSON has for it. */
  public static Map<String, Object> summary(SiteJob job, Path folder) {
    Map<String, Object> lines = new LinkedHashMap<>();
    lines.put("site", job.site().plan().site().name());
    lines.put("zones", job.site().plan().zones().size());
    lines.put("findings", CheckText.summary(job.check()));
    lines.put(
        "errors",
        job.check().findings().stream()
            .filter(finding -> finding.severity() == Severity.ERROR)
            .map(JobText::finding)
            .toList());
    lines.put("notAssessed", job.check().notAssessed().size());
    lines.put("power", power(job));
    lines.put("rehearsed", job.rehearsal().scenarios().size() + " scenarios");
    lines.put("keyIn", OrderText.summary(job.keyIn()));
    lines.put("tests", job.testPlan().steps().size());
    lines.put("folder", folder.toString());
    return lines;
  }

  /** The page. */
  public static String of(List<Map<String, Object>> summaries) {
    Page page = new Page();
    for (Map<String, Object> summary : summaries) {
      page.heading(String.valueOf(summary.get("site")));
      summary.forEach((key, value) -> {
        if (value instanceof List<?> errors) {
          errors.stream()
              .limit(MOST_FINDINGS)
              .forEach(error -> page.hanging("  ! ", 4, String.valueOf(error)));
          if (errors.size() > MOST_FINDINGS) {
            page.line("    and " + (errors.size() - MOST_FINDINGS) + " more in findings.txt");
          }
        } else if (!key.equals("site")) {
          String label = words(key);
          page.hanging(
              label + " ".repeat(Math.max(1, 14 - label.length())), 14, String.valueOf(value));
        }
      });
    }
    return page.toString();
  }

  /** A key as words: {@code notAssessed} becomes {@code not assessed}. */
  private static String words(String key) {
    return key.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private static String finding(Finding finding) {
    return finding.code() + " " + finding.what();
  }

  private static String power(SiteJob job) {
    if (job.power().supplies().isEmpty()) {
      return "not assessed";
    }
    StringBuilder words = new StringBuilder();
    for (PowerBudget budget : job.power().supplies()) {
      words
          .append(words.isEmpty() ? "" : "; ")
          .append(budget.supply().name())
          .append(": battery ")
          .append(
              budget.margin().map(margin -> "margin " + margin.result()).orElse("not assessed"));
    }
    return words.toString();
  }
}
