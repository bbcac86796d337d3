package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.rules.Finding;
import keenward.core.rules.NotAssessed;
import keenward.core.rules.RuleOutcome;
import keenward.core.rules.Source;
import keenward.core.rules.catalogue.RuleRegistry;

/** Findings, worst first, and what could not be judged. */
final class FindingsSheet {

  private FindingsSheet() {}

  static Sheet of(PapersInput input) {
    List<View> findings = new ArrayList<>();
    for (Finding finding : input.check().findings()) {
      findings.add(
          new View()
              .number("number", findings.size() + 1)
              .text("severity", finding.severity().word())
              .text("code", finding.code())
              .text("what", finding.what())
              .text("remedy", finding.remedy())
              .text("place", place(input, finding.place()))
              .text("path", finding.place().toString())
              .text("source", source(finding.code())));
    }
    List<View> missing = new ArrayList<>();
    for (NotAssessed each : input.check().notAssessed()) {
      missing.add(
          Say.missing(each.why(), each.lineToAdd(), place(input, each.place()))
              .text("code", each.code()));
    }
    List<String> passed = input.check().passed().stream().map(RuleOutcome::code).toList();
    List<String> idle =
        input.check().outcomes().stream()
            .filter(RuleOutcome::hadNothingToJudge)
            .map(RuleOutcome::code)
            .toList();
    View view =
        new View()
            .views("findings", findings)
            .views("missing", missing)
            .text("summary", summary(input))
            .text("passed", Say.list(passed))
            .number("passed-count", passed.size())
            .text("idle", Say.list(idle))
            .number("idle-count", idle.size());
    return Sheet.of("findings", "Findings", "technician and firm", view);
  }

  /** Counts by severity, and what was not assessed. */
  static String summary(PapersInput input) {
    int open = input.check().notAssessed().size();
    return input.check().summary()
        + (open == 0 ? "; nothing left unassessed" : "; " + open + " not assessed");
  }

  private static String place(PapersInput input, PlanPath path) {
    return input.places().apply(path);
  }

  private static String source(String code) {
    return RuleRegistry.find(code)
        .map(rule -> String.join("; ", rule.card().sources().stream().map(Source::words).toList()))
        .orElse("");
  }
}
