package keenward.cli.json;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.Gap;
import keenward.core.building.placing.Suggestion;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.SiteWalk;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.dialogue.order.OrderSheet;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.electrical.Explained;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.loop.Loop;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.Outages;
import keenward.core.electrical.outage.OwnCells;
import keenward.core.plan.Device;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Point;
import keenward.core.proof.ExpectedSignal;
import keenward.core.proof.TestPlan;
import keenward.core.proof.TestStep;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.RadioLink;
import keenward.core.radio.RadioMap;
import keenward.core.radio.RadioRoute;
import keenward.core.radio.Supervision;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.RuleCard;
import keenward.usecases.coverage.SiteCoverage;
import keenward.usecases.job.SiteJob;
import keenward.usecases.loops.LoopReading;
import keenward.usecases.order.KeyIn;
import keenward.usecases.radio.SiteRadio;
import keenward.usecases.rehearse.SiteRehearsal;
import keenward.usecases.site.SiteFile;
import keenward.usecases.suggest.SiteSuggestion;
import keenward.usecases.walks.TimedWalks;
import keenward.usecases.zonelist.ImportedList;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Results as JSON. Keys are camel case, units stand in the key, places are {@code
 * FILE:LINE:COLUMN}.
 */
public final class Json {

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private Json() {}

  /** Findings. */
  public static String check(SiteFile site, CheckResult result) {
    Map<String, Object> json = head(site);
    json.putAll(checkMap(site, result));
    return text(json);
  }

  /** Sums. */
  public static String power(SiteFile site, PowerAssessment power, Outages outages) {
    Map<String, Object> json = head(site);
    json.putAll(powerMap(site, power, outages));
    return text(json);
  }

  /** What cables carry and leave. */
  public static String wiring(SiteFile site, PowerAssessment power) {
    Map<String, Object> json = head(site);
    json.put("networks", power.networks().stream().map(Json::network).toList());
    json.put(
        "remedies",
        power.cableRuns().stream()
            .filter(run -> !run.remedies().isEmpty())
            .map(run ->
                map(
                    "device",
                    run.device().name(),
                    "enough",
                    run.remedies().stream()
                        .map(remedy -> map("what", remedy.words(), "volts", remedy.volts()))
                        .toList()))
            .toList());
    json.put("notAssessed", missing(power.notAssessed()));
    return text(json);
  }

  private static Map<String, Object> network(CableNetwork network) {
    return map(
        "supply", network.supply(),
        "ring", network.isRing(),
        "certainty", network.certainty().words().strip(),
        "collapses", network.collapsed().stream().sorted().map(CableState::words).toList(),
        "cables",
            network.cables().stream()
                .map(line ->
                    map(
                        "cable", line.cable().name(),
                        "from", line.cable().from(),
                        "to", line.cable().to(),
                        "ohms", line.ohms().value(),
                        "working", line.ohms().working(),
                        "source", line.ohms().source(),
                        "milliamps", inStates("milliamps", line.milliamps())))
                .toList(),
        "places",
            network.places().stream()
                .map(place ->
                    map(
                        "name", place.name(),
                        "metres", place.metres(),
                        "cables", place.way(),
                        "volts", inStates("volts", place.volts())))
                .toList());
  }

  private static List<Map<String, Object>> inStates(String key, Map<CableState, Double> values) {
    return values.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(each -> map("state", each.getKey().words(), key, each.getValue()))
        .toList();
  }

  /** What the panel reads of every loop. */
  public static String loops(SiteFile site, LoopAssessment loops) {
    Map<String, Object> json = head(site);
    json.put("loops", loops.loops().stream().map(Json::loop).toList());
    json.put("notAssessed", missing(loops.notAssessed()));
    return text(json);
  }

  /** What one reading may mean. */
  public static String loop(SiteFile site, LoopReading reading) {
    Map<String, Object> json = head(site);
    json.put("zone", reading.loop().zone().number());
    putFinite(json, "measuredOhms", reading.measuredOhms());
    json.put("states", states(reading.loop()));
    json.put(
        "diagnoses",
        reading.diagnoses().stream()
            .map(each -> map("what", each.what(), "working", each.working()))
            .toList());
    return text(json);
  }

