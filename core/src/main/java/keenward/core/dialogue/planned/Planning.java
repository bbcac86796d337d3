package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;

/** Goes through a description's fields and asks the plan for each. */
final class Planning {
  private final PanelDescription description;
  private final MemoryLayout layout;
  private final PlanAnswers answers;
  private final Map<Slot, Wanted> wanted = new LinkedHashMap<>();
  private final Map<Slot, PlanPath> places = new LinkedHashMap<>();
  private final Map<Slot, String> texts = new HashMap<>();
  private final List<CannotExpress> cannotExpress = new ArrayList<>();
  private final List<PlanNote> notes = new ArrayList<>();
  private final List<NotYetKnown> notYetKnown = new ArrayList<>();
  private final List<Slot> untouched = new ArrayList<>();

  Planning(SitePlan plan, PanelDescription description) {
    this.description = description;
    this.layout = new MemoryLayout(description);
    this.answers = new PlanAnswers(plan);
  }

  PlannedMemory plan() {
    for (RecordKind kind : description.records()) {
      kind.from().ifPresent(records -> checkNumbers(kind, records));
    }
    for (Field field : description.fields()) {
      for (int record : recordsOf(field)) {
        ask(layout.slot(field.name(), record));
      }
    }
    dropWhatDoesNotApply();
    checkNames();
    new WithoutField(description, answers, cannotExpress).check();
    new ZoneRanges(description, answers, cannotExpress).check();
    return new PlannedMemory(wanted, cannotExpress, notes, notYetKnown, untouched);
  }

  private void checkNumbers(RecordKind kind, PlanRecords records) {
    answers
        .records(records)
        .forEach((number, place) -> {
          if (!kind.contains(number)) {
            cannotExpress.add(
                new CannotExpress(
                    place,
                    "the panel has no " + kind.name() + " " + number,
                    kind.name() + " " + kind.first() + " to " + kind.last(),
                    "give it another number, or choose a larger panel"));
          }
        });
  }

  /** The records of a field that the plan has; one for a field of the whole system. */
  private List<Integer> recordsOf(Field field) {
    if (!field.byRecord()) {
      return List.of(0);
    }
    RecordKind kind = description.findRecord(field.record()).orElseThrow();
    List<Integer> numbers = new ArrayList<>();
    kind.from()
        .ifPresent(records -> {
          for (int number : answers.records(records).keySet()) {
            if (kind.contains(number)) {
              numbers.add(number);
            }
          }
        });
    return numbers;
  }

  private void ask(Slot slot) {
    Optional<PlanSource> source = slot.field().from();
    if (source.isEmpty()) {
      untouched.add(slot);
      return;
    }
    switch (source.get()) {
      case PlanSource.OneFact one -> askOne(slot, one);
      case PlanSource.FactByOption options -> askOptions(slot, options);
    }
  }

  private void askOne(Slot slot, PlanSource.OneFact source) {
    PlanFact fact = PlanFacts.find(source.path()).orElseThrow();
    switch (answers.answer(fact, slot.record())) {
      case Fact.Given<PlanAnswer> given -> take(slot, source, given.value());
      case Fact.Unknown<PlanAnswer> unknown -> notYetKnown(slot, fact);
      case Fact.Missing<PlanAnswer> missing -> untouched.add(slot);
    }
  }

  private void take(Slot slot, PlanSource.OneFact source, PlanAnswer answer) {
    if (answer.content() instanceof Content.TooMuch tooMuch) {
      cannotExpress.add(
          new CannotExpress(
              answer.place(), tooMuch.what(), "one for " + slot.describe(), tooMuch.remedy()));
      return;
    }
    Conversion.Result result = new Conversion(slot.field(), source).convert(answer.content());
    if (result.value() == null) {
      cannotExpress.add(
          new CannotExpress(
              answer.place(),
              "the panel's " + slot.describe() + " cannot hold " + result.problem(),
              result.expected(),
              "change the plan, or choose another panel"));
      return;
    }
    wanted.put(slot, new Wanted.Exactly(result.value()));
    places.put(slot, answer.place());
    if (answer.content() instanceof Content.Text text) {
      texts.put(slot, text.text());
    }
    if (!result.note().isEmpty()) {
      notes.add(new PlanNote(slot, result.note()));
    }
    if (!answer.origin().isEmpty()) {
      notes.add(new PlanNote(slot, "not in the plan; asked for by " + answer.origin()));
    }
  }

  private void askOptions(Slot slot, PlanSource.FactByOption source) {
    if (!(slot.field().type() instanceof FieldType.OptionSet set)) {
      throw new IllegalArgumentException(slot.describe() + " is no set");
    }
    long mask = 0;
    long bits = 0;
    for (int index = 0; index < set.options().size(); index++) {
      String path = source.paths().get(set.options().get(index).word());
      if (path == null) {
        continue;
      }
      PlanFact fact = PlanFacts.find(path).orElseThrow();
      Fact<PlanAnswer> answer = answers.answer(fact, slot.record());
      if (answer instanceof Fact.Unknown<PlanAnswer>) {
        notYetKnown(slot, fact);
      }
      PlanAnswer given = answer.orNull();
      if (given != null && given.content() instanceof Content.Word word) {
        mask |= 1L << index;
        places.put(slot, given.place());
        if (word.word().equals("yes")) {
          bits |= 1L << index;
        }
      }
    }
    if (mask == 0) {
      untouched.add(slot);
    } else {
      wanted.put(slot, new Wanted.Options(mask, bits));
    }
  }

  private void notYetKnown(Slot slot, PlanFact fact) {
    String name = fact.path().substring(fact.path().lastIndexOf('.') + 1);
    notYetKnown.add(new NotYetKnown(slot, name + ": ..."));
  }

  /** Takes out what the panel has no place for in that record, given everything else. */
  private void dropWhatDoesNotApply() {
    Memory memory = layout.initial();
    for (Map.Entry<Slot, Wanted> entry : wanted.entrySet()) {
      memory = memory.with(entry.getKey(), entry.getValue().over(memory.get(entry.getKey())));
    }
    Memory planned = memory;
    wanted
        .entrySet()
        .removeIf(entry -> {
          Slot slot = entry.getKey();
          boolean applies =
              MemoryCondition.mayHold(slot.field().onlyWhen(), layout, planned, slot.record());
          if (!applies && !planned.get(slot).equals(slot.field().initial())) {
            cannotExpress.add(
                new CannotExpress(
                    places.getOrDefault(slot, PlanPath.of()),
                    "the panel has no place for " + slot.describe() + " beside its other settings",
                    "nothing here",
                    "take it out of the plan, or choose another panel"));
          }
          return !applies;
        });
  }

  /** Names that the plan tells apart and the panel would not, within one kind of record. */
  private void checkNames() {
    Map<String, Slot> seen = new LinkedHashMap<>();
    wanted.forEach((slot, value) -> {
      if (slot.field().type() instanceof FieldType.FreeText
          && slot.field().byRecord()
          && value instanceof Wanted.Exactly exactly
          && exactly.value() instanceof Value.Text text) {
        Slot other = seen.putIfAbsent(slot.field().name() + " " + text.text(), slot);
        if (other != null && !Objects.equals(texts.get(slot), texts.get(other))) {
          cannotExpress.add(
              new CannotExpress(
                  places.getOrDefault(slot, PlanPath.of()),
                  slot.describe()
                      + " would be '"
                      + text.text()
                      + "', as "
                      + other.describe()
                      + " is",
                  "names that differ within " + Expectation.of(slot.field().type()),
                  "choose names that differ earlier"));
        }
      }
    });
  }
}
