package keenward.usecases.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Invents a site: units on both sides of a corridor, floor upon floor. The same number of zones and
 * the same random numbers give the same text.
 */
public final class SampleSite {

  /** More zones than this would make a file that no reader takes. */
  public static final int MOST_ZONES = 10_000;

  /** The most zones that have a number of three digits, as a DC-05 message holds it. */
  private static final int MOST_ZONES_TO_SEND = 999;

  /** Beyond, every unit has most kinds of sensors. */
  private static final int MOST_LOOSELY = 4000;

  private static final int UNITS_A_FLOOR = 60;
  private static final int MOST_FLOORS_NAMED = 99;
  private static final BigDecimal CORRIDOR_METRES = new BigDecimal("2.4");

  private static final List<String> TRADES =
      List.of(
          "Joiner", "Printer", "Potter", "Baker", "Glazier", "Tailor", "Florist", "Framer",
          "Cutler", "Turner", "Weaver", "Binder");

  private final RandomGenerator random;
  private final int wanted;
  private final StringBuilder rooms = new StringBuilder();
  private final StringBuilder openings = new StringBuilder();
  private final StringBuilder floors = new StringBuilder();
  private final StringBuilder devices = new StringBuilder();
  private final StringBuilder supplies = new StringBuilder();
  private final StringBuilder zones = new StringBuilder();
  private final StringBuilder partitions = new StringBuilder();
  private int made;
  private int units;

  private SampleSite(int zones, RandomGenerator random) {
    this.wanted = zones;
    this.random = random;
  }

  /**
   * A site plan.
   *
   * @param zones how many zones, 1 to {@link #MOST_ZONES}
   * @param random where chance comes from
   */
  public static String of(int zones, RandomGenerator random) {
    if (zones < 1 || zones > MOST_ZONES) {
      throw new IllegalArgumentException(zones + " zones: expected 1 to " + MOST_ZONES);
    }
    return new SampleSite(zones, random).write();
  }

  private String write() {
    for (int floor = 1; made < wanted && floor <= MOST_FLOORS_NAMED; floor++) {
      floor(floor);
    }
    StringBuilder text = new StringBuilder();
    text.append("# Invented by chance: no such place.\n")
        .append("keenward: 1\n")
        .append("site: Sample of ")
        .append(wanted)
        .append(" zones\n")
        .append("regime: cp-01 2010\n");
    if (wanted <= MOST_ZONES_TO_SEND) {
      text.append("monitoring: { account: \"2218\", format: dc-05 }\n");
    }
    text.append("floors:\n").append(floors);
    text.append(
        """
        types:
          contact:  { kind: contact, wiring: wired, security grade: 2 }
          motion:   { kind: motion, wiring: wired, standby current: 12 mA, alarm current: 15 mA, minimum voltage: 9.5 V, coverage: { pattern: fan, range: 12 m, angle: 90 deg, pet allowance: no } }
          glass:    { kind: glass-break, wiring: wired, standby current: 15 mA, alarm current: 22 mA, minimum voltage: 9 V, coverage: { pattern: sphere, range: 7.5 m } }
          smoke:    { kind: smoke, wiring: wired, latching: no, standby current: 1 mA, alarm current: 20 mA, minimum voltage: 9 V }
          button:   { kind: hold-up-button, wiring: wired }
        devices:
        """);
    text.append(devices);
    text.append("supplies:\n").append(supplies);
    text.append(
        """
        panel:
          room: Corridor 1
          supply: Floor 1
          entry delays: { 1: 30 s }
          exit time: 60 s
          sounder time: 5 min
          abort window: 30 s
          cancel window: 5 min
        partitions:
        """);
    text.append(partitions);
    text.append("zones:\n").append(zones);
    text.append(
        "users:\n  1: { name: Warden, role: master }\n  2: { name: Technician, role: technician }\n");
    return text.toString();
  }

