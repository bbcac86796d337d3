package keenward.files.plan;

import static keenward.files.shape.Field.optional;

import java.util.List;
import keenward.core.plan.Partition;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** Partitions. */
final class PartitionSection {

  static final Field<Integer> NUMBER =
      optional("number", Shapes.wholeNumber(1, 99), "1", "Number at the panel and in signals.")
          .usual("its position in this list, from 1");
  static final Field<List<String>> KEYPADS =
      optional(
              "keypads",
              Shapes.list(Common.device()).withoutRepetition(),
              "[Yard keypad]",
              "Keypads that serve it.")
          .usual("all");
  static final Field<List<String>> COMMON_TO =
      optional(
              "common to",
              Shapes.list(Common.partition()).of(1, 99).withoutRepetition(),
              "[Shop, Flat]",
              "Makes it a common area: armed once all of these are, disarmed with the first of them.")
          .usual("no common area");

  static final MapShape SHAPE =
      MapShape.of(
              "partition",
              "A part of the system that is armed and disarmed on its own. Without this section there is one partition.",
              NUMBER,
              KEYPADS,
              COMMON_TO)
          .example(
              """
              partitions:
                Shop: { number: 1, keypads: [Yard keypad] }
                Flat: { number: 2 }
                Hall: { number: 3, common to: [Shop, Flat] }
              devices:
                Yard keypad: { kind: keypad }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop }
              """);

  private PartitionSection() {}

  /** The number of a partition, stated or by its position from 1. */
  static int number(Fields fields, int position) {
    return fields.find(NUMBER).orElse(position);
  }

  static Partition bind(String name, Fields fields, int position) {
    return new Partition(
        name, number(fields, position), fields.list(KEYPADS), fields.list(COMMON_TO));
  }
}
