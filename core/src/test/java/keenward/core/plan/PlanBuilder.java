package keenward.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import keenward.core.quantities.Period;

/** Builds plans for tests; what a test does not mention is missing in the plan. */
public final class PlanBuilder {
  private final String name;
  private Fact<PremisesKind> premises = Fact.missing();
  private final List<Regime> regimes = new ArrayList<>();
  private Fact<Monitoring> monitoring = Fact.missing();
  private final List<Person> people = new ArrayList<>();
  private final List<FloorBuilder> floors = new ArrayList<>();
  private final List<DeviceType> types = new ArrayList<>();
  private final Map<String, DeviceBuilder> devices = new LinkedHashMap<>();
  private final List<SupplyBuilder> supplies = new ArrayList<>();
  private final List<Cable> cables = new ArrayList<>();
  private final PanelBuilder panel = new PanelBuilder();
  private final List<Partition> partitions = new ArrayList<>();
  private final List<ZoneBuilder> zones = new ArrayList<>();
  private final List<User> users = new ArrayList<>();
  private Fact<Service> service = Fact.missing();
  private final List<UnplacedRow> unplaced = new ArrayList<>();

  private PlanBuilder(String name) {
    this.name = name;
  }

  /** A plan of a site. */
  public static PlanBuilder site(String name) {
    return new PlanBuilder(name);
  }

  /** A plan of a site whose name does not matter. */
  public static PlanBuilder site() {
    return new PlanBuilder("Test site");
  }

  public PlanBuilder premises(PremisesKind kind) {
    premises = Fact.of(kind);
    return this;
  }

  public PlanBuilder regime(Standard standard) {
    return regime(new Regime(standard, Fact.missing(), Fact.missing(), standard.word()));
  }

  public PlanBuilder regime(Standard standard, String edition) {
    return regime(new Regime(standard, Fact.of(edition), Fact.missing(), standard.word()));
  }

  public PlanBuilder grade(Standard standard, int grade) {
    return regime(new Regime(standard, Fact.missing(), Fact.of(grade), standard.word()));
  }

  public PlanBuilder regime(Regime regime) {
    regimes.add(regime);
    return this;
  }

  public PlanBuilder monitored(String account) {
    return monitored(account, SignalFormat.DC_05, List.of());
  }

  public PlanBuilder monitored(String account, SignalFormat format, List<String> keyholders) {
    return monitoring(
        new Monitoring(
            Fact.missing(),
            Fact.missing(),
            Fact.of(account),
            Fact.of(format),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            keyholders));
  }

  public PlanBuilder monitoring(Monitoring account) {
    monitoring = Fact.of(account);
    return this;
  }

  public PlanBuilder person(String person, Habit... habits) {
    people.add(new Person(person, Fact.missing(), Fact.missing(), Arrays.asList(habits)));
    return this;
  }

  public PlanBuilder person(String person, Pace pace, Habit... habits) {
    people.add(new Person(person, Fact.of(pace), Fact.missing(), Arrays.asList(habits)));
    return this;
  }

  /** A habit of every day. */
  public static Habit habit(String habit, HabitAction action, String through, String keypad) {
    return new Habit(
        habit,
        action,
        List.of(),
        Fact.missing(),
        Fact.of(through),
        Fact.of(keypad),
        Fact.missing());
  }

  public PlanBuilder floor(String floor, Consumer<FloorBuilder> details) {
    FloorBuilder builder = new FloorBuilder(floor);
    details.accept(builder);
    floors.add(builder);
    return this;
  }

  public PlanBuilder device(String device, DeviceKind kind) {
    return device(device, kind, details -> {});
  }

  public PlanBuilder device(String device, DeviceKind kind, Consumer<DeviceBuilder> details) {
    DeviceBuilder builder = new DeviceBuilder(device, kind);
    details.accept(builder);
    devices.put(device, builder);
    return this;
  }

  public PlanBuilder type(DeviceType type) {
    types.add(type);
    return this;
  }

