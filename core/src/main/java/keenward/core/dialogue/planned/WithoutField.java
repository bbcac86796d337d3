package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.plan.PlanPath;

/** Facts that the plan states and for which the panel has no field at all. */
final class WithoutField {
  /** Facts that no panel needs to be told. */
  private static final Set<String> OF_NO_CONCERN =
      Set.of("zone.device.kind", "zone.in use", "partition.in use", "user.in use", "keypad.name");

  private final PanelDescription description;
  private final PlanAnswers answers;
  private final List<CannotExpress> cannotExpress;

  WithoutField(
      PanelDescription description, PlanAnswers answers, List<CannotExpress> cannotExpress) {
    this.description = description;
    this.answers = answers;
    this.cannotExpress = cannotExpress;
  }

  void check() {
    Set<String> taken = new HashSet<>();
    for (Field field : description.fields()) {
      field.from().ifPresent(source -> taken.addAll(source.facts()));
    }
    for (PlanFact fact : PlanFacts.ALL) {
      if (!taken.contains(fact.path()) && !OF_NO_CONCERN.contains(fact.path())) {
        check(fact);
      }
    }
  }

  private void check(PlanFact fact) {
    List<String> numbers = new ArrayList<>();
    PlanPath first = PlanPath.of();
    for (int record : records(fact)) {
      Optional<PlanAnswer> answer = answers.answer(fact, record).find();
      if (answer.isPresent() && says(answer.get())) {
        if (numbers.isEmpty()) {
          first = answer.get().place();
        }
        numbers.add(Integer.toString(record));
      }
    }
    if (!numbers.isEmpty()) {
      String where =
          fact.records()
              .map(kind -> " (" + kind.word() + " " + String.join(", ", numbers) + ")")
              .orElse("");
      cannotExpress.add(
          new CannotExpress(
              first,
              "the panel has no setting for " + fact.path() + where,
              CannotExpress.NO_SETTING,
              "check that the panel does it without a setting, or choose another panel"));
    }
  }

  private List<Integer> records(PlanFact fact) {
    return fact.records()
        .map(kind -> List.copyOf(answers.records(kind).keySet()))
        .orElse(List.of(0));
  }

  /** Whether an answer asks for anything: not "no", not "none", not an empty list, not zero. */
  private static boolean says(PlanAnswer answer) {
    return switch (answer.content()) {
      case Content.Word word -> !word.word().equals("no") && !word.word().equals("none");
      case Content.Words words -> !words.words().isEmpty();
      case Content.Count number -> number.number() != 0;
      case Content.Time time -> time.milliseconds() != 0;
      default -> true;
    };
  }
}
