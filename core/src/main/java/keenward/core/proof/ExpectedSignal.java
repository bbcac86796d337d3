package keenward.core.proof;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.reporting.EventReport;
import keenward.core.reporting.Qualifier;

/**
 * A signal that the monitoring centre must receive.
 *
 * @param account account digits; empty when the plan does not tell
 * @param qualifier begins or restores
 * @param code DC-05 event code
 * @param otherCodes codes that tell the same and are accepted in its place, since panels differ
 * @param partition partition number, 0 for the system as a whole
 * @param zoneOrUser zone or user number, 0 for none; empty when the panel numbers it and the plan
 *     does not tell
 * @param when when it comes, in words; empty for at once
 */
public record ExpectedSignal(
    Optional<String> account,
    Qualifier qualifier,
    int code,
    List<Integer> otherCodes,
    int partition,
    OptionalInt zoneOrUser,
    String when) {

  /** Copies the list. */
  public ExpectedSignal {
    otherCodes = List.copyOf(otherCodes);
  }

  /**
   * As DC-05 writes it, such as {@code 1131 01 015}; a number that the plan does not tell shows as
   * dots, one that has no room in the message as dashes.
   */
  public String text() {
    String text = report().text();
    String numberless = text.substring(0, text.length() - 3);
    if (zoneOrUser.isEmpty()) {
      return numberless + "...";
    }
    return hasRoom() ? text : numberless + "---";
  }

  private boolean hasRoom() {
    return zoneOrUser.orElse(0) <= EventReport.MOST_ZONE_OR_USER;
  }

  private EventReport report() {
    return new EventReport(qualifier, code, partition, hasRoom() ? zoneOrUser.orElse(0) : 0);
  }

  /** In words. */
  public String words() {
    return words(report().description());
  }

  /** In words, without the partition and the number that {@link #text} shows already. */
  public String event() {
    return words(report().event());
  }

  private String words(String event) {
    StringBuilder words = new StringBuilder(event);
    if (!hasRoom()) {
      words.append(", number ").append(zoneOrUser.orElse(0)).append(" has no room in the message");
    }
    if (!otherCodes.isEmpty()) {
      words
          .append(" (or code ")
          .append(
              String.join(
                  " or ", otherCodes.stream().map(other -> Integer.toString(other)).toList()))
          .append(')');
    }
    return when.isEmpty() ? words.toString() : words + ", " + when;
  }

  /** Whether a received report is this signal. */
  public boolean isMetBy(EventReport report) {
    return report.qualifier() == qualifier
        && (report.code() == code || otherCodes.contains(report.code()))
        && report.partition() == partition
        && (zoneOrUser.isEmpty() || report.zoneOrUser() == zoneOrUser.getAsInt());
  }
}
