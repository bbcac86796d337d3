package keenward.files.zonelist;

import java.util.Map;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;

/**
 * What a person says of a list, beside what it says itself.
 *
 * @param headRow number of the row that holds the heads of the columns; empty to find it
 * @param columns what columns hold, by head or by letter
 * @param responses words of the list for what zones do
 * @param devices words of the list for what is fitted
 */
public record ListMap(
    Optional<Integer> headRow,
    Map<String, Column> columns,
    Map<String, ZoneResponse> responses,
    Map<String, DeviceKind> devices) {

  /** Nothing is said. */
  public static final ListMap NONE = new ListMap(Optional.empty(), Map.of(), Map.of(), Map.of());
}
