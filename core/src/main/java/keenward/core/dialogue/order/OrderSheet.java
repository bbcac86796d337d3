package keenward.core.dialogue.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.Stored;

/**
 * A work order as lines to read: the one wording that paper, terminal and page share.
 *
 * @param usualWait how long one may wait at most steps, in words; empty for no limit
 * @param parts the groups of the order
 */
public record OrderSheet(String usualWait, List<Part> parts) {

  /**
   * A group.
   *
   * @param title its title
   * @param lines its lines
   * @param stop how to stop and come back after it; empty where one cannot stop
   */
  public record Part(String title, List<Line> lines, Optional<Stop> stop) {
    public Part {
      lines = List.copyOf(lines);
    }
  }

  /**
   * How to stop and come back.
   *
   * @param leave lines that lead out safely
   * @param comeBack lines that lead back to where the order goes on
   */
  public record Stop(List<Line> leave, List<Line> comeBack) {
    public Stop {
      leave = List.copyOf(leave);
      comeBack = List.copyOf(comeBack);
    }
  }

  /**
   * One line.
   *
   * @param number number of the instruction
   * @param depth 0, or how deep it stands in branches
   * @param when the case of a branch that it begins, such as {@code if it shows wired}; empty for
   *     none
   * @param shows what the display must show before it; empty where the keypad is blind
   * @param acts what to press or do, one a piece
   * @param words the same in one sentence; for a branch the question
   * @param then what the display shows after it; empty where the keypad is blind
   * @param stores what gets stored, in words
   * @param mayWait how long one may wait before it, in words; empty for no limit
   * @param ifDropped what is lost when the session drops here, and where to go on; empty when
   *     nothing is lost
   * @param blind whether the keypad shows nothing of use
   * @param halt whether the order ends here in this case
   */
  public record Line(
      int number,
      int depth,
      String when,
      List<String> shows,
      List<String> acts,
      String words,
      List<String> then,
      List<String> stores,
      String mayWait,
      String ifDropped,
      boolean blind,
      boolean halt) {
    public Line {
      shows = List.copyOf(shows);
      acts = List.copyOf(acts);
      then = List.copyOf(then);
      stores = List.copyOf(stores);
    }
  }

  public OrderSheet {
    parts = List.copyOf(parts);
  }

  /** How long one may wait before a line where that is not the usual time; else empty. */
  public String unusualWait(Line line) {
    return line.mayWait().equals(usualWait) ? "" : line.mayWait();
  }

  /** The lines of an order. */
  public static OrderSheet of(WorkOrder order) {
    List<Part> parts = new ArrayList<>();
    for (Group group : order.groups()) {
      parts.add(
          new Part(
              group.title(),
              lines(group.instructions()),
              group.stop().map(stop -> new Stop(lines(stop.leave()), lines(stop.comeBack())))));
    }
    return new OrderSheet(usualWait(parts), parts);
  }

  /** The limit that most steps share, so that it need be said once only. */
  private static String usualWait(List<Part> parts) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Part part : parts) {
      for (Line line : part.lines()) {
        if (!line.mayWait().isEmpty()) {
          counts.merge(line.mayWait(), 1, Integer::sum);
        }
      }
    }
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse("");
  }

  private static List<Line> lines(List<Instruction> instructions) {
    List<Line> lines = new ArrayList<>();
    add(lines, instructions, 0, "");
    return lines;
  }

  private static void add(
      List<Line> lines, List<Instruction> instructions, int depth, String firstWhen) {
    String when = firstWhen;
    for (Instruction instruction : instructions) {
      lines.add(line(instruction, depth, when));
      when = "";
      if (instruction instanceof Instruction.Branch branch) {
        for (Instruction.Case one : branch.cases()) {
          addCase(lines, branch, one, depth + 1);
        }
      }
    }
  }

  private static void addCase(
      List<Line> lines, Instruction.Branch branch, Instruction.Case one, int depth) {
    String when = when(branch, one);
    if (one.instructions().isEmpty()) {
      lines.add(
          new Line(
              branch.number(),
              depth,
              when,
              one.shows(),
              List.of(),
              "go on below",
              List.of(),
              List.of(),
              "",
              "",
              false,
              false));
    } else {
      add(lines, one.instructions(), depth, when);
    }
  }

  private static String when(Instruction.Branch branch, Instruction.Case one) {
    if (one.otherwise()) {
      return "if it shows anything else";
    }
    List<String> values = new ArrayList<>();
    one.values().forEach(value -> values.add(OrderWords.value(branch.about(), value)));
    return "if it shows " + String.join(" or ", values);
  }

  private static Line line(Instruction instruction, int depth, String when) {
    String words = OrderWords.line(instruction);
    List<String> shows = instruction.now().lines();
    return switch (instruction) {
      case Instruction.Step step ->
          new Line(
              step.number(),
              depth,
              when,
              shows,
              OrderWords.acts(step.acts()),
              words,
              step.then().lines(),
              step.stored().stream().map(OrderSheet::stored).toList(),
              mayWait(step.mayWaitTenths()),
              step.whenLeftAlone().map(OrderSheet::setback).orElse(""),
              step.blind(),
              false);
      case Instruction.ScrollUntil scroll ->
          reading(scroll, depth, when, words, scroll.then().lines());
      case Instruction.SwitchEach each -> reading(each, depth, when, words, each.then().lines());
      case Instruction.Branch branch -> reading(branch, depth, when, words, List.of());
      case Instruction.Halt halt ->
          new Line(
              halt.number(),
              depth,
              when,
              shows,
              List.of(),
              words,
              List.of(),
              List.of(),
              "",
              "",
              halt.now().blind(),
              true);
    };
  }

  private static Line reading(
      Instruction instruction, int depth, String when, String words, List<String> then) {
    return new Line(
        instruction.number(),
        depth,
        when,
        instruction.now().lines(),
        List.of(),
        words,
        then,
        List.of(),
        "",
        "",
        instruction.now().blind(),
        false);
  }

  private static String mayWait(OptionalInt tenths) {
    return tenths.isEmpty() ? "" : OrderWords.time(tenths.getAsInt());
  }

  private static String stored(Stored stored) {
    return stored.slot().describe()
        + " = "
        + OrderWords.value(stored.slot(), stored.after())
        + (stored.sideEffect() ? " (comes along)" : "");
  }

  private static String setback(Setback setback) {
    if (setback.harmless()) {
      return "";
    }
    StringBuilder words = new StringBuilder();
    if (!setback.lost().isEmpty()) {
      words.append("lost: ").append(names(setback.lost()));
    }
    if (!setback.halfEntered().isEmpty()) {
      words
          .append(words.isEmpty() ? "" : "; ")
          .append("perhaps half entered: ")
          .append(names(setback.halfEntered()));
    }
    return words
        .append(
            setback.goOnAt().isPresent()
                ? "; come back and go on at step " + setback.goOnAt().getAsInt()
                : "; make a new order from what the panel holds then")
        .toString();
  }

  private static String names(List<Slot> slots) {
    List<String> names = new ArrayList<>();
    for (Slot slot : slots.subList(0, Math.min(3, slots.size()))) {
      names.add(slot.describe());
    }
    return String.join(", ", names)
        + (slots.size() > 3 ? " and " + (slots.size() - 3) + " more" : "");
  }
}