  /** How radio devices are heard. */
  public static String radio(SiteRadio site) {
    RadioAssessment radio = site.assessment();
    Map<String, Object> json = head(site.site());
    json.put("devices", radio.routes().stream().map(route -> route(radio, route)).toList());
    site.bestReceiver().ifPresent(place -> json.put("bestReceiver", place(place)));
    site.bestRepeater().ifPresent(place -> json.put("bestRepeater", place(place)));
    json.put("measurements", radio.measurements());
    radio
        .fit()
        .ifPresent(fit ->
            json.put(
                "fit",
                map(
                    "offsetDecibels", fit.offsetDecibels(),
                    "wallScale", fit.wallScale(),
                    "sigmaDecibels", fit.sigmaDecibels())));
    json.put("onNoFrequency", radio.onNoFrequency().stream().map(Device::name).toList());
    json.put("notAssessed", missing(radio.notAssessed()));
    return text(json);
  }

  private static Map<String, Object> route(RadioAssessment radio, RadioRoute route) {
    Map<String, Object> json =
        map(
            "device", route.sender().name(),
            "marginDecibels", route.marginDecibels(),
            "holds", route.isEnough(),
            "links", route.links().stream().map(Json::link).toList());
    radio.supervised().stream()
        .filter(each -> each.device().equals(route.sender()))
        .findFirst()
        .ifPresent((Supervision each) ->
            json.put(
                "supervision",
                map(
                    "checkIns", each.messages(),
                    "lostShare", each.lostShare(),
                    "falseReportsAYear", each.falseReportsAYear(),
                    "lines",
                        each.lines(route.links().getFirst().path().megahertz()).stream()
                            .map(Json::explained)
                            .toList())));
    return json;
  }

  private static Map<String, Object> link(RadioLink link) {
    Map<String, Object> json =
        map(
            "from", link.sender().name(),
            "to", link.listener().name(),
            "metres", link.path().metres(),
            "levelDbm", link.level(),
            "marginDecibels", link.marginDecibels(),
            "reserveDecibels", link.shadowing().reserveDecibels(),
            "secondOpinionMarginDecibels", link.secondOpinionMarginDecibels());
    link.measured().ifPresent(level -> json.put("measuredDbm", level));
    json.put("lines", link.lines().stream().map(Json::explained).toList());
    return json;
  }

  private static Map<String, Object> place(RadioMap.BestPlace place) {
    return map(
        "floor", place.floor(),
        "room", place.room(),
        "at", List.of(place.at().xMetres(), place.at().yMetres()),
        "leastMarginDecibels", place.leastMarginDecibels(),
        "worst", place.worst().name());
  }

  private static Map<String, Object> loop(LoopAssessment.Assessed each) {
    Map<String, Object> json =
        map(
            "zone", each.loop().zone().number(),
            "wiring", each.loop().wiring().word(),
            "states", states(each.loop()));
    each.check()
        .ifPresent(check -> {
          json.put(
              "steps",
              check.steps().stream()
                  .map(step ->
                      map(
                          "lower", step.lower().words(),
                          "upper", step.upper().words(),
                          "thresholdOhms", step.thresholdOhms(),
                          "spareShare", step.spareShare()))
                  .toList());
          check.longestMetres().ifPresent(metres -> json.put("longestMetres", metres));
        });
    return json;
  }

  private static List<Map<String, Object>> states(Loop loop) {
    List<Map<String, Object>> states = new ArrayList<>();
    loop.bands()
        .forEach((state, band) -> {
          Map<String, Object> each = map("state", state.words(), "leastOhms", band.leastOhms());
          putFinite(each, "nominalOhms", band.nominalOhms());
          putFinite(each, "mostOhms", band.mostOhms());
          states.add(each);
        });
    return states;
  }

  /** Leaves out what has no end: JSON knows no infinity. */
  private static void putFinite(Map<String, Object> json, String key, double ohms) {
    if (!Double.isInfinite(ohms)) {
      json.put(key, ohms);
    }
  }

