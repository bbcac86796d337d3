package keenward.core.rules.catalogue;

import java.util.List;
import java.util.Locale;
import keenward.core.rules.Parameter;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Source;
import keenward.core.rules.Words;
import org.jspecify.annotations.Nullable;

/** Prints the catalogue of rules as Markdown: a table, then a section for each rule. */
public final class CataloguePage {

  private static final String HEAD =
      """
      # Rules

      Printed from the rules themselves; do not edit. A rule keeps its code for good: one that is given up is retired, and
      its code never means anything else. What a rule lacks a fact for it reports as *not assessed*, with the line to add.

      Severity: an **error** has to be put right; a **warning** may be right and often is not; **advice** could be better.
      A finding may be milder than its rule. Sources say whether they were read on a page or are from memory: check the
      second kind before relying on them. Where life, mains or signals that send somebody are concerned, local code, the
      authority having jurisdiction and licensed practice decide.

      """;

  private CataloguePage() {}

  /** The page of all rules. */
  public static String markdown() {
    return markdown(RuleRegistry.all());
  }

  static String markdown(List<Rule> rules) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("| code | fault | family | severity | since |\n| --- | --- | --- | --- | --- |\n");
    for (Rule rule : rules) {
      RuleCard card = rule.card();
      page.append("| [")
          .append(card.code())
          .append("](#")
          .append(anchor(card))
          .append(") | ")
          .append(words(card.fault()))
          .append(" | ")
          .append(card.family().words())
          .append(" | ")
          .append(card.severity().word())
          .append(" | ")
          .append(card.since())
          .append(" |\n");
    }
    @Nullable RuleFamily family = null;
    for (Rule rule : rules) {
      RuleCard card = rule.card();
      if (card.family() != family) {
        family = card.family();
        page.append("\n## ").append(Words.capitalized(family.words())).append('\n');
      }
      section(card, page);
    }
    return page.toString();
  }

  private static void section(RuleCard card, StringBuilder page) {
    page.append("\n### ")
        .append(card.code())
        .append(": ")
        .append(words(card.fault()))
        .append("\n\n")
        .append("`")
        .append(card.fault())
        .append("`, ")
        .append(card.severity().word())
        .append(", ")
        .append(card.status().word())
        .append(" since ")
        .append(card.since())
        .append("\n\n");
    page.append(card.purpose()).append("\n\n");
    paragraph("Consequence", card.consequence(), page);
    paragraph("Limits", card.limits(), page);
    paragraph("Remedy", card.remedy(), page);
    if (!card.parameters().isEmpty()) {
      page.append("| parameter | value | unit |\n| --- | --- | --- |\n");
      for (Parameter parameter : card.parameters()) {
        page.append("| ")
            .append(parameter.name())
            .append(" | ")
            .append(parameter.value())
            .append(" | ")
            .append(parameter.unit())
            .append(" |\n");
      }
      page.append('\n');
    }
    page.append(card.sources().size() == 1 ? "Source: " : "Sources: ")
        .append(String.join("; ", card.sources().stream().map(Source::words).toList()))
        .append(".\n\n");
    example("A plan with the fault", card.brokenExample(), page);
    example("Put right", card.mendedExample(), page);
    example("Looks like it, and is none", card.nearMiss(), page);
  }

  private static void paragraph(String title, String text, StringBuilder page) {
    page.append("**").append(title).append(".** ").append(text).append("\n\n");
  }

  private static void example(String title, String text, StringBuilder page) {
    page.append(title).append(":\n\n```yaml\n").append(text).append("```\n\n");
  }

  private static String words(String fault) {
    return fault.replace('-', ' ');
  }

  /** The anchor that Markdown renderers make of a rule's heading. */
  private static String anchor(RuleCard card) {
    return card.code().toLowerCase(Locale.ROOT) + "-" + card.fault();
  }
}
