package keenward.files.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.yaml.Span;

/** Partition numbers given twice, common areas of themselves, keypads that are none. */
final class PartitionFaults {

  private PartitionFaults() {}

  static void check(PlanDraft draft) {
    Map<Integer, Span> numbers = new HashMap<>();
    int position = 0;
    for (Map.Entry<String, Fields> entry : draft.section(SitePlanShape.PARTITIONS).entrySet()) {
      position++;
      String name = entry.getKey();
      Fields fields = entry.getValue();
      if (!fields.mentions(PartitionSection.NUMBER)
          || fields.find(PartitionSection.NUMBER).isPresent()) {
        number(draft, numbers, name, fields, position);
      }
      List<String> common = fields.list(PartitionSection.COMMON_TO);
      if (common.contains(name)) {
        draft.fault(
            fields.place(PartitionSection.COMMON_TO),
            QuotedText.of(name) + " is its own common area",
            "the partitions that share it",
            "remove it from the list");
      }
      List<String> keypads = fields.list(PartitionSection.KEYPADS);
      for (int i = 0; i < keypads.size(); i++) {
        draft.requireKeypad(
            keypads.get(i), draft.value("partitions", name, "keypads", Integer.toString(i)));
      }
    }
  }

  private static void number(
      PlanDraft draft, Map<Integer, Span> numbers, String name, Fields fields, int position) {
    int number = PartitionSection.number(fields, position);
    Span place = draft.key("partitions", name);
    Span first = numbers.putIfAbsent(number, place);
    if (first != null) {
      draft.fault(
          place,
          "the partition number " + number + " is taken (line " + first.line() + ")",
          "a number of its own",
          "write another number");
    }
  }
}
