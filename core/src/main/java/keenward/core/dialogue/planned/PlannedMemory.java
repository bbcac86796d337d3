package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.plan.SitePlan;

/**
 * What a site plan wants a panel to hold.
 *
 * @param wanted what each slot is to hold that the plan speaks of
 * @param cannotExpress what the plan states and the panel cannot hold
 * @param notes what to know about values that go in
 * @param notYetKnown what the plan calls unknown
 * @param untouched slots of records in the plan, and of the whole system, about which the plan says
 *     nothing; they are left as found
 */
public record PlannedMemory(
    Map<Slot, Wanted> wanted,
    List<CannotExpress> cannotExpress,
    List<PlanNote> notes,
    List<NotYetKnown> notYetKnown,
    List<Slot> untouched) {
  public PlannedMemory {
    wanted = Collections.unmodifiableMap(new LinkedHashMap<>(wanted));
    cannotExpress = List.copyOf(cannotExpress);
    notes = List.copyOf(notes);
    notYetKnown = List.copyOf(notYetKnown);
    untouched = List.copyOf(untouched);
  }

  /** Works out what {@code plan} wants of a panel of this description. */
  public static PlannedMemory from(SitePlan plan, PanelDescription description) {
    return new Planning(plan, description).plan();
  }

  /**
   * The memory to reach from {@code found}: what the plan wants, and everything else as found. A
   * slot is unknown here when it is to be left alone and is not known, or when only some of its
   * options are wanted and the others are not known ({@link #undecided}).
   */
  public Memory over(Memory found) {
    Memory memory = found;
    for (Map.Entry<Slot, Wanted> entry : wanted.entrySet()) {
      memory = memory.with(entry.getKey(), entry.getValue().over(found.get(entry.getKey())));
    }
    return memory;
  }

  /**
   * Slots that the plan speaks of, but whose value depends on options that are not known as found.
   */
  public List<Slot> undecided(Memory found) {
    List<Slot> undecided = new ArrayList<>();
    wanted.forEach((slot, value) -> {
      if (!value.over(found.get(slot)).known()) {
        undecided.add(slot);
      }
    });
    return List.copyOf(undecided);
  }
}
