package keenward.usecases.order;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.Prepared;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.dialogue.prepare.Orders;
import keenward.core.dialogue.sheet.EntrySheet;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;
import keenward.usecases.panel.PanelInUse;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/** Makes the order of a site, or its entry sheet. */
public final class KeyInMaker {

  private KeyInMaker() {}

  /**
   * Makes the order, or the sheet when the panel has no description.
   *
   * @param found what the panel holds now
   * @param keypad kind of keypad in use; null takes the plan's, else the description's usual one
   * @param consents fields that may be overwritten unseen
   * @param version version of this program, which the proof hash covers
   * @throws BadInput when keypad or found memory do not fit the description
   */
  public static KeyIn make(
      SiteFile site,
      PanelInUse panel,
      FoundMemory found,
      @Nullable String keypad,
      Set<String> consents,
      String version,
      Progress progress)
      throws BadInput {
    return switch (panel) {
      case PanelInUse.Undescribed undescribed ->
          new KeyIn.ByHand(EntrySheet.of(site.plan()), undescribed.why(), undescribed.remedy());
      case PanelInUse.Described described -> {
        PanelDescription description = described.description();
        yield order(
            site.plan(),
            description,
            found,
            keypadKind(site.plan(), description, keypad),
            consents,
            version,
            progress);
      }
    };
  }

  private static KeyIn order(
      SitePlan plan,
      PanelDescription description,
      FoundMemory found,
      String keypad,
      Set<String> consents,
      String version,
      Progress progress)
      throws BadInput {
    MemoryLayout layout = new Interpreter(description).layout();
    Memory holds = found.memory(description, layout);
    PlannedMemory planned = PlannedMemory.from(plan, description);
    Map<Slot, Value> wanted = new LinkedHashMap<>();
    planned
        .wanted()
        .forEach((slot, value) -> {
          Value reached = value.over(holds.get(slot));
          if (reached.known()) {
            wanted.put(slot, reached);
          }
        });
    return switch (Orders.prepare(
        new OrderRequest(description, holds, wanted, keypad, consents), progress)) {
      case Prepared.Refused refused ->
          new KeyIn.Refused(description, keypad, refused.reasons(), planned);
      case Prepared.Ready ready ->
          new KeyIn.Ordered(
              description,
              keypad,
              found.words(),
              ready.order(),
              ready.proof(),
              InputBytes.sha256(
                  (version + "\n" + ready.canonical()).getBytes(StandardCharsets.UTF_8)),
              planned);
    };
  }

  private static String keypadKind(
      SitePlan plan, PanelDescription description, @Nullable String asked) throws BadInput {
    if (asked != null) {
      if (description.findKeypad(asked).isEmpty()) {
        throw new BadInput(
            "--keypad",
            description.panel() + " has no keypad kind '" + asked + "'",
            String.join(", ", description.keypads().stream().map(KeypadKind::name).toList()),
            "name one of those");
      }
      return asked;
    }
    return plan.devicesOf(DeviceKind.KEYPAD)
        .map(Device::keypadKind)
        .flatMap(kind -> kind.find().stream())
        .map(description::findKeypad)
        .flatMap(Optional::stream)
        .filter(kind -> kind.shows() == KeypadKind.Shows.TEXT)
        .findFirst()
        .orElse(description.keypads().getFirst())
        .name();
  }
}
