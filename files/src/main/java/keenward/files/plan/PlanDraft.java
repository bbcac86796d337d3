package keenward.files.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.ReadContext;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlPointer;

/** A plan as far as it could be read, for the checks that look at several facts at once. */
record PlanDraft(YamlDocument document, Fields root, ReadContext context) {

  /** The entries of a section; none when it is missing or broken. */
  <K> Map<K, Fields> section(Field<Map<K, Fields>> field) {
    return root.find(field).orElseGet(Map::of);
  }

  /** The place of the name at a path. */
  Span key(String... path) {
    return document.nearestPlace(YamlPointer.of(path));
  }

  /** The place of the value at a path. */
  Span value(String... path) {
    return document
        .find(YamlPointer.of(path))
        .map(YamlNode::span)
        .orElseGet(() -> document.nearestPlace(YamlPointer.of(path)));
  }

  void fault(Span place, String what, String expected, String remedy) {
    context.meaning(place, what, expected, remedy);
  }

  /** The kind of a device, by itself or by its type; empty when either is broken or missing. */
  Optional<DeviceKind> kindOf(String device) {
    return Optional.ofNullable(section(SitePlanShape.DEVICES).get(device))
        .flatMap(fields ->
            fields.mentions(Traits.KIND)
                ? fields.find(Traits.KIND)
                : typeOf(fields).flatMap(type -> type.find(Traits.KIND)));
  }

  /** The type of a device; empty when it has none, or one that is declared nowhere. */
  Optional<Fields> typeOf(Fields device) {
    return device
        .find(DeviceSection.TYPE)
        .flatMap(name -> Optional.ofNullable(section(SitePlanShape.TYPES).get(name)));
  }

  /** The input names of a device, its own or its type's. */
  List<String> inputsOf(Fields device) {
    List<String> own = device.list(Traits.INPUTS);
    return own.isEmpty()
        ? typeOf(device).map(type -> type.list(Traits.INPUTS)).orElseGet(List::of)
        : own;
  }

  /** Reports a name that stands for a device which is no keypad. */
  void requireKeypad(String device, Span place) {
    kindOf(device)
        .filter(kind -> kind != DeviceKind.KEYPAD)
        .ifPresent(kind ->
            fault(
                place,
                '"' + device + "\" is a " + kind.word(),
                "the name of a keypad",
                "name a device of the kind keypad"));
  }
}
