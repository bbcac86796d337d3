package keenward.core.electrical;

import java.util.List;
import java.util.stream.Stream;
import keenward.core.quantities.Conductor;

/** Usual sizes of cable for alarm systems, thinnest first (common practice). */
final class ConductorSizes {
  private static final List<Conductor> AREAS =
      sizes("0.22 mm2", "0.5 mm2", "0.75 mm2", "1 mm2", "1.5 mm2", "2.5 mm2");
  private static final List<Conductor> GAUGES =
      sizes("24 AWG", "22 AWG", "20 AWG", "18 AWG", "16 AWG", "14 AWG", "12 AWG");

  private ConductorSizes() {}

  /** The usual sizes thicker than one, in its own system, thinnest first. */
  static List<Conductor> above(Conductor conductor) {
    return switch (conductor.gauge()) {
      case AWG -> GAUGES.stream().filter(each -> each.size() < conductor.size()).toList();
      case SQUARE_MILLIMETRES ->
          AREAS.stream().filter(each -> each.size() > conductor.size()).toList();
    };
  }

  private static List<Conductor> sizes(String... written) {
    return Stream.of(written).map(each -> Conductor.parse(each).find().orElseThrow()).toList();
  }
}
