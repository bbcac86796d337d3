package keenward.files.plan;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import keenward.core.plan.PanelSettings;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.shape.NameList;
import keenward.files.shape.NearestWord;
import keenward.files.yaml.Span;

/** Facts of a zone that do not go together, with each other or with the rest of the plan. */
final class ZoneFaults {

  private final PlanDraft draft;

  private ZoneFaults(PlanDraft draft) {
    this.draft = draft;
  }

  static void check(PlanDraft draft) {
    ZoneFaults faults = new ZoneFaults(draft);
    draft.section(SitePlanShape.ZONES).forEach(faults::zone);
  }

  private void zone(int number, Fields fields) {
    if (fields.mentions(ZoneSection.DEVICE) && fields.mentions(ZoneSection.DEVICES)) {
      draft.fault(
          fields.place(ZoneSection.DEVICES),
          "zone " + number + " has device and devices",
          "one of the two",
          "list all of them under devices");
    }
    partition(number, fields);
    entryDelay(fields);
    if (fields.list(ZoneSection.FOLLOWS).contains(number)) {
      draft.fault(
          fields.place(ZoneSection.FOLLOWS),
          "zone " + number + " follows itself",
          "the numbers of entry zones",
          "remove it from the list");
    }
    Span place =
        fields.place(
            fields.mentions(ZoneSection.DEVICE) ? ZoneSection.DEVICE : ZoneSection.DEVICES);
    ZoneSection.watched(fields).forEach(watched -> input(watched, place));
  }

  private void partition(int number, Fields fields) {
    Map<String, Fields> partitions = draft.section(SitePlanShape.PARTITIONS);
    if (partitions.size() > 1 && !fields.mentions(ZoneSection.PARTITION)) {
      draft.fault(
          draft.key("zones", Integer.toString(number)),
          "zone " + number + " has no partition, and the plan has several",
          "one of " + NameList.of(partitions.keySet()),
          "add the partition");
    }
  }

  private void entryDelay(Fields fields) {
    Map<Integer, ?> delays =
        draft.root().find(SitePlanShape.PANEL).map(PanelSettings::entryDelays).orElseGet(Map::of);
    fields
        .fact(ZoneSection.ENTRY_DELAY)
        .find()
        .filter(delay -> !delays.isEmpty() && !delays.containsKey(delay))
        .ifPresent(delay ->
            draft.fault(
                fields.place(ZoneSection.ENTRY_DELAY),
                "there is no entry delay " + delay,
                "one of "
                    + delays.keySet().stream()
                        .map(String::valueOf)
                        .collect(Collectors.joining(", ")),
                "add it to the panel's entry delays"));
  }

  private void input(ZoneSection.Watched watched, Span place) {
    Fields device = draft.section(SitePlanShape.DEVICES).get(watched.device());
    String input = watched.input().orNull();
    if (device == null || input == null || isInputsBroken(device)) {
      return;
    }
    List<String> inputs = draft.inputsOf(device);
    if (!inputs.contains(input)) {
      draft.fault(
          place,
          "the device " + QuotedText.of(watched.device()) + " has no input " + QuotedText.of(input),
          inputs.isEmpty()
              ? "no input, since it names none"
              : "one of " + String.join(", ", inputs),
          inputs.isEmpty()
              ? "add inputs to the device or its type"
              : NearestWord.question(input, inputs));
    }
  }

  private boolean isInputsBroken(Fields device) {
    if (device.mentions(Traits.INPUTS)) {
      return device.find(Traits.INPUTS).isEmpty();
    }
    return device.mentions(DeviceSection.TYPE)
        && draft
            .typeOf(device)
            .map(type -> type.mentions(Traits.INPUTS) && type.find(Traits.INPUTS).isEmpty())
            .orElse(true);
  }
}
