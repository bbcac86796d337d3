package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Span;

/**
 * The account at the monitoring centre.
 *
 * @param centre name of the monitoring centre
 * @param phone its telephone number, for putting the site on test
 * @param account account digits as text, leading zeros kept
 * @param format event vocabulary
 * @param paths ways to the centre, first choice first
 * @param polling interval at which the path is polled
 * @param testInterval interval of the test signal
 * @param openingsAndClosings whether openings and closings are reported
 * @param response what the centre does on an alarm
 * @param permit alarm permit reference
 * @param keyholders names of people, in the order they are called
 */
public record Monitoring(
    Fact<String> centre,
    Fact<String> phone,
    Fact<String> account,
    Fact<SignalFormat> format,
    List<SignalPath> paths,
    Fact<Span> polling,
    Fact<Span> testInterval,
    Fact<Boolean> openingsAndClosings,
    Fact<String> response,
    Fact<String> permit,
    List<String> keyholders) {

  public Monitoring {
    paths = List.copyOf(paths);
    keyholders = List.copyOf(keyholders);
  }
}
