package keenward.core.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.quantities.Resistance;
import keenward.core.quantities.Span;

/**
 * The control panel and its system-wide settings. What is missing takes the default of the regime,
 * then of the panel description, then of the program; {@link Settings} resolves that and says where
 * each value came from.
 *
 * @param description name of the panel description, or a path to one
 * @param room name of the room the panel is in
 * @param supply name of the supply that feeds it
 * @param entryDelays entry delays by number, from 1
 * @param exitTime exit time
 * @param sounderTime how long sounders run
 * @param abortWindow how long a burglary signal is held back so that a disarming can stop it
 * @param cancelWindow how long after a sent alarm a disarming sends a cancel
 * @param recentClosingWindow an alarm this soon after arming is reported as recent closing
 * @param swingerLimit number of alarms of one zone in one arming period that are reported
 * @param exitRestart whether re-opening the exit door restarts the exit time, once
 * @param automaticStay whether arming away without leaving arms stay
 * @param mainsFailureReport how long mains may be absent before it is reported
 * @param radioSupervision how long a radio device may be silent
 * @param keypadLockOut when a keypad stops listening
 * @param crossZones cross-zone groups
 * @param loopThresholds by wiring, the resistances at which the panel reads another state, rising
 */
public record PanelSettings(
    Fact<String> description,
    Fact<String> room,
    Fact<String> supply,
    Map<Integer, Span> entryDelays,
    Fact<Span> exitTime,
    Fact<Span> sounderTime,
    Fact<Span> abortWindow,
    Fact<Span> cancelWindow,
    Fact<Span> recentClosingWindow,
    Fact<Integer> swingerLimit,
    Fact<Boolean> exitRestart,
    Fact<Boolean> automaticStay,
    Fact<Span> mainsFailureReport,
    Fact<Span> radioSupervision,
    Fact<KeypadLockOut> keypadLockOut,
    List<CrossZone> crossZones,
    Map<LoopWiring, List<Resistance>> loopThresholds) {

  public PanelSettings {
    entryDelays = Collections.unmodifiableMap(new LinkedHashMap<>(entryDelays));
    crossZones = List.copyOf(crossZones);
    loopThresholds = Map.copyOf(loopThresholds);
  }

  /** Settings about which nothing is stated. */
  public static PanelSettings none() {
    return new PanelSettings(
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Map.of(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        List.of(),
        Map.of());
  }
}
