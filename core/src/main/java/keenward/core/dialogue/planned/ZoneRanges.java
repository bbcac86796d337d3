package keenward.core.dialogue.planned;

import java.util.List;
import java.util.Map;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.plan.PlanPath;

/** Zones whose number lies outside the range that the panel keeps for their kind of connection. */
final class ZoneRanges {
  private final PanelDescription description;
  private final PlanAnswers answers;
  private final List<CannotExpress> cannotExpress;

  ZoneRanges(PanelDescription description, PlanAnswers answers, List<CannotExpress> cannotExpress) {
    this.description = description;
    this.answers = answers;
    this.cannotExpress = cannotExpress;
  }

  void check() {
    Map<String, Capacity.NumberRange> ranges = description.capacity().zones();
    if (ranges.isEmpty()) {
      return;
    }
    PlanFact wiring = PlanFacts.find("zone.wiring").orElseThrow();
    for (int number : answers.records(PlanRecords.ZONES).keySet()) {
      PlanAnswer answer = answers.answer(wiring, number).orNull();
      if (answer != null && answer.content() instanceof Content.Word word) {
        check(number, word.word(), answer.place(), ranges);
      }
    }
  }

  private void check(
      int number, String wiring, PlanPath place, Map<String, Capacity.NumberRange> ranges) {
    Capacity.NumberRange range = ranges.get(wiring);
    if (range == null) {
      cannotExpress.add(
          new CannotExpress(
              place,
              "the panel has no " + wiring + " zones",
              String.join(", ", ranges.keySet()),
              "choose another device, or another panel"));
    } else if (!range.contains(number)) {
      cannotExpress.add(
          new CannotExpress(
              place,
              "zone " + number + " is " + wiring,
              wiring + " zones " + range.first() + " to " + range.last(),
              "give it another number, or choose another panel"));
    }
  }
}
