package keenward.usecases.loops;

import java.util.List;
import keenward.core.electrical.loop.Diagnosis;
import keenward.core.electrical.loop.FaultFinder;
import keenward.core.electrical.loop.Loop;
import keenward.core.electrical.loop.LoopTolerances;
import keenward.core.plan.MissingFact;
import keenward.core.quantities.Resistance;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;

/**
 * What a resistance means that was measured at the panel's end of a loop.
 *
 * @param loop the loop
 * @param measuredOhms the reading; infinite for an open loop
 * @param diagnoses what it may mean, the likeliest first; none when nothing fits
 */
public record LoopReading(Loop loop, double measuredOhms, List<Diagnosis> diagnoses) {

  private static final String OPEN = "open";

  public LoopReading {
    diagnoses = List.copyOf(diagnoses);
  }

  /**
   * The meaning of a reading.
   *
   * @param zone number of the zone
   * @param measured a resistance such as 4.7 kohm, or open
   */
  public static LoopReading of(SiteFile site, int zone, String measured) throws BadInput {
    Loop loop =
        switch (site.plan().zones().stream()
            .filter(each -> each.number() == zone)
            .findFirst()
            .map(each -> Loop.of(each, LoopTolerances.USUAL))
            .orElseGet(Loop.Found.None::new)) {
          case Loop.Found.Known(Loop known) -> known;
          case Loop.Found.NotKnown(MissingFact missing) ->
              throw unknown(zone, "add: " + missing.lineToAdd());
          case Loop.Found.None() -> throw unknown(zone, "see `loops`");
        };
    double ohms = ohms(measured);
    return new LoopReading(loop, ohms, FaultFinder.find(loop, ohms));
  }

  private static BadInput unknown(int zone, String remedy) {
    return new BadInput(
        "--zone",
        "the plan says too little about a loop of zone " + zone,
        "the number of a zone with wiring, resistors and contact",
        remedy);
  }

  private static double ohms(String measured) throws BadInput {
    if (measured.equals(OPEN)) {
      return Double.POSITIVE_INFINITY;
    }
    return Resistance.parse(measured)
        .find()
        .map(Resistance::ohms)
        .orElseThrow(() ->
            new BadInput(
                "--measured",
                "\"" + measured + "\"",
                "a resistance such as 4.7 kohm, or open",
                "write the unit: ohm, kohm, Mohm"));
  }
}