  public PlanBuilder supply(String supply, Consumer<SupplyBuilder> details) {
    SupplyBuilder builder = new SupplyBuilder(supply);
    details.accept(builder);
    supplies.add(builder);
    return this;
  }

  public PlanBuilder cable(String cable, String from, String to, String length, String conductor) {
    return cable(
        new Cable(
            cable,
            from,
            to,
            Fact.of(Quantities.of(Length.parse(length))),
            Fact.of(Quantities.of(Conductor.parse(conductor))),
            Fact.missing()));
  }

  public PlanBuilder cable(String cable, String from, String to, String length) {
    cables.add(
        new Cable(
            cable,
            from,
            to,
            Fact.of(Quantities.of(Length.parse(length))),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  public PlanBuilder cable(Cable cable) {
    cables.add(cable);
    return this;
  }

  public PlanBuilder panel(Consumer<PanelBuilder> details) {
    details.accept(panel);
    return this;
  }

  public PlanBuilder partition(String partition, int number) {
    return partition(new Partition(partition, number, List.of(), List.of()));
  }

  public PlanBuilder partition(String partition, int number, List<String> keypads) {
    return partition(new Partition(partition, number, keypads, List.of()));
  }

  public PlanBuilder commonArea(String partition, int number, List<String> commonTo) {
    return partition(new Partition(partition, number, List.of(), commonTo));
  }

  public PlanBuilder partition(Partition partition) {
    partitions.add(partition);
    return this;
  }

  public PlanBuilder zone(int number, String zone, ZoneResponse response) {
    return zone(number, zone, response, details -> {});
  }

  public PlanBuilder zone(
      int number, String zone, ZoneResponse response, Consumer<ZoneBuilder> details) {
    ZoneBuilder builder = new ZoneBuilder(number, zone, response);
    details.accept(builder);
    zones.add(builder);
    return this;
  }

  /** A user of all partitions. */
  public PlanBuilder user(int number, String user, UserRole role) {
    return user(number, user, role, List.of(), Fact.missing());
  }

  public PlanBuilder user(int number, String user, UserRole role, List<String> usable) {
    return user(number, user, role, usable, Fact.missing());
  }

  public PlanBuilder user(
      int number, String user, UserRole role, List<String> usable, Fact<String> person) {
    users.add(new User(number, user, role, usable, person, Fact.missing()));
    return this;
  }

  public PlanBuilder service(String installed, String lastVisit, String interval) {
    service =
        Fact.of(
            new Service(
                Fact.of(Quantities.date(installed)),
                Fact.of(Quantities.date(lastVisit)),
                Fact.of(Quantities.of(Period.parse(interval))),
                Fact.missing()));
    return this;
  }

  public PlanBuilder unplaced(String text, String why) {
    unplaced.add(new UnplacedRow(text, why));
    return this;
  }

  /** The plan. */
  public SitePlan build() {
    Map<String, Device> built = new LinkedHashMap<>();
    devices.forEach((key, builder) -> built.put(key, builder.build()));
    List<Partition> inForce = partitions.isEmpty() ? List.of(Partition.ONLY) : partitions;
    List<String> all = inForce.stream().map(Partition::name).toList();
    return new SitePlan(
        new Site(
            name,
            Fact.missing(),
            List.of(),
            premises,
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()),
        regimes,
        monitoring,
        people,
        floors.stream().map(FloorBuilder::build).toList(),
        types,
        List.copyOf(built.values()),
        supplies.stream().map(SupplyBuilder::build).toList(),
        List.of(),
        cables,
        panel.build(),
        inForce,
        !partitions.isEmpty(),
        zones.stream().map(builder -> builder.build(built, all)).toList(),
        users.stream()
            .map(user ->
                user.partitions().isEmpty()
                    ? new User(
                        user.number(),
                        user.name(),
                        user.role(),
                        all,
                        user.person(),
                        user.mayBypass())
                    : user)
            .toList(),
        service,
        unplaced);
  }
}
