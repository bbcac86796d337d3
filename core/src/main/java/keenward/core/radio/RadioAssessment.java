package keenward.core.radio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import keenward.core.building.Building;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.Material;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.quantities.Frequency;
import keenward.core.quantities.Level;
import keenward.core.quantities.Span;
import org.jspecify.annotations.Nullable;

/**
 * The radio of a site: every sender to every receiver and repeater. Fobs are left out, since they
 * move about; the map shows where they are heard.
 */
public final class RadioAssessment {

  /** Frequencies further apart than this do not hear each other. */
  public static final double SAME_MEGAHERTZ = 0.1;

  /** The formulas are used in this range (P.1238 begins at 300 MHz). */
  private static final double LEAST_MEGAHERTZ = SiteGeneral.LEAST_MEGAHERTZ;

  private static final double MOST_MEGAHERTZ = 6000;

  /** Longer chains of repeaters than this are not looked for. */
  private static final int MOST_LINKS = 4;

  private final RadioBuilding building;
  private final SitePlan plan;
  private final Settings settings;
  private final List<Device> senders;
  private final List<Device> listeners;
  private final List<Station> sending = new ArrayList<>();
  private final List<Station> listening = new ArrayList<>();
  private final List<RadioLink> links = new ArrayList<>();
  private final List<RadioRoute> routes = new ArrayList<>();
  private final List<Supervision> supervised = new ArrayList<>();
  private final List<Device> onNoFrequency = new ArrayList<>();
  private final Set<MissingFact> levelsNotAssessed = new LinkedHashSet<>();
  private final Set<MissingFact> checkInsNotAssessed = new LinkedHashSet<>();
  private final List<Fit.Sample> samples;
  private final Fit fit;

  /**
   * A device of which everything is known.
   *
   * @param device the device
   * @param spot where it is
   * @param megahertz its frequency
   * @param level its e.i.r.p. as a sender, its sensitivity as a listener, in dBm
   */
  record Station(Device device, Spot spot, double megahertz, double level) {

    boolean hears(Station sender) {
      return Math.abs(megahertz - sender.megahertz) <= SAME_MEGAHERTZ;
    }
  }

  private RadioAssessment(SitePlan plan, Building drawn, Settings settings) {
    this.plan = plan;
    this.settings = settings;
    building = new RadioBuilding(plan, drawn);
    senders = plan.devices().stream().filter(RadioAssessment::sends).toList();
    listeners = plan.devices().stream().filter(RadioAssessment::listens).toList();
    if (senders.stream().anyMatch(each -> !listens(each))) {
      findStations();
      findLinks();
      sending.forEach(this::findRoute);
    }
    samples = samples();
    fit = Fit.of(samples).orElse(Fit.NONE);
    if (fit.measurements() > 0) {
      links.replaceAll(link -> link.fitted(fit));
      routes.clear();
      sending.forEach(this::findRoute);
    }
    routes.forEach(this::supervise);
  }

  /** The radio of a plan. */
  public static RadioAssessment of(SitePlan plan, Building building, Settings settings) {
    return new RadioAssessment(plan, building, settings);
  }

  private static boolean sends(Device device) {
    return device.kind() == DeviceKind.REPEATER
        || (device.traits().wiring().orNull() == Wiring.RADIO
            && device.kind() != DeviceKind.RECEIVER
            && device.kind() != DeviceKind.FOB);
  }

  private static boolean listens(Device device) {
    return device.kind() == DeviceKind.RECEIVER || device.kind() == DeviceKind.REPEATER;
  }

  private void findStations() {
    if (listeners.stream().noneMatch(each -> each.kind() == DeviceKind.RECEIVER)) {
      levelsNotAssessed.add(
          new MissingFact(
              PlanPath.of("devices"),
              "whether radio devices are heard, since the plan names no receiver; one inside the panel is a device too",
              "Radio receiver: { kind: receiver, room: Hall, at: [2, 0.1], sensitivity: -105 dBm, frequency: 868.3 MHz }"));
    }
    for (Device sender : senders) {
      station(
              sender,
              sender.traits().radioPower(),
              "how strong " + subject(sender) + " sends",
              "radio power: 10 dBm")
          .ifPresent(sending::add);
    }
    for (Device listener : listeners) {
      station(
              listener,
              listener.traits().sensitivity(),
              "how weak a signal " + subject(listener) + " still understands",
              "sensitivity: -105 dBm")
          .ifPresent(listening::add);
    }
    for (Station sender : sending) {
      boolean isTold =
          listening.size() == listeners.size()
              && listening.stream().anyMatch(each -> !each.device().equals(sender.device()));
      if (isTold
          && listening.stream()
              .noneMatch(each -> !each.device().equals(sender.device()) && each.hears(sender))) {
        onNoFrequency.add(sender.device());
      }
    }
  }

