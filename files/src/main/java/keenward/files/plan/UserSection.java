package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.Partition;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** Users. */
final class UserSection {

  static final Field<String> NAME =
      required("name", Shapes.text(60), "Ines", "Name at the keypad and on paper.");
  static final Field<UserRole> ROLE =
      required("role", Shapes.word(UserRole.class), "master", "What they may do.");
  static final Field<List<String>> PARTITIONS =
      optional(
              "partitions",
              Shapes.list(Common.partition()).of(1, 99).withoutRepetition(),
              "[Shop, Flat]",
              "Partitions that they may use.")
          .usual("all");
  static final Field<Fact<String>> PERSON =
      optional(
          "person", Common.person().orUnknown(), "Ines", "Person of the plan, when they are one.");
  static final Field<Fact<Boolean>> MAY_BYPASS =
      optional("may bypass", Common.yesNo(), "no", "Whether they may leave zones out.");

  static final MapShape SHAPE =
      MapShape.of(
              "user",
              "Somebody who holds a code, under the number at the panel, from 1. Codes never stand in a plan.",
              NAME,
              ROLE,
              PARTITIONS,
              PERSON,
              MAY_BYPASS)
          .example(
              """
              users:
                1: { name: Ines, role: master, person: Ines, may bypass: yes }
                2: { name: Cleaner, role: user, partitions: [Shop], may bypass: no }
              people: { Ines: { pace: usual } }
              partitions: { Shop: { number: 1 } }
              """);

  private UserSection() {}

  static User bind(int number, Fields fields, List<Partition> partitions) {
    return new User(
        number,
        fields.get(NAME),
        fields.get(ROLE),
        fields.find(PARTITIONS).orElseGet(() -> partitions.stream().map(Partition::name).toList()),
        fields.fact(PERSON),
        fields.fact(MAY_BYPASS));
  }
}
