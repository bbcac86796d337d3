package keenward.core.electrical;

import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.Cable;

/**
 * Cables that leave one supply and hang together, with what they carry in each state.
 *
 * @param supply name of the supply
 * @param atSupply voltage of the battery in each state that does not collapse
 * @param cables the cables, from the supply outwards
 * @param places joint boxes and devices on them, nearest first
 * @param collapsed states in which the loads get no steady voltage
 * @param certainty at most, while a current is not known: more of it would lower the voltages
 * @param breaks for a ring: what is left when one of its cables breaks
 */
public record CableNetwork(
    String supply,
    Map<CableState, Double> atSupply,
    List<Line> cables,
    List<Place> places,
    Set<CableState> collapsed,
    Certainty certainty,
    List<Break> breaks) {

  /** Copies the collections. */
  public CableNetwork {
    atSupply = Map.copyOf(atSupply);
    cables = List.copyOf(cables);
    places = List.copyOf(places);
    collapsed = Set.copyOf(collapsed);
    breaks = List.copyOf(breaks);
  }

  /**
   * One cable.
   *
   * @param cable the cable
   * @param ohms its resistance, there and back
   * @param milliamps current towards its far end in each state that does not collapse
   */
  public record Line(Cable cable, Explained ohms, Map<CableState, Double> milliamps) {
    /** Copies the map. */
    public Line {
      milliamps = Map.copyOf(milliamps);
    }

    /** Its resistance in print, two decimals. */
    public String ohmsInPrint() {
      return Figures.text(Math.round(ohms.value() * 100) / 100.0);
    }

    /** What it carries in a state, in print. */
    public String milliampsInPrint(CableState state) {
      Double found = milliamps.get(state);
      return found == null ? "-" : Math.round(found) + " mA";
    }
  }

  /**
   * A joint box or device.
   *
   * @param name its name
   * @param isDevice whether it is a device
   * @param metres length of cable from the supply by the fewest cables
   * @param way names of those cables
   * @param volts voltage there in each state that does not collapse
   */
  public record Place(
      String name,
      boolean isDevice,
      double metres,
      List<String> way,
      Map<CableState, Double> volts) {
    /** Copies the collections. */
    public Place {
      way = List.copyOf(way);
      volts = Map.copyOf(volts);
    }

    /** Length of cable to it in print. */
    public String metresInPrint() {
      return Figures.text(Math.round(metres * 10) / 10.0) + " m";
    }

    /** Voltage in a state in print, rounded down. */
    public String voltsInPrint(CableState state) {
      Double found = volts.get(state);
      return found == null ? "none" : Figures.voltsReached(found);
    }
  }

  /**
   * A broken cable of a ring, every place still fed from the other side.
   *
   * @param cable name of the cable
   * @param volts voltage at each place at the end of discharge, in alarm; 0 where all collapses
   */
  public record Break(String cable, Map<String, Double> volts) {
    /** Copies the map. */
    public Break {
      volts = Map.copyOf(volts);
    }
  }

  /** Names of its devices. */
  public List<String> devices() {
    return places.stream().filter(Place::isDevice).map(Place::name).toList();
  }

  /** Whether some place is fed from two sides. */
  public boolean isRing() {
    return cables.size() > places.size();
  }

  /** Length of all its cables, in metres. */
  public double totalMetres() {
    return cables.stream()
        .mapToDouble(line -> line.cable().length().find().orElseThrow().metres())
        .sum();
  }
}