  private Optional<Station> station(
      Device device, Fact<Level> level, String whatLevel, String levelLine) {
    @Nullable Double megahertz = device.traits().frequency().map(Frequency::megahertz).orNull();
    PlanPath traits = traits(device);
    if (megahertz == null) {
      miss(traits, "on which frequency " + subject(device) + " works", "frequency: 868.3 MHz");
    } else if (megahertz < LEAST_MEGAHERTZ || megahertz > MOST_MEGAHERTZ) {
      levelsNotAssessed.add(
          new MissingFact(
              traits,
              "the radio of "
                  + subject(device)
                  + ", since its frequency is outside 300 MHz to 6 GHz, where the formulas are used",
              "frequency: 868.3 MHz"));
      megahertz = null;
    }
    if (!level.isGiven()) {
      miss(traits, whatLevel, levelLine);
    }
    Optional<Spot> spot = building.find(device);
    if (spot.isEmpty()) {
      PlanPath place = PlanPath.of("devices", device.name());
      boolean isDrawn =
          device
              .room()
              .find()
              .filter(room -> building.building().findRoom(room).isEmpty())
              .isEmpty();
      miss(
          isDrawn ? place : place.then("room"),
          "where '" + device.name() + "' is" + (isDrawn ? "" : ": its room is not drawn"),
          isDrawn ? "at: [1.9, 2]" : "outline: [[0, 0], [4, 0], [4, 3], [0, 3]]");
    }
    if (megahertz == null || spot.isEmpty() || level.find().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Station(device, spot.get(), megahertz, level.find().get().decibelMilliwatts()));
  }

  private void miss(PlanPath place, String what, String line) {
    levelsNotAssessed.add(notSaid(place, what, line));
  }

  private static MissingFact notSaid(PlanPath place, String what, String line) {
    return new MissingFact(place, "the plan does not say " + what, line);
  }

  /** Types state most of what is missing: said once for all of a type. */
  private static String subject(Device device) {
    return device
        .type()
        .find()
        .map(type -> "a '" + type + "'")
        .orElseGet(() -> "'" + device.name() + "'");
  }

  private static PlanPath traits(Device device) {
    return device
        .type()
        .find()
        .map(type -> PlanPath.of("types", type))
        .orElseGet(() -> PlanPath.of("devices", device.name()));
  }

  private void findLinks() {
    for (Station sender : sending) {
      for (Station listener : listening) {
        if (sender.device().equals(listener.device()) || !listener.hears(sender)) {
          continue;
        }
        RadioPath path = building.at(sender.megahertz()).path(sender.spot(), listener.spot());
        if (path.open().isPresent()) {
          levelsNotAssessed.add(path.open().get());
        } else {
          links.add(
              new RadioLink(
                  sender.device(),
                  listener.device(),
                  path,
                  sender.level(),
                  listener.level(),
                  Fit.NONE,
                  building.premises()));
        }
      }
    }
  }

  /** The route with the fewest repeaters that is enough, else the one with the most margin. */
  private void findRoute(Station sender) {
    List<RadioRoute> found = new ArrayList<>();
    extend(new ArrayList<>(), sender.device(), found);
    found.stream()
        .min(
            Comparator.comparingInt((RadioRoute route) -> route.isEnough() ? 0 : 1)
                .thenComparingInt(route -> route.isEnough() ? route.repeaters() : 0)
                .thenComparingDouble(route -> -route.marginDecibels())
                .thenComparingInt(RadioRoute::repeaters))
        .ifPresent(routes::add);
  }

  private void extend(List<RadioLink> soFar, Device last, List<RadioRoute> found) {
    for (RadioLink link : links) {
      boolean isNew =
          link.sender().equals(last)
              && soFar.stream().noneMatch(each -> each.sender().equals(link.listener()));
      if (!isNew) {
        continue;
      }
      soFar.add(link);
      if (link.listener().kind() == DeviceKind.RECEIVER) {
        found.add(new RadioRoute(soFar));
      } else if (soFar.size() < MOST_LINKS) {
        extend(soFar, link.listener(), found);
      }
      soFar.removeLast();
    }
  }

  private List<Fit.Sample> samples() {
    List<Fit.Sample> samples = new ArrayList<>();
    for (RadioRoute route : routes) {
      RadioLink first = route.links().getFirst();
      first
          .measured()
          .ifPresent(measured ->
              samples.add(
                  new Fit.Sample(
                      first.path().obstacleDecibels(), first.levelOfDrawing(), measured)));
    }
    return samples;
  }

  private void supervise(RadioRoute route) {
    Device device = route.sender();
    if (device.kind() == DeviceKind.REPEATER && !device.traits().checkIn().isGiven()) {
      return;
    }
    Optional<Double> checkIn = checkInSeconds(device);
    double window = settings.get(Setting.RADIO_SUPERVISION).value() / 1000.0;
    if (checkIn.isEmpty()) {
      checkInsNotAssessed.add(
          notSaid(
              traits(device),
              "how often " + subject(device) + " reports that it is there",
              "check-in: 15 min"));
    } else if (window > 0) {
      double others =
          sending.stream()
              .filter(each -> !each.device().equals(device))
              .filter(each -> Math.abs(each.megahertz() - megahertz(route)) <= SAME_MEGAHERTZ)
              .flatMap(each -> checkInSeconds(each.device()).stream())
              .mapToDouble(seconds -> 1 / seconds)
              .sum();
      supervised.add(new Supervision(device, checkIn.get(), window, others, margins(route)));
    }
  }

