package keenward.core.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import keenward.core.quantities.Resistance;
import keenward.core.quantities.Span;

/** Builds the panel section of a test's plan. */
public final class PanelBuilder {
  private Fact<String> room = Fact.missing();
  private Fact<String> supply = Fact.missing();
  private final Map<Integer, Span> entryDelays = new LinkedHashMap<>();
  private Fact<Span> exitTime = Fact.missing();
  private Fact<Span> sounderTime = Fact.missing();
  private Fact<Span> mainsFailureReport = Fact.missing();
  private Fact<Span> abortWindow = Fact.missing();
  private Fact<Integer> swingerLimit = Fact.missing();
  private Fact<Span> radioSupervision = Fact.missing();
  private final List<CrossZone> crossZones = new ArrayList<>();
  private final Map<LoopWiring, List<Resistance>> loopThresholds = new LinkedHashMap<>();

  public PanelBuilder room(String name) {
    room = Fact.of(name);
    return this;
  }

  public PanelBuilder supply(String name) {
    supply = Fact.of(name);
    return this;
  }

  public PanelBuilder entryDelay(int number, String span) {
    entryDelays.put(number, Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder exitTime(String span) {
    exitTime = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder sounderTime(String span) {
    sounderTime = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder mainsFailureReport(String span) {
    mainsFailureReport = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder abortWindow(String span) {
    abortWindow = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder swingerLimit(int limit) {
    swingerLimit = Fact.of(limit);
    return this;
  }

  public PanelBuilder radioSupervision(String span) {
    radioSupervision = Fact.of(Quantities.of(Span.parse(span)));
    return this;
  }

  public PanelBuilder crossZone(String window, Integer... zones) {
    crossZones.add(new CrossZone(List.of(zones), Fact.of(Quantities.of(Span.parse(window)))));
    return this;
  }

  public PanelBuilder loopThresholds(LoopWiring wiring, String... rising) {
    loopThresholds.put(
        wiring, Stream.of(rising).map(text -> Quantities.of(Resistance.parse(text))).toList());
    return this;
  }

  PanelSettings build() {
    return new PanelSettings(
        Fact.missing(),
        room,
        supply,
        entryDelays,
        exitTime,
        sounderTime,
        abortWindow,
        Fact.missing(),
        Fact.missing(),
        swingerLimit,
        Fact.missing(),
        Fact.missing(),
        mainsFailureReport,
        radioSupervision,
        Fact.missing(),
        crossZones,
        loopThresholds);
  }
}