  /** How a list of zones was read. */
  public static String imported(Path list, Path out, ImportedList imported) {
    return text(
        map(
            "site", imported.site(),
            "list", list.toString(),
            "plan", out.toString(),
            "zones", imported.zones(),
            "unplaced", imported.unplaced(),
            "notes",
                imported.notes().stream()
                    .map(note ->
                        map(
                            "row", note.row(),
                            "column", note.column(),
                            "kind", note.kind(),
                            "text", note.text()))
                    .toList()));
  }

  /** What detectors see. */
  public static String coverage(SiteCoverage coverage) {
    Map<String, Object> json = head(coverage.site());
    json.put(
        "rooms",
        coverage.map().floors().stream()
            .flatMap(floor ->
                floor.rooms().stream()
                    .map(room ->
                        map(
                            "floor", floor.floor(),
                            "room", room.room(),
                            "floorSquareMetres", room.floorSquareMetres(),
                            "seenSquareMetres", room.seenSquareMetres(),
                            "seenTwiceSquareMetres", room.seenTwiceSquareMetres(),
                            "detectors", room.detectors(),
                            "gaps", room.gaps().stream().map(Json::gap).toList())))
            .toList());
    json.put(
        "detectors",
        coverage.map().views().stream()
            .map(view -> {
              Map<String, Object> each =
                  map(
                      "name", view.device().name(),
                      "floor", view.floor(),
                      "room", view.room(),
                      "seenSquareMetres", view.seen().squareMetres(),
                      "outlinesMetres", outlines(view));
              putFinite(each, "blindMetres", view.seen().blindMetres());
              return each;
            })
            .toList());
    json.put(
        "glassBreak",
        coverage.map().detectors().hearings().stream()
            .map(heard ->
                map(
                    "name", heard.device().name(),
                    "floor", heard.floor(),
                    "outlinesMetres", outlines(heard)))
            .toList());
    json.put(
        "beams",
        coverage.map().detectors().beams().stream()
            .map(beam ->
                map(
                    "name", beam.device().name(),
                    "floor", beam.floor(),
                    "endsMetres", points(List.of(beam.from(), beam.to())),
                    "clear", beam.isClear()))
            .toList());
    json.put("notAssessed", missing(coverage.map().notAssessed()));
    return text(json);
  }

  private static List<Object> outlines(DetectorView view) {
    return view.seen().outlines(CoverageMap.ARC_ERROR_METRES).stream()
        .<Object>map(Json::points)
        .toList();
  }

  /** Where detectors and keypads could go. */
  public static String suggestion(SiteSuggestion suggested) {
    Suggestion detectors = suggested.detectors();
    Map<String, Object> json = head(suggested.site());
    json.put("share", detectors.wish().share());
    json.put("seenBy", detectors.wish().times());
    json.put("atLeast", detectors.atLeast());
    json.put("gap", detectors.gap());
    json.put("kept", detectors.kept());
    json.put(
        "detectors",
        detectors.placements().stream()
            .map(placement -> {
              Map<String, Object> each =
                  map(
                      "name", placement.device().name(),
                      "type", placement.candidate().type().name(),
                      "floor", placement.candidate().floor(),
                      "room", placement.candidate().room(),
                      "atMetres", points(List.of(placement.candidate().at())).getFirst(),
                      "mount", placement.candidate().mount().words(),
                      "seenSquareMetres", placement.squareMetres(),
                      "reason", placement.reason());
              placement
                  .candidate()
                  .bearingDegrees()
                  .ifPresent(degrees -> each.put("bearingDegrees", degrees));
              return each;
            })
            .toList());
    json.put("planLines", suggested.planLines());
    json.put(
        "rooms",
        detectors.rooms().stream()
            .map(room ->
                map(
                    "room", room.room(),
                    "before", room.before(),
                    "after", room.after(),
                    "most", room.most(),
                    "places", room.candidates()))
            .toList());
    json.put(
        "keypads",
        suggested.keypads().places().stream()
            .map(place -> {
              Map<String, Object> each =
                  map(
                      "partition",
                      place.partition(),
                      "floor",
                      place.floor(),
                      "room",
                      place.room(),
                      "atMetres",
                      points(List.of(place.at())).getFirst(),
                      "doors",
                      place.seconds().entrySet().stream()
                          .map(door -> map("door", door.getKey(), "seconds", door.getValue()))
                          .toList());
              place.nowSeconds().ifPresent(now -> each.put("nowSeconds", now));
              return each;
            })
            .toList());
    json.put("noKeypadPlace", suggested.keypads().none());
    json.put("notAssessed", missing(detectors.notAssessed()));
    return text(json);
  }

