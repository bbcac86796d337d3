package keenward.files.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Capacity;
import keenward.core.quantities.Current;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;

/** Turns the capacity into values. */
final class CapacityBinder {
  private CapacityBinder() {}

  static Capacity bind(Optional<Fields> capacity) {
    Map<String, Capacity.NumberRange> zones = new LinkedHashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<Integer> batteries = new ArrayList<>();
    if (capacity.isEmpty()) {
      return new Capacity(
          zones, counts, OptionalInt.empty(), OptionalInt.empty(), batteries, OptionalInt.empty());
    }
    Fields fields = capacity.get();
    fields
        .find(PanelDescriptionShape.CAPACITY_ZONES)
        .ifPresent(ranges ->
            ranges.forEach((wiring, range) ->
                zones.put(wiring.word(), new Capacity.NumberRange(range.least(), range.most()))));
    for (Field<Integer> count :
        List.of(
            PanelDescriptionShape.CAPACITY_PARTITIONS,
            PanelDescriptionShape.CAPACITY_USERS,
            PanelDescriptionShape.CAPACITY_KEYPADS,
            PanelDescriptionShape.CAPACITY_OUTPUTS)) {
      fields.find(count).ifPresent(number -> counts.put(count.name(), number));
    }
    fields
        .list(PanelDescriptionShape.CAPACITY_BATTERIES)
        .forEach(battery -> batteries.add((int) Math.round(battery.ampereHours() * 1000)));
    return new Capacity(
        zones,
        counts,
        milliamps(fields.find(PanelDescriptionShape.CAPACITY_AUXILIARY)),
        milliamps(fields.find(PanelDescriptionShape.CAPACITY_CHARGE)),
        batteries,
        fields
            .find(PanelDescriptionShape.CAPACITY_LOOP)
            .map(ohms -> OptionalInt.of((int) Math.round(ohms.ohms())))
            .orElse(OptionalInt.empty()));
  }

  private static OptionalInt milliamps(Optional<Current> current) {
    return current
        .map(each -> OptionalInt.of((int) Math.round(each.milliamps())))
        .orElse(OptionalInt.empty());
  }
}
