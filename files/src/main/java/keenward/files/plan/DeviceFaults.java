package keenward.files.plan;

import java.util.Map;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;

/** Devices without kind, or placed without a room; keypads that are none. */
final class DeviceFaults {

  private DeviceFaults() {}

  static void check(PlanDraft draft) {
    draft.section(SitePlanShape.DEVICES).forEach((name, fields) -> device(draft, name, fields));
    draft
        .section(SitePlanShape.PEOPLE)
        .values()
        .forEach(person ->
            person
                .find(PeopleSection.HABITS)
                .orElseGet(Map::of)
                .values()
                .forEach(habit -> habit(draft, habit)));
  }

  private static void device(PlanDraft draft, String name, Fields fields) {
    if (!fields.mentions(Traits.KIND)) {
      kindByType(draft, name, fields);
    }
    if (fields.fact(DeviceSection.AT).isGiven() && !fields.mentions(DeviceSection.ROOM)) {
      draft.fault(
          fields.place(DeviceSection.AT),
          "the device " + QuotedText.of(name) + " has a place but no room",
          "the room, whose floor the place is on",
          "add the room");
    }
    if (fields.fact(DeviceSection.KEYPAD).isGiven()) {
      draft
          .kindOf(name)
          .filter(kind -> kind != DeviceKind.KEYPAD)
          .ifPresent(kind ->
              draft.fault(
                  fields.place(DeviceSection.KEYPAD),
                  "a keypad kind for a " + kind.word(),
                  "a keypad kind at keypads only",
                  "remove it"));
    }
  }

  private static void kindByType(PlanDraft draft, String name, Fields fields) {
    if (!fields.mentions(DeviceSection.TYPE)) {
      draft.fault(
          draft.key("devices", name),
          "the device " + QuotedText.of(name) + " has neither kind nor type",
          "a kind or a type",
          "add for example kind: motion");
      return;
    }
    Optional<Fields> type = draft.typeOf(fields);
    if (type.isPresent() && !type.get().mentions(Traits.KIND)) {
      draft.fault(
          draft.key("devices", name),
          "neither the device " + QuotedText.of(name) + " nor its type has a kind",
          "a kind at one of them",
          "add for example kind: motion to the type");
    }
  }

  private static void habit(PlanDraft draft, Fields habit) {
    habit
        .fact(PeopleSection.KEYPAD)
        .find()
        .ifPresent(keypad -> draft.requireKeypad(keypad, habit.place(PeopleSection.KEYPAD)));
  }
}
