package keenward.core.dialogue.prepare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Group;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.WorkOrder;

/**
 * Text that fixes everything that a proof depends on, one fact a line, always the same for the same
 * facts. Codes appear by reference only. Every text is preceded by its length, so that no two
 * different orders have the same text.
 */
final class Canonical {
  private final StringBuilder text = new StringBuilder();

  private Canonical() {}

  static String of(OrderRequest request, WorkOrder order) {
    Canonical canonical = new Canonical();
    canonical.line("order", "1");
    canonical.line("description", request.description().toString());
    canonical.line("keypad", request.keypad());
    MemoryLayout layout = new MemoryLayout(request.description());
    for (Slot slot : layout.slots()) {
      canonical.line("found", slot.describe(), value(request.found().get(slot)));
    }
    Map<Integer, String> planned = new TreeMap<>();
    request.planned().forEach((slot, value) -> planned.put(slot.index(), value(value)));
    planned.forEach(
        (index, value) -> canonical.line("planned", layout.slot(index).describe(), value));
    for (Group group : order.groups()) {
      canonical.line("group", group.title());
      canonical.instructions(group.instructions());
      group
          .stop()
          .ifPresent(stop -> {
            canonical.line("leave", stop.screen());
            canonical.instructions(stop.leave());
            canonical.line("come back", stop.screen());
            canonical.instructions(stop.comeBack());
          });
    }
    return canonical.text.toString();
  }

  private void instructions(List<Instruction> instructions) {
    for (Instruction instruction : instructions) {
      line(
          Integer.toString(instruction.number()),
          instruction.screen(),
          lines(instruction.now().lines()));
      switch (instruction) {
        case Instruction.Step step -> {
          for (Act act : step.acts()) {
            line("do", act.toString());
          }
          line("then", lines(step.then().lines()));
        }
        case Instruction.Branch branch -> {
          for (Instruction.Case one : branch.cases()) {
            line("case", lines(one.shows()));
            instructions(one.instructions());
          }
          line("end", branch.about().describe());
        }
        case Instruction.ScrollUntil scroll -> {
          for (Instruction.Way way : scroll.ways()) {
            line("scroll", way.key().key(), Integer.toString(way.atMost()), values(way.from()));
          }
          line("until", lines(scroll.then().lines()));
        }
        case Instruction.SwitchEach each -> {
          for (Instruction.Switch one : each.switches()) {
            line(
                "switch",
                one.shown(),
                one.wanted() ? "on" : "off",
                one.first().toString(),
                one.toggle().toString());
          }
          line("then", lines(each.then().lines()));
        }
        case Instruction.Halt halt -> line("halt", halt.why(), halt.leave().toString());
      }
    }
  }

  private static String lines(List<String> lines) {
    return String.join("\n", lines);
  }

  private static String values(List<Value> values) {
    List<String> texts = new ArrayList<>();
    for (Value value : values) {
      texts.add(value(value));
    }
    return String.join(", ", texts);
  }

  private static String value(Value value) {
    if (value instanceof Value.Unknown unknown) {
      List<String> except = new ArrayList<>();
      for (Value one : unknown.except()) {
        except.add(one.toString());
      }
      Collections.sort(except);
      return "unknown except " + except;
    }
    return value.toString();
  }

  private void line(String... parts) {
    for (String part : parts) {
      text.append(part.length()).append(':').append(part).append(' ');
    }
    text.append('\n');
  }
}
