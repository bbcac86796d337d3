package keenward.core.dialogue.prepare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.SmallPanel;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.Prepared;
import keenward.core.progress.Progress;

/** Orders for the small panel of the interpreter's tests. */
final class SmallOrders {
  final PanelDescription description;
  final MemoryLayout layout;
  final Map<Slot, Value> planned = new LinkedHashMap<>();
  Memory found;
  String keypad = SmallPanel.TEXT;
  Set<String> consents = Set.of();

  SmallOrders() {
    this(SmallPanel.description());
  }

  SmallOrders(PanelDescription description) {
    this.description = description;
    this.layout = new MemoryLayout(description);
    this.found = layout.initial();
  }

  SmallOrders plan(String field, int record, Value value) {
    planned.put(layout.slot(field, record), value);
    return this;
  }

  SmallOrders find(String field, int record, Value value) {
    found = found.with(layout.slot(field, record), value);
    return this;
  }

  /** Two zones and two settings. */
  SmallOrders usual() {
    return plan("delay", 0, new Value.Whole(45))
        .plan("account", 0, new Value.Text("12A4"))
        .plan("zone.kind", 1, new Value.Word("radio"))
        .plan("zone.groups", 1, new Value.Members(6))
        .plan("zone.name", 1, new Value.Text("DAD3"))
        .plan("zone.unit", 1, new Value.Text("4711"))
        .plan("zone.part", 1, new Value.Word("clamp"))
        .plan("zone.kind", 2, new Value.Word("wired"))
        .plan("zone.name", 2, new Value.Text("BED"));
  }

  OrderRequest request() {
    return new OrderRequest(description, found, planned, keypad, consents);
  }

  Prepared prepare() {
    return Orders.prepare(request(), Progress.SILENT);
  }

  Prepared.Ready ready() {
    Prepared prepared = prepare();
    if (prepared instanceof Prepared.Refused refused) {
      throw new AssertionError(refused.reasons().toString());
    }
    return (Prepared.Ready) prepared;
  }

  Prepared.Refused refused() {
    Prepared prepared = prepare();
    if (prepared instanceof Prepared.Ready ready) {
      throw new AssertionError("an order of " + ready.order().shortness());
    }
    return (Prepared.Refused) prepared;
  }
}