  private static double megahertz(RadioRoute route) {
    return route.links().getFirst().path().megahertz();
  }

  private static Optional<Double> checkInSeconds(Device device) {
    return device.traits().checkIn().map(Span::seconds).find().filter(seconds -> seconds > 0);
  }

  private static List<Double> margins(RadioRoute route) {
    return route.links().stream()
        .map(link -> link.measuredMarginDecibels().orElse(link.marginDecibels()))
        .toList();
  }

  /** Whether the plan has any device that sends by radio, fobs and repeaters left out. */
  public boolean isNeeded() {
    return senders.stream().anyMatch(each -> !listens(each));
  }

  /** Every link of which the plan says enough, sender by sender in its order. */
  public List<RadioLink> links() {
    return List.copyOf(links);
  }

  /** How each sender reaches a receiver, in the order of the plan. */
  public List<RadioRoute> routes() {
    return List.copyOf(routes);
  }

  /** The supervision of each sender whose route and check-in are known. */
  public List<Supervision> supervised() {
    return List.copyOf(supervised);
  }

  /** Senders on a frequency on which nothing listens. */
  public List<Device> onNoFrequency() {
    return List.copyOf(onNoFrequency);
  }

  /** What the plan does not say of levels. */
  public List<MissingFact> levelsNotAssessed() {
    return List.copyOf(levelsNotAssessed);
  }

  /** What it does not say of check-ins. */
  public List<MissingFact> checkInsNotAssessed() {
    return List.copyOf(checkInsNotAssessed);
  }

  /** Both. */
  public List<MissingFact> notAssessed() {
    return Stream.concat(levelsNotAssessed.stream(), checkInsNotAssessed.stream()).toList();
  }

  /** The model refitted to what was measured; empty with too few measurements. */
  public Optional<Fit> fit() {
    return fit.measurements() == 0 ? Optional.empty() : Optional.of(fit);
  }

  /** How many measured levels the plan gives of senders that were reckoned too. */
  public int measurements() {
    return samples.size();
  }

  /**
   * A wall of metal beside a receiver or repeater.
   *
   * @param listener the receiver or repeater
   * @param what the wall
   * @param metres how near it is
   * @param wavelengthMetres the wavelength
   */
  public record NearMetal(Device listener, String what, double metres, double wavelengthMetres) {}

  /** The nearest metal wall to each listener of which place and frequency are known. */
  public List<NearMetal> nearMetal() {
    List<NearMetal> found = new ArrayList<>();
    for (Station listener : listening) {
      building.pieces().stream()
          .filter(piece ->
              piece.material().filter(RadioAssessment::isMetal).isPresent()
                  && piece.lowMetres() <= listener.spot().zMetres()
                  && piece.highMetres() >= listener.spot().zMetres())
          .map(piece ->
              new NearMetal(
                  listener.device(),
                  piece.what(),
                  Polygons.distance(piece.from(), piece.to(), listener.spot().point()),
                  FreeSpace.wavelengthMetres(listener.megahertz())))
          .min(Comparator.comparingDouble(NearMetal::metres))
          .ifPresent(found::add);
    }
    return found;
  }

  /** How many receivers and repeaters there are of which everything is known. */
  public int listeners() {
    return listening.size();
  }

  private static boolean isMetal(Material material) {
    return material == Material.METAL || material == Material.INSULATED_PANEL;
  }

  RadioBuilding building() {
    return building;
  }

  Fit fitOrNone() {
    return fit;
  }

  SitePlan plan() {
    return plan;
  }

  /** Senders that are no repeaters, of which everything is known. */
  List<Station> sensors() {
    return sending.stream().filter(each -> !listens(each.device())).toList();
  }

  /** Receivers of which everything is known. */
  List<Station> receivers() {
    return listening.stream().filter(each -> each.device().kind() == DeviceKind.RECEIVER).toList();
  }

  /** Listeners, each with the margin that it passes messages on with; a receiver is at the end. */
  Map<Station, Double> onward() {
    Map<Station, Double> onward = new HashMap<>();
    for (Station listener : listening) {
      if (listener.device().kind() == DeviceKind.RECEIVER) {
        onward.put(listener, Double.POSITIVE_INFINITY);
      } else {
        routes.stream()
            .filter(route -> route.sender().equals(listener.device()))
            .findFirst()
            .ifPresent(route -> onward.put(listener, route.marginDecibels()));
      }
    }
    return onward;
  }
}
