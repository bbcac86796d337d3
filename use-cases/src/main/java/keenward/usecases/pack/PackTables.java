package keenward.usecases.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.order.OrderSheet;
import keenward.core.dialogue.sheet.EntrySheet;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.Explained;
import keenward.core.electrical.LoadLine;
import keenward.core.electrical.PowerBudget;
import keenward.core.plan.Fact;
import keenward.core.proof.TestStep;
import keenward.core.quantities.Current;
import keenward.core.rules.Finding;
import keenward.files.table.TableWriter;
import keenward.files.zonelist.ZoneTable;
import keenward.usecases.job.SiteJob;
import keenward.usecases.order.KeyIn;

/** The tables of a job for a spreadsheet, each under the name of the paper it belongs to. */
public final class PackTables {

  private PackTables() {}

  /** All of them as one workbook. */
  public static byte[] workbook(SiteJob job) {
    return workbook(of(job), job.version());
  }

  static byte[] workbook(Map<String, List<List<String>>> tables, String version) {
    return TableWriter.xlsx(tables, "Keenward " + version);
  }

  /** Rows by name; the first row of each is its head. */
  static Map<String, List<List<String>>> of(SiteJob job) {
    Map<String, List<List<String>>> tables = new LinkedHashMap<>();
    tables.put("findings", findings(job));
    tables.put("zones", ZoneTable.of(job.site().plan()));
    tables.put("loads", loads(job));
    tables.put("battery", battery(job));
    tables.put("key-in", keyIn(job.keyIn()));
    tables.put("tests", tests(job));
    return tables;
  }

  private static List<List<String>> findings(SiteJob job) {
    List<List<String>> rows = table("Severity", "Rule", "Place", "What", "Remedy");
    for (Finding finding : job.check().findings()) {
      rows.add(
          List.of(
              finding.severity().word(),
              finding.code(),
              job.site().place(finding.place()),
              finding.what(),
              finding.remedy()));
    }
    return rows;
  }

  private static List<List<String>> loads(SiteJob job) {
    List<List<String>> rows = table("Supply", "Draws", "At rest", "In alarm");
    for (PowerBudget budget : job.power().supplies()) {
      for (LoadLine line : budget.loads().lines()) {
        rows.add(
            List.of(
                budget.supply().name(),
                line.name(),
                current(line.standby()),
                current(line.alarm())));
      }
    }
    return rows;
  }

  private static String current(Fact<Current> fact) {
    return fact.map(Current::written).orElse("not known");
  }

  private static List<List<String>> battery(SiteJob job) {
    List<List<String>> rows = table("Supply", "Line", "Working and result");
    for (PowerBudget budget : job.power().supplies()) {
      List<Explained> lines = new ArrayList<>(List.of(budget.standby(), budget.alarm()));
      budget.needs().stream().map(BatteryNeed::lines).forEach(lines::addAll);
      budget.fitted().ifPresent(lines::add);
      budget.margin().ifPresent(lines::add);
      lines.forEach(line -> rows.add(List.of(budget.supply().name(), line.name(), line.text())));
    }
    return rows;
  }

  private static List<List<String>> keyIn(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered -> order(ordered);
      case KeyIn.ByHand byHand -> byHand(byHand.sheet());
      case KeyIn.Refused refused -> {
        List<List<String>> rows = table("No order, because", "Remedy");
        refused.reasons().forEach(reason -> rows.add(List.of(reason.what(), reason.remedy())));
        yield rows;
      }
    };
  }

  private static List<List<String>> order(KeyIn.Ordered ordered) {
    List<List<String>> rows =
        table("Part", "Step", "Case", "Keypad shows", "Press", "Then it shows", "Stores");
    for (OrderSheet.Part part : OrderSheet.of(ordered.order()).parts()) {
      for (OrderSheet.Line line : part.lines()) {
        rows.add(
            List.of(
                part.title(),
                Integer.toString(line.number()),
                line.when(),
                String.join(" | ", line.shows()),
                line.words(),
                String.join(" | ", line.then()),
                String.join("; ", line.stores())));
      }
    }
    return rows;
  }

  private static List<List<String>> byHand(EntrySheet sheet) {
    List<List<String>> rows = table("UNPROVED: part", "What", "Enter", "From");
    for (EntrySheet.Part part : sheet.parts()) {
      for (EntrySheet.Value value : part.values()) {
        rows.add(List.of(part.title(), value.what(), value.value(), value.source()));
      }
    }
    return rows;
  }

  private static List<List<String>> tests(SiteJob job) {
    List<List<String>> rows =
        table(
            "No.",
            "Phase",
            "What",
            "Where",
            "Given",
            "Do",
            "Keypad shows",
            "Centre receives",
            "Result",
            "Date, initials");
    for (TestStep step : job.testPlan().steps()) {
      rows.add(
          List.of(
              Integer.toString(step.number()),
              step.phase().words(),
              step.subject().label(),
              step.place().map(place -> place.room()).orElse(""),
              step.precondition(),
              step.action(),
              step.keypadShows(),
              String.join(
                  "; ",
                  step.signals().stream()
                      .map(signal -> signal.text() + " " + signal.words())
                      .toList()),
              "",
              ""));
    }
    return rows;
  }

  private static List<List<String>> table(String... heads) {
    return new ArrayList<>(List.of(List.of(heads)));
  }
}