  /** Walks. */
  public static String walks(TimedWalks timed) {
    Map<String, Object> json = head(timed.site());
    json.put("walks", timed.walks().walks().stream().map(Json::walk).toList());
    json.put("blocked", timed.walks().blocked());
    json.put("notAssessed", missing(timed.walks().notAssessed()));
    return text(json);
  }

  private static Map<String, Object> walk(SiteWalk walk) {
    WalkingRoute route = walk.time().route();
    Map<String, Object> json =
        map(
            "kind", walk.kind().word(),
            "title", walk.title(),
            "from", walk.from(),
            "to", walk.to(),
            "levelMetres", route.levelMetres(),
            "stairMetres", route.stairMetres(),
            "rooms", route.rooms(),
            "openings", route.crossings().stream().map(each -> each.passage().name()).toList(),
            "pace", walk.time().pace().word(),
            "doorSeconds", walk.time().doorSeconds(),
            "keypadSeconds", walk.time().keypadSeconds(),
            "seconds",
                map(
                    "of50", walk.time().seconds(Gait.Share.HALF),
                    "of85", walk.time().seconds(Gait.Share.MOST),
                    "of95", walk.time().seconds(Gait.Share.NEARLY_ALL)),
            "seenBy", walk.seenBy().stream().map(Json::sighting).toList(),
            "parts",
                route.legs().stream()
                    .map(leg ->
                        switch (leg) {
                          case WalkingRoute.Leg.Level level ->
                              map("floor", level.floor(), "pointsMetres", points(level.points()));
                          case WalkingRoute.Leg.Flight flight ->
                              map("stair", flight.stair().name(), "runMetres", flight.metres());
                        })
                    .toList());
    walk.delay().ifPresent(delay -> json.put("delaySeconds", delay.value() / 1000.0));
    return json;
  }

  private static Map<String, Object> sighting(Sightings.Sighting sighting) {
    Map<String, Object> json = map("zone", sighting.zone().number(), "how", sighting.how());
    sighting.metres().ifPresent(metres -> json.put("metres", metres));
    return json;
  }

  private static Map<String, Object> gap(Gap gap) {
    return map(
        "squareMetres", gap.squareMetres(),
        "reaches", gap.reaches(),
        "ringsMetres", gap.rings().stream().map(Json::points).toList());
  }

  private static List<List<Double>> points(List<Point> points) {
    return points.stream().map(point -> List.of(point.xMetres(), point.yMetres())).toList();
  }

  /** Order or entry sheet. */
  public static String keyIn(SiteFile site, KeyIn keyIn) {
    Map<String, Object> json = head(site);
    json.putAll(keyInMap(keyIn));
    return text(json);
  }

  /** Timelines. */
  public static String rehearsal(SiteFile site, SiteRehearsal rehearsal) {
    Map<String, Object> json = head(site);
    json.putAll(rehearsalMap(rehearsal));
    return text(json);
  }

  /** Test plan. */
  public static String testPlan(SiteFile site, TestPlan plan) {
    Map<String, Object> json = head(site);
    json.putAll(testPlanMap(plan));
    return text(json);
  }

