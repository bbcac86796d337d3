package keenward.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.PowerBudget;
import keenward.core.rules.Finding;
import keenward.core.rules.Severity;
import keenward.usecases.job.SiteJob;
import keenward.usecases.order.KeyIn;
import keenward.usecases.pictures.Pictures;

/**
 * A site on the start page.
 *
 * @param name short name in addresses
 * @param title its name
 * @param file its file
 * @param sound whether the file could be used
 * @param thumbnail drawing of its lowest floor; empty when there is none
 * @param facts what to know, or the faults of the file
 * @param next what to do next
 */
public record Card(
    String name,
    String title,
    String file,
    boolean sound,
    String thumbnail,
    List<Fact> facts,
    String next) {

  /**
   * Something to know about a site.
   *
   * @param label what it is about
   * @param text what it is
   * @param mood good, bad or open
   * @param stage the page that tells more
   */
  public record Fact(String label, String text, String mood, String stage) {}

  public Card {
    facts = List.copyOf(facts);
  }

  static Card of(Bench.Standing standing) {
    return standing.find().map(job -> sound(standing, job)).orElseGet(() -> broken(standing));
  }

  private static Card broken(Bench.Standing standing) {
    Path last = standing.path().getFileName();
    return new Card(
        standing.name(),
        last == null ? standing.name() : last.toString(),
        standing.path().toString(),
        false,
        "",
        standing.problems().stream()
            .map(problem -> new Fact("", problem, "bad", "findings"))
            .toList(),
        "");
  }

  private static Card sound(Bench.Standing standing, SiteJob job) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "Zones",
            Integer.toString(job.site().plan().zones().size()),
            "plain",
            Stage.PLAN.address()));
    facts.add(
        new Fact(
            "Findings",
            PageWords.counts(job.check()),
            job.check().hasErrors() ? "bad" : job.check().findings().isEmpty() ? "good" : "open",
            Stage.FINDINGS.address()));
    facts.add(power(job));
    facts.add(order(job.keyIn()));
    facts.add(
        new Fact(
            "Tests", job.testPlan().steps().size() + " to do", "plain", Stage.TESTS.address()));
    return new Card(
        standing.name(),
        job.site().plan().site().name(),
        standing.path().toString(),
        true,
        Pictures.thumbnail(job, standing.name() + "-"),
        facts,
        next(job));
  }

  private static Fact power(SiteJob job) {
    if (job.power().supplies().isEmpty()) {
      return new Fact("Battery", "not assessed", "open", Stage.POWER.address());
    }
    PowerBudget budget = job.power().supplies().getFirst();
    return budget
        .margin()
        .map(margin ->
            new Fact(
                "Battery",
                "margin " + margin.result(),
                margin.value() < 0 ? "bad" : "good",
                Stage.POWER.address()))
        .orElse(new Fact("Battery", "not assessed", "open", Stage.POWER.address()));
  }

  private static Fact order(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered ->
          new Fact(
              "Key in",
              "order proved, " + ordered.order().effort().keys() + " keys",
              "good",
              Stage.ORDER.address());
      case KeyIn.Refused refused -> new Fact("Key in", "no order", "bad", Stage.ORDER.address());
      case KeyIn.ByHand byHand ->
          new Fact("Key in", "entry sheet, unproved", "open", Stage.ORDER.address());
    };
  }

  private static String next(SiteJob job) {
    for (Finding finding : job.check().findings()) {
      if (finding.severity() == Severity.ERROR) {
        return finding.remedy();
      }
    }
    return switch (job.keyIn()) {
      case KeyIn.Ordered ordered -> "Take the order to the keypad, then prove every zone.";
      case KeyIn.Refused refused -> refused.reasons().getFirst().remedy();
      case KeyIn.ByHand byHand -> "Enter the values by hand, then prove every zone.";
    };
  }
}
