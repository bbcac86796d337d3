package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.Reason;

/** What can be said without a search: fields that no keys of this keypad can set rightly. */
final class Beforehand {
  private final Task task;
  private final Estimate estimate;

  Beforehand(Task task, Estimate estimate) {
    this.task = task;
    this.estimate = estimate;
  }

  List<Reason> reasons(List<Scope.Unit> units) {
    List<Reason> reasons = new ArrayList<>();
    for (Scope.Unit unit : units) {
      for (Slot slot : unit.slots()) {
        if (!task.right(task.found, slot)) {
          reason(slot).ifPresent(reasons::add);
          alongWith(slot, reasons);
        }
      }
    }
    reasons.addAll(twice());
    return reasons;
  }

  private Optional<Reason> reason(Slot slot) {
    if (task.facts.given(slot.field()).contains(task.wanted.get(slot))) {
      return Optional.empty();
    }
    if (!estimate.entered(slot.field())) {
      return Optional.of(Reasons.notWritable(slot));
    }
    if (!estimate.enterable(slot)) {
      return Optional.of(Reasons.notOnThisKeypad(task, slot));
    }
    if (task.found.get(slot).known()) {
      return Optional.empty();
    }
    boolean shown = false;
    boolean needsNoLook = false;
    for (Estimate.Place place : estimate.places(slot.field())) {
      shown |= shows(place, slot);
      needsNoLook |= typesOver(place.entry());
    }
    if (shown || (needsNoLook && task.mayOverwriteUnseen(slot))) {
      return Optional.empty();
    }
    return Optional.of(needsNoLook ? Reasons.consentNeeded(slot) : Reasons.notShown(slot));
  }

  /**
   * Fields of unknown value that storing this one would reset, although the plan leaves them alone.
   */
  private void alongWith(Slot slot, List<Reason> reasons) {
    for (Effect effect : slot.field().onChange()) {
      FieldReference target =
          switch (effect) {
            case Effect.Set set -> set.field();
            case Effect.Reset reset -> reset.field();
            default -> new FieldReference.AtLocation();
          };
      if (target instanceof FieldReference.Named named
          && task.layout.contains(named.field(), slot.record())) {
        Slot other = task.layout.slot(named.field(), slot.record());
        if (!task.found.get(other).known()
            && !task.matters(other)
            && !task.meaningless(other)
            && !task.mayOverwriteUnseen(other)) {
          reasons.add(Reasons.resetUnseen(other, slot));
        }
      }
    }
  }

  private static boolean typesOver(Entry entry) {
    return switch (entry) {
      case Entry.Scroll scroll -> false;
      case Entry.ToggleByCode toggle -> false;
      case Entry.ToggleByCursor toggle -> false;
      default -> true;
    };
  }

  private boolean shows(Estimate.Place place, Slot slot) {
    if (slot.field().type() instanceof FieldType.Code) {
      return false;
    }
    Screen screen = task.description.screens().get(estimate.graph().name(place.screen()));
    if (screen == null) {
      return false;
    }
    List<Template> lines =
        screen
            .elsewhere()
            .getOrDefault(
                task.keypad.name(),
                task.keypad.shows() == KeypadKind.Shows.TEXT ? screen.lines() : List.of());
    for (Template line : lines) {
      for (Template.Part part : line.parts()) {
        if (shows(part, place.entry(), slot)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean shows(Template.Part part, Entry entry, Slot slot) {
    return switch (part) {
      case Template.TypedText typed -> typed.otherwise().filter(of -> means(of, slot)).isPresent();
      case Template.FieldText field -> means(field.field(), slot);
      case Template.UnderCursor cursor ->
          entry instanceof Entry.Scroll scroll && means(scroll.field(), slot);
      default -> false;
    };
  }

  private static boolean means(FieldReference reference, Slot slot) {
    return !(reference instanceof FieldReference.Named named)
        || named.field().equals(slot.field().name());
  }

  /**
   * The same input of the same transmitter planned for two records, where the panel has to hear it.
   */
  private List<Reason> twice() {
    List<Reason> reasons = new ArrayList<>();
    for (Screen screen : task.description.screens().values()) {
      if (screen.entry().isPresent()
          && screen.entry().get() instanceof Entry.Hear hear
          && hear.serial() instanceof FieldReference.Named serial) {
        reasons.addAll(twice(serial.field(), hear.part()));
      }
    }
    return reasons;
  }

  private List<Reason> twice(String serialField, Optional<FieldReference> part) {
    List<Reason> reasons = new ArrayList<>();
    Map<String, Slot> holders = new HashMap<>();
    for (Slot slot : task.layout.slots()) {
      if (!slot.field().name().equals(serialField)
          || !slot.field().byRecord()
          || !(task.wanted.get(slot) instanceof Value.Text serial)) {
        continue;
      }
      String input =
          part.isPresent() && part.get() instanceof FieldReference.Named named
              ? task.wanted.get(task.layout.slot(named.field(), slot.record())).toString()
              : "";
      Slot other = holders.putIfAbsent(serial.text() + " " + input, slot);
      if (other != null
          && estimate.onlyHeard(slot.field())
          && !(task.right(task.found, slot) && task.right(task.found, other))) {
        reasons.add(
            Reasons.transmitterKnown(
                slot, serial.text(), other.field().record() + " " + other.record()));
      }
    }
    return reasons;
  }
}