  /** A whole job. */
  public static String job(SiteJob job) {
    Map<String, Object> json = head(job.site());
    json.put("asOf", job.asOf().toString());
    json.put("check", checkMap(job.site(), job.check()));
    json.put("power", powerMap(job.site(), job.power(), job.outages()));
    json.put("keyIn", keyInMap(job.keyIn()));
    json.put("rehearsal", rehearsalMap(job.rehearsal()));
    json.put("testPlan", testPlanMap(job.testPlan()));
    return text(json);
  }

  /** Rules. */
  public static String rules(List<RuleCard> cards) {
    return text(
        cards.stream()
            .map(card ->
                map(
                    "code", card.code(),
                    "fault", card.fault(),
                    "severity", card.severity().word(),
                    "purpose", card.purpose(),
                    "remedy", card.remedy()))
            .toList());
  }

  /** Any value, such as a list of maps. */
  public static String text(Object value) {
    return MAPPER.writeValueAsString(value) + "\n";
  }

  private static Map<String, Object> head(SiteFile site) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("site", site.plan().site().name());
    json.put("file", site.path().toString());
    json.put("planSha256", site.sha256());
    return json;
  }

  private static Map<String, Object> checkMap(SiteFile site, CheckResult result) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(
        "findings", result.findings().stream().map(finding -> finding(site, finding)).toList());
    json.put(
        "notAssessed",
        result.notAssessed().stream()
            .map(open ->
                map(
                    "code", open.code(),
                    "place", site.place(open.place()),
                    "why", open.why(),
                    "lineToAdd", open.lineToAdd()))
            .toList());
    json.put("passed", result.passed().stream().map(outcome -> outcome.code()).toList());
    return json;
  }

  private static Map<String, Object> finding(SiteFile site, Finding finding) {
    return map(
        "code", finding.code(),
        "severity", finding.severity().word(),
        "place", site.place(finding.place()),
        "path", finding.place().pointer(),
        "what", finding.what(),
        "remedy", finding.remedy());
  }

  private static Map<String, Object> powerMap(
      SiteFile site, PowerAssessment power, Outages outages) {
    OwnCells cells = OwnCells.of(site.plan());
    Map<String, Object> json =
        map(
            "supplies", power.supplies().stream().map(Json::budget).toList(),
            "cableRuns",
                power.cableRuns().stream()
                    .map(run ->
                        map(
                            "device", run.device().name(),
                            "cables", run.cables(),
                            "volts", run.volts().value()))
                    .toList(),
            "outages", outages.outages().stream().map(Json::outage).toList(),
            "cells",
                cells.cells().stream()
                    .map(cell ->
                        map(
                            "device", cell.device(),
                            "fitted", cell.fitted().toString(),
                            "life", cell.life().written(),
                            "due", cell.due().toString()))
                    .toList(),
            "notAssessed",
                missing(
                    Stream.of(power.notAssessed(), outages.notAssessed(), cells.notAssessed())
                        .flatMap(List::stream)
                        .toList()));
    cells.nextVisit().ifPresent(day -> json.put("nextVisit", day.toString()));
    return json;
  }

  private static Map<String, Object> outage(Outage outage) {
    Map<String, Object> json =
        map(
            "supply", outage.supply(),
            "available", explained(outage.available()),
            "cutOff", explained(outage.cutOff()),
            "events",
                outage.events().stream()
                    .map(event -> {
                      Map<String, Object> each =
                          map(
                              "kind", event.kind().word(),
                              "when", event.when(),
                              "line", explained(event.line()));
                      event.device().ifPresent(device -> each.put("device", device));
                      return each;
                    })
                    .toList(),
            "hourly",
                outage.hourly().stream()
                    .map(row ->
                        map(
                            "hours", row.hours(),
                            "share", row.share(),
                            "volts", row.volts(),
                            "ampereHours", row.ampereHours()))
                    .toList());
    outage.duty().ifPresent(duty -> json.put("wantedHours", outage.wantedHours()));
    return json;
  }

  private static Map<String, Object> budget(PowerBudget budget) {
    Map<String, Object> json =
        map(
            "supply", budget.supply().name(),
            "lines", budget.lines().stream().map(Json::explained).toList(),
            "nextSize", budget.choice().map(choice -> choice.words()).orElse(""),
            "notAssessed", missing(budget.notAssessed()));
    budget
        .recharge()
        .ifPresent(recharge ->
            json.put(
                "recharge",
                recharge.curve().stream()
                    .map(point -> map("hours", point.hours(), "share", point.share()))
                    .toList()));
    return json;
  }

  private static Map<String, Object> explained(Explained line) {
    return map(
        "name", line.name(),
        "working", line.working(),
        "value", line.value(),
        "unit", line.unit(),
        "certainty", line.certainty().words().strip(),
        "source", line.source());
  }

  private static List<Map<String, Object>> missing(List<MissingFact> facts) {
    return facts.stream()
        .map(open -> map("why", open.why(), "lineToAdd", open.lineToAdd()))
        .toList();
  }

  private static Map<String, Object> keyInMap(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered ->
          map(
              "kind", "order",
              "panel", ordered.order().panel(),
              "keypad", ordered.keypad(),
              "proved", ordered.proof().proved(),
              "hash", ordered.hash(),
              "keys", ordered.order().effort().keys(),
              "cannotExpress",
                  ordered.planned().cannotExpress().stream()
                      .map(open -> map("path", open.place().pointer(), "what", open.what()))
                      .toList(),
              "groups", OrderSheet.of(ordered.order()).parts().stream().map(Json::part).toList());
      case KeyIn.Refused refused ->
          map(
              "kind",
              "refused",
              "reasons",
              refused.reasons().stream()
                  .map(reason -> map("what", reason.what(), "remedy", reason.remedy()))
                  .toList());
      case KeyIn.ByHand byHand ->
          map(
              "kind", "entrySheet",
              "proved", false,
              "why", byHand.why(),
              "remedy", byHand.remedy(),
              "parts", byHand.sheet().parts());
    };
  }

  private static Map<String, Object> part(OrderSheet.Part part) {
    return map(
        "title",
        part.title(),
        "canStopAfter",
        part.stop().isPresent(),
        "leave",
        part.stop().map(stop -> words(stop.leave())).orElse(List.of()),
        "comeBack",
        part.stop().map(stop -> words(stop.comeBack())).orElse(List.of()),
        "steps",
        part.lines());
  }

  private static List<String> words(List<OrderSheet.Line> lines) {
    return lines.stream().map(OrderSheet.Line::words).toList();
  }

  private static Map<String, Object> rehearsalMap(SiteRehearsal rehearsal) {
    return map(
        "scenarios",
        rehearsal.scenarios().stream()
            .map(scenario ->
                map(
                    "name", scenario.name(),
                    "reason", scenario.reason(),
                    "rows",
                        scenario.result().timeline().rows().stream()
                            .map(row ->
                                map(
                                    "clock", row.clock(),
                                    "tenths", row.atTenths(),
                                    "kind", row.kind().word(),
                                    "what", row.what(),
                                    "because", row.reason()))
                            .toList(),
                    "unmet",
                        scenario.result().unmet().stream()
                            .map(unmet ->
                                map(
                                    "line", unmet.line(),
                                    "expected", unmet.expected(),
                                    "found", unmet.found()))
                            .toList()))
            .toList());
  }

  private static Map<String, Object> testPlanMap(TestPlan plan) {
    return map(
        "steps", plan.steps().stream().map(Json::step).toList(),
        "notAssessed", missing(plan.notAssessed()));
  }

  private static Map<String, Object> step(TestStep step) {
    return map(
        "number", step.number(),
        "phase", step.phase().words(),
        "subject", step.subject().label(),
        "room", step.place().map(place -> place.room()).orElse(""),
        "precondition", step.precondition(),
        "action", step.action(),
        "keypadShows", step.keypadShows(),
        "signals", step.signals().stream().map(ExpectedSignal::text).toList(),
        "cautions", step.cautions().stream().map(caution -> caution.text()).toList());
  }

  private static Map<String, Object> map(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int index = 0; index < keysAndValues.length; index += 2) {
      map.put((String) keysAndValues[index], keysAndValues[index + 1]);
    }
    return map;
  }
}
