package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.planned.PlanFact;
import keenward.core.dialogue.planned.PlanFacts;

/** What of a site plan the panel has no field or no word for. */
final class PlanCheck {
  private final List<LintFinding> findings;

  private PlanCheck(List<LintFinding> findings) {
    this.findings = findings;
  }

  static void check(PanelDescription description, List<LintFinding> findings) {
    PlanCheck check = new PlanCheck(findings);
    Set<String> taken = new HashSet<>();
    for (Field field : description.fields()) {
      field.from().ifPresent(source -> check.check(field, source, taken));
    }
    List<String> without = new ArrayList<>();
    for (PlanFact fact : PlanFacts.ALL) {
      if (!taken.contains(fact.path())) {
        without.add(fact.path());
      }
    }
    if (!without.isEmpty()) {
      check.add(
          LintSeverity.NOTE,
          "/memory",
          "no field takes these facts of a plan: " + String.join(", ", without),
          "nothing, if the panel has no such setting");
    }
  }

  private void check(Field field, PlanSource source, Set<String> taken) {
    for (String path : source.facts()) {
      if (!taken.add(path)) {
        add(
            LintSeverity.WARNING,
            Places.field(field) + "/from",
            "another field takes " + path + " as well",
            "check that the panel really asks twice");
      }
    }
    if (source instanceof PlanSource.OneFact one) {
      PlanFacts.find(one.path()).ifPresent(fact -> checkWords(field, one, fact));
    }
  }

  private void checkWords(Field field, PlanSource.OneFact source, PlanFact fact) {
    List<FieldType.Option> options =
        switch (field.type()) {
          case FieldType.Choice choice -> choice.options();
          case FieldType.OptionSet set -> set.options();
          default -> List.of();
        };
    if (options.isEmpty()) {
      return;
    }
    List<String> without = new ArrayList<>();
    for (String word : fact.words()) {
      String mapped = source.words().getOrDefault(word, word);
      if (options.stream().noneMatch(option -> option.word().equals(mapped))) {
        without.add(word);
      }
    }
    if (!without.isEmpty()) {
      add(
          LintSeverity.NOTE,
          Places.field(field),
          "has no word for " + String.join(", ", without) + " of " + fact.path(),
          "add them under words, if the panel can do it");
    }
    for (String word : source.words().values()) {
      if (options.stream().noneMatch(option -> option.word().equals(word))) {
        add(
            LintSeverity.ERROR,
            Places.field(field) + "/words",
            "'" + word + "' is none of the field's own words",
            "use one of the words of the field");
      }
    }
  }

  private void add(LintSeverity severity, String place, String what, String remedy) {
    findings.add(new LintFinding(severity, place, what, remedy));
  }
}
