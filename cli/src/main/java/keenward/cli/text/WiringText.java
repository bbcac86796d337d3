package keenward.cli.text;

import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableRun;
import keenward.core.electrical.CableState;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.Remedy;
import keenward.core.plan.MissingFact;
import keenward.core.quantities.Voltage;
import keenward.usecases.site.SiteFile;

/** What cables carry, and the voltages that they leave. */
public final class WiringText {

  private WiringText() {}

  /** The cable schedule of a site. */
  public static String of(SiteFile site, PowerAssessment power) {
    Page page = new Page();
    page.heading("Cables: " + site.plan().site().name());
    if (power.networks().isEmpty()) {
      page.line("No cable of which the plan says enough: from, to, length, conductor.");
    }
    power
        .networksBySupply()
        .forEach((supply, networks) -> {
          page.gap().line("From " + supply);
          cables(page, networks);
          networks.forEach(network -> notes(page, network));
        });
    if (!power.networks().isEmpty()) {
      page.heading("Voltage at each place");
      places(page, power);
      for (CableRun run : power.cableRuns()) {
        remedies(page, run);
      }
    }
    if (!power.notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (MissingFact open : power.notAssessed()) {
        page.hanging("  ", 4, site.place(open.place()) + " " + open.message());
      }
    }
    return page.toString();
  }

  private static void notes(Page page, CableNetwork network) {
    String first = network.cables().getFirst().cable().name();
    if (network.isRing()) {
      page.line("  " + first + " and what hangs on it is a ring.");
    }
    if (!network.collapsed().isEmpty()) {
      page.hanging(
          "  ! ",
          4,
          "No steady voltage beyond "
              + first
              + ": "
              + String.join(
                  "; ", network.collapsed().stream().sorted().map(CableState::words).toList()));
    }
    if (network.certainty() != Certainty.KNOWN) {
      page.line("  Beyond " + first + " a current is not known: voltages are at most these.");
    }
  }

  private static void cables(Page page, List<CableNetwork> networks) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("cable", "from", "to", "run", "ohm", "at rest", "in alarm", "when low"));
    for (CableNetwork network : networks) {
      lines(network, rows);
    }
    page.table(rows);
  }

  private static void lines(CableNetwork network, List<List<String>> rows) {
    for (CableNetwork.Line line : network.cables()) {
      rows.add(
          List.of(
              line.cable().name(),
              line.cable().from(),
              line.cable().to(),
              line.cable().length().find().orElseThrow().written()
                  + " of "
                  + line.cable().conductor().find().orElseThrow().written()
                  + (line.cable().doubled().orElse(false) ? ", doubled" : ""),
              line.ohmsInPrint(),
              line.milliampsInPrint(CableState.FULL_AT_REST),
              line.milliampsInPrint(CableState.FULL_IN_ALARM),
              line.milliampsInPrint(CableState.EMPTY_IN_ALARM)));
    }
  }

  private static void places(Page page, PowerAssessment power) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "cable", "full, at rest", "full, in alarm", "low, in alarm", "needs"));
    for (CableNetwork network : power.networks()) {
      for (CableNetwork.Place place : network.places()) {
        rows.add(
            List.of(
                place.name(),
                place.metresInPrint(),
                place.voltsInPrint(CableState.FULL_AT_REST),
                place.voltsInPrint(CableState.FULL_IN_ALARM),
                place.voltsInPrint(CableState.EMPTY_IN_ALARM),
                place.isDevice() ? needs(power, place.name()) : ""));
      }
    }
    page.table(rows);
  }

  private static String needs(PowerAssessment power, String device) {
    return power.cableRuns().stream()
        .filter(run -> run.device().name().equals(device))
        .findFirst()
        .flatMap(run -> run.minimum().find().map(Voltage::written))
        .orElse("not known");
  }

  private static void remedies(Page page, CableRun run) {
    if (!run.remedies().isEmpty()) {
      page.gap().line("For " + run.device().name() + " any one of these is enough:");
      for (Remedy remedy : run.remedies()) {
        page.hanging("  - ", 4, remedy.text());
      }
    }
  }
}