  private void floor(int number) {
    String corridor = "Corridor " + number;
    String partition = "Floor " + number;
    rooms.setLength(0);
    openings.setLength(0);
    partitions.append("  ").append(partition).append(": { number: ").append(number).append(" }\n");
    supplies
        .append("  ")
        .append(partition)
        .append(": { room: ")
        .append(corridor)
        .append(
            ", voltage: 13.7 V, rating: 5 A, own standby current: 60 mA, own alarm current: 90 mA")
        .append(", charge current: 3 A, largest battery: 65 Ah, battery: { capacity: 65 Ah } }\n");
    device(
        "Keypad " + number,
        "{ kind: keypad, wiring: bus, room: "
            + corridor
            + ", at: [1, 2.3], standby current: 30 mA, alarm current: 60 mA, supply: "
            + partition
            + " }");
    if (number == 1) {
      device(
          "Siren",
          "{ kind: siren, wiring: wired, room: Corridor 1, at: [0.1, 0.4]"
              + ", standby current: 10 mA, alarm current: 250 mA, supply: Floor 1 }");
      openings.append(
          "      Main door: { kind: door, between: [Corridor 1, outside], edge: 1, at: 0.6 m, width: 1 m }\n");
      device("Main door contact", "{ type: contact, room: Corridor 1, opening: Main door }");
      zone("Main door", "entry-exit", partition, "Main door contact");
    }
    if (made < wanted) {
      device(
          "Corridor motion " + number,
          "{ type: motion, room: "
              + corridor
              + ", at: [0.1, 0.1], height: 2.3 m, bearing: 60 deg, supply: "
              + partition
              + " }");
      zone("Corridor motion " + number, "follower", partition, "Corridor motion " + number);
    }
    BigDecimal length = BigDecimal.ZERO;
    int onFloor = 0;
    while (onFloor == 0 || (made < wanted && onFloor < UNITS_A_FLOOR)) {
      BigDecimal width = metres(5, 9);
      for (int side = 0; side < 2; side++) {
        unit(corridor, partition, length, width, side == 0);
        onFloor++;
      }
      length = length.add(width);
    }
    floors
        .append("  Level ")
        .append(number)
        .append(":\n    height: 3 m\n    wall material: block\n    rooms:\n");
    // From the west end, so that its first wall to outside is that of the main door.
    floors
        .append("      ")
        .append(corridor)
        .append(": { use: hall, outline: [[0, ")
        .append(CORRIDOR_METRES)
        .append("], [0, 0], [")
        .append(length)
        .append(", 0], [")
        .append(length)
        .append(", ")
        .append(CORRIDOR_METRES)
        .append("]] }\n");
    floors.append(rooms);
    if (!openings.isEmpty()) {
      floors.append("    openings:\n").append(openings);
    }
    if (made < wanted) {
      floors
          .append("    stairs:\n      Stair ")
          .append(number)
          .append(": { room: ")
          .append(corridor)
          .append(", to: Corridor ")
          .append(number + 1)
          .append(" }\n");
    }
  }

  private void unit(
      String corridor, String partition, BigDecimal from, BigDecimal width, boolean north) {
    units++;
    String name = TRADES.get(random.nextInt(TRADES.size())) + " " + units;
    BigDecimal depth = metres(6, 10);
    BigDecimal near = north ? CORRIDOR_METRES : BigDecimal.ZERO;
    BigDecimal far = north ? CORRIDOR_METRES.add(depth) : depth.negate();
    BigDecimal to = from.add(width);
    rooms
        .append("      ")
        .append(name)
        .append(": { use: workshop, outline: [")
        .append(corner(from, near))
        .append(", ")
        .append(corner(to, near))
        .append(", ")
        .append(corner(to, far))
        .append(", ")
        .append(corner(from, far))
        .append("] }\n");
    openings
        .append("      ")
        .append(name)
        .append(" door: { kind: door, between: [")
        .append(name)
        .append(", ")
        .append(corridor)
        .append("], at: 0.5 m, width: 0.9 m }\n");
    // The three outer walls of a unit run from its second corner round to its first.
    String eye =
        corner(
            from.add(new BigDecimal("0.1")),
            north ? far.subtract(new BigDecimal("0.1")) : far.add(new BigDecimal("0.1")));
    add(
        name,
        " motion",
        "instant",
        partition,
        "motion",
        "at: "
            + eye
            + ", height: 2.3 m, bearing: "
            + (north ? "135" : "45")
            + " deg, supply: "
            + partition);
    if (chance(7)) {
      add(name, " door", "instant", partition, "contact", "opening: " + name + " door");
    }
    if (chance(5)) {
      add(name, " smoke", "fire", partition, "smoke", "supply: " + partition);
    }
    if (chance(3)) {
      add(name, " glass", "perimeter", partition, "glass", "supply: " + partition);
    }
    if (chance(1)) {
      add(name, " button", "hold-up", partition, "button", "");
    }
  }

  private void add(
      String unit, String what, String response, String partition, String type, String more) {
    if (made < wanted) {
      device(
          unit + what,
          "{ type: " + type + ", room: " + unit + (more.isEmpty() ? "" : ", " + more) + " }");
      zone(unit + what, response, partition, unit + what);
    }
  }

  private void device(String name, String facts) {
    devices.append("  ").append(name).append(": ").append(facts).append('\n');
  }

  private void zone(String name, String response, String partition, String device) {
    if (made < wanted) {
      made++;
      zones
          .append("  ")
          .append(made)
          .append(": { name: ")
          .append(name)
          .append(", response: ")
          .append(response)
          .append(", partition: ")
          .append(partition)
          .append(", device: ")
          .append(device)
          .append(" }\n");
    }
  }

  private static String corner(BigDecimal x, BigDecimal y) {
    return "[" + x + ", " + y + "]";
  }

  /**
   * Whether a unit has something that so many of ten have; of a large site all have it, since a
   * drawing holds so many rooms.
   */
  private boolean chance(int ofTen) {
    return random.nextInt(10) < ofTen || (wanted > MOST_LOOSELY && ofTen > 1);
  }

  /** A length in steps of 0.1 m. */
  private BigDecimal metres(int least, int most) {
    return BigDecimal.valueOf(random.nextInt(least * 10, most * 10 + 1), 1)
        .setScale(1, RoundingMode.UNNECESSARY);
  }
}
