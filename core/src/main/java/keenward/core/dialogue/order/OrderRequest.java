package keenward.core.dialogue.order;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;

/**
 * What an order is asked for.
 *
 * @param description the panel
 * @param found what it holds now; {@link Value#unknown()} where that is not known
 * @param planned what it shall hold, for just those fields that the plan speaks about
 * @param keypad kind of keypad that will be used
 * @param consents full names of fields that may be overwritten without having been seen
 */
public record OrderRequest(
    PanelDescription description,
    Memory found,
    Map<Slot, Value> planned,
    String keypad,
    Set<String> consents) {
  public OrderRequest {
    planned = Collections.unmodifiableMap(new LinkedHashMap<>(planned));
    consents = Set.copyOf(consents);
  }
}
