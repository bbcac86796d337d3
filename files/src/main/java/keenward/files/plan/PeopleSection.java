package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import java.util.Map;
import keenward.core.plan.Fact;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Pace;
import keenward.core.plan.Person;
import keenward.core.plan.TimeOfDay;
import keenward.core.plan.Weekday;
import keenward.core.quantities.Span;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** People and what they regularly do to the system. */
final class PeopleSection {

  private static final Shape<TimeOfDay> CLOCK =
      Shapes.pattern(
          "a time of day hh:mm, in quotes",
          "^([01][0-9]|2[0-3]):[0-5][0-9]$",
          text ->
              new TimeOfDay(
                  Integer.parseInt(text.substring(0, 2)) * 60
                      + Integer.parseInt(text.substring(3))));

  static final Field<HabitAction> DOES =
      required("does", Shapes.word(HabitAction.class), "disarm", "What the person does.");
  static final Field<List<Weekday>> DAYS =
      optional(
              "days",
              Shapes.list(Shapes.word(Weekday.class)).of(1, 7).withoutRepetition(),
              "[mon, tue, wed]",
              "On which days.")
          .usual("every day");
  static final Field<Fact<TimeOfDay>> AT =
      optional("at", CLOCK.orUnknown(), "\"04:10\"", "Time of day.");
  static final Field<Fact<String>> THROUGH =
      optional(
          "through",
          Common.opening().orUnknown(),
          "Yard door",
          "Opening by which they come or leave.");
  static final Field<Fact<String>> KEYPAD =
      optional("keypad", Common.device().orUnknown(), "Yard keypad", "Keypad that they use.");
  static final Field<Fact<Span>> KEYPAD_TIME =
      optional("keypad time", Common.span(), "8 s", "How long they stand at the keypad.");

  static final MapShape HABIT =
      MapShape.of(
          "habit",
          "Something that a person regularly does to the system.",
          DOES,
          DAYS,
          AT,
          THROUGH,
          KEYPAD,
          KEYPAD_TIME);

  static final Field<Fact<Pace>> PACE =
      optional("pace", Shapes.word(Pace.class).orUnknown(), "usual", "Walking pace.");
  static final Field<Fact<String>> PHONE =
      optional("phone", Common.name(), "01000 555 011", "Telephone number.");
  static final Field<Map<String, Fields>> HABITS =
      optional(
          "habits",
          Shapes.names(NameKey.name("a habit"), HABIT),
          "",
          "What the person regularly does, each under a name of your choice.");

  static final MapShape PERSON =
      MapShape.of(
              "person",
              "Somebody who lives, works or looks after things here.",
              PACE,
              PHONE,
              HABITS)
          .example(
              """
              people:
                Ines:
                  pace: usual
                  phone: 01000 555 011
                  habits:
                    opens early: { does: disarm, days: [mon, tue, wed], at: "04:10", through: Yard door, keypad: Yard keypad, keypad time: 8 s }
                    goes home: { does: arm away, at: "14:30", through: Yard door }
              floors:
                Ground:
                  rooms: { Yard room: { use: workshop } }
                  openings: { Yard door: { kind: door, between: [Yard room, outside] } }
              devices:
                Yard keypad: { kind: keypad, room: Yard room }
              """);

  private PeopleSection() {}

  static Person bind(String name, Fields fields) {
    return new Person(
        name,
        fields.fact(PACE),
        fields.fact(PHONE),
        fields.find(HABITS).orElse(Map.of()).entrySet().stream()
            .map(entry -> habit(entry.getKey(), entry.getValue()))
            .toList());
  }

  private static Habit habit(String name, Fields fields) {
    return new Habit(
        name,
        fields.get(DOES),
        fields.list(DAYS),
        fields.fact(AT),
        fields.fact(THROUGH),
        fields.fact(KEYPAD),
        fields.fact(KEYPAD_TIME));
  }
}
