package keenward.files.panel;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Manners;
import keenward.core.quantities.Span;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns ways of leaving and manners into values. */
final class LeavingBinder {
  private final Faults faults;

  LeavingBinder(Faults faults) {
    this.faults = faults;
  }

  Map<String, Leaving> leaving(Map<String, Fields> all) {
    Map<String, Leaving> leaving = new LinkedHashMap<>();
    all.forEach((name, fields) -> {
      if (fields.isComplete()) {
        leaving.put(name, way(name, fields));
      }
    });
    return leaving;
  }

  private Leaving way(String name, Fields fields) {
    String pointer = YamlPointer.of("leaving", name);
    Leaving.Saves saves = fields.get(PanelDescriptionShape.LEAVING_KEEPS);
    boolean locks = fields.find(PanelDescriptionShape.LOCKS).orElse(false);
    boolean safe = fields.get(PanelDescriptionShape.LEAVING_SAFE);
    if (safe && (locks || saves == Leaving.Saves.NOTHING)) {
      faults.add(
          pointer + "/safe",
          "a safe way that " + (locks ? "locks programming" : "keeps nothing"),
          "safe: no, or a way that keeps what was stored and locks nothing",
          "mend one of them");
    }
    return new Leaving(
        name,
        saves,
        fields.get(PanelDescriptionShape.GOES),
        tenths(pointer, fields, PanelDescriptionShape.LEAVING_RESTART),
        locks,
        safe);
  }

  /** The manners; empty where something that they need could not be read. */
  Optional<Manners> manners(Fields root) {
    Optional<Fields> idle = root.find(PanelDescriptionShape.IDLE_PART).filter(Fields::isComplete);
    Optional<Leaving> idleWay =
        idle.map(fields ->
            new Leaving(
                "idle",
                fields.get(PanelDescriptionShape.IDLE_KEEPS),
                fields.get(PanelDescriptionShape.GOES),
                0,
                fields.find(PanelDescriptionShape.LOCKS).orElse(false),
                false));
    int idleTenths =
        idle.map(fields -> tenths("/idle", fields, PanelDescriptionShape.IDLE_AFTER)).orElse(0);
    if (idle.isPresent() && idleTenths == 0) {
      faults.add("/idle/after", "drops out at once", "a time such as 75 s", "mend the time");
    }
    Optional<Fields> power = root.find(PanelDescriptionShape.POWER_PART);
    Leaving powerLost =
        new Leaving(
            "power lost",
            power
                .flatMap(fields -> fields.find(PanelDescriptionShape.POWER_KEEPS))
                .orElse(Leaving.Saves.NOTHING),
            root.find(PanelDescriptionShape.START).orElse(""),
            0,
            false,
            false);
    return root.find(PanelDescriptionShape.KEPT)
        .map(kept ->
            new Manners(
                kept,
                idleWay,
                idleTenths,
                powerLost,
                power
                    .map(fields -> tenths("/power", fields, PanelDescriptionShape.POWER_START))
                    .orElse(0),
                root.list(PanelDescriptionShape.WHILE_OPEN)));
  }

  private int tenths(String pointer, Fields fields, Field<Span> field) {
    return fields
        .find(field)
        .map(span -> Tenths.of(faults, YamlPointer.child(pointer, field.name()), span))
        .orElse(0);
  }
}
