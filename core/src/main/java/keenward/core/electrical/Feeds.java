package keenward.core.electrical;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.Cable;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.plan.Wiring;

/**
 * Which supply feeds which device: the one that the device names, else the one that its cables come
 * from, else the only supply of the plan. Radio devices live on their own cells unless they name a
 * supply; contacts and buttons draw nothing.
 */
public final class Feeds {
  private static final Set<DeviceKind> DRY =
      Set.of(
          DeviceKind.CONTACT,
          DeviceKind.HOLD_UP_BUTTON,
          DeviceKind.MEDICAL_BUTTON,
          DeviceKind.CALL_POINT,
          DeviceKind.LID,
          DeviceKind.KEY_SWITCH_CONTACT);

  /**
   * A device on a supply.
   *
   * @param device the device
   * @param reason why this supply: stated, by cable, or the only one
   */
  public record Fed(Device device, String reason) {}

  private final Map<String, List<Fed>> bySupply;
  private final List<MissingFact> notAssessed;

  private Feeds(Map<String, List<Fed>> bySupply, List<MissingFact> notAssessed) {
    this.bySupply = bySupply;
    this.notAssessed = List.copyOf(notAssessed);
  }

  /** Devices of a supply in the order of the plan. */
  public List<Fed> of(String supply) {
    return List.copyOf(bySupply.getOrDefault(supply, List.of()));
  }

  /** Devices that draw current from nobody knows where. */
  public List<MissingFact> notAssessed() {
    return notAssessed;
  }

  /** Finds the feeds of a plan. */
  public static Feeds of(SitePlan plan) {
    Map<String, List<Fed>> bySupply = new LinkedHashMap<>();
    List<MissingFact> open = new ArrayList<>();
    Map<String, String> byCable = byCable(plan);
    for (Device device : plan.devices()) {
      if (drawsNothing(device)) {
        continue;
      }
      String cabled = byCable.get(device.name());
      if (device.supply().isGiven()) {
        add(bySupply, device.supply().find().orElseThrow(), device, "");
      } else if (cabled != null) {
        add(bySupply, cabled, device, "supply found by its cables");
      } else if (plan.supplies().size() == 1) {
        add(bySupply, plan.supplies().getFirst().name(), device, "the only supply");
      } else if (!plan.supplies().isEmpty()) {
        open.add(
            new MissingFact(
                PlanPath.of("devices", device.name()),
                "the load of " + device.name() + ", which names none of the supplies",
                "supply: " + plan.supplies().getFirst().name()));
      }
    }
    return new Feeds(bySupply, open);
  }

  private static boolean drawsNothing(Device device) {
    if (device.supply().isGiven()) {
      return false;
    }
    Optional<Wiring> wiring = device.traits().wiring().find();
    return wiring.filter(Wiring.RADIO::equals).isPresent()
        || device.kind() == DeviceKind.FOB
        || isDry(device);
  }

  /** Whether it is a plain switch: no bus electronics, and no current stated or asked for. */
  static boolean isDry(Device device) {
    return DRY.contains(device.kind())
        && device.traits().wiring().find().filter(Wiring.BUS::equals).isEmpty()
        && device.traits().standbyCurrent().equals(Fact.missing())
        && device.traits().alarmCurrent().equals(Fact.missing());
  }

  private static void add(
      Map<String, List<Fed>> bySupply, String supply, Device device, String reason) {
    bySupply.computeIfAbsent(supply, name -> new ArrayList<>()).add(new Fed(device, reason));
  }

  private static Map<String, String> byCable(SitePlan plan) {
    Map<String, String> supplyOf = new LinkedHashMap<>();
    for (Supply supply : plan.supplies()) {
      reach(plan, supply.name()).forEach(place -> supplyOf.putIfAbsent(place, supply.name()));
    }
    return supplyOf;
  }

  /** A supply and the places that cables lead to from it, nearest first. */
  static Set<String> reach(SitePlan plan, String supply) {
    Set<String> reached = new LinkedHashSet<>(List.of(supply));
    List<String> next = new ArrayList<>(reached);
    while (!next.isEmpty()) {
      String from = next.removeFirst();
      for (Cable cable : plan.cables()) {
        if (cable.from().equals(from) && reached.add(cable.to())) {
          next.add(cable.to());
        }
      }
    }
    return reached;
  }
}
