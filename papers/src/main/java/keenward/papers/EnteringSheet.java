package keenward.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.order.OrderSheet;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.sheet.EntrySheet;

/** The proved work order; or what to enter by hand, which is never called an order. */
final class EnteringSheet {

  private EnteringSheet() {}

  static Sheet of(PapersInput input) {
    return switch (input.entering()) {
      case Entering.ByOrder by when by.proof().proved() -> order(by);
      case Entering.ByOrder by ->
          sheet(
              EntrySheet.of(input.plan()),
              by.proof().refutations().stream()
                  .map(each ->
                      new Obstacle(
                          "the replay refuted the steps: " + each.what(),
                          "report the panel description and the plan, and enter by hand"))
                  .toList());
      case Entering.ByHand by -> sheet(by.sheet(), by.why());
    };
  }

  private static Sheet order(Entering.ByOrder by) {
    WorkOrder order = by.order();
    OrderSheet lines = OrderSheet.of(order);
    List<View> passing =
        order.passing().stream()
            .map(change ->
                new View()
                    .text("what", change.slot().describe())
                    .text("before", OrderWords.value(change.slot(), change.before()))
                    .text("after", OrderWords.value(change.slot(), change.after()))
                    .flag("back", change.putBack())
                    .number("step", change.atStep()))
            .toList();
    List<View> overwritten =
        order.overwritten().stream()
            .map(each ->
                new View()
                    .text("what", each.slot().describe())
                    .text("after", OrderWords.value(each.slot(), each.after()))
                    .number("step", each.atStep()))
            .toList();
    View view =
        new View()
            .text("panel", order.panel())
            .text("keypad", order.keypad())
            .text("found", by.found())
            .text("hash", by.hash())
            .text("short-hash-of-order", shortened(by.hash()))
            .flag("nothing", order.nothingToDo())
            .number("keys", order.effort().keys())
            .number("others", order.effort().others())
            .text("time", OrderWords.effort(order.effort()))
            .text("shortness", shortness(order))
            .text("replayed", "" + by.proof().keysReplayed())
            .text("cases", "" + by.proof().casesReplayed())
            .texts("while-open", order.whileOpen())
            .texts("assumptions", order.assumptions().stream().map(each -> each.what()).toList())
            .views("passing", passing)
            .views("overwritten", overwritten)
            .text("usual-wait", lines.usualWait())
            .views("parts", parts(lines))
            .views("missing", List.of());
    return new Sheet(
        "work-order",
        "Work order",
        "technician at the keypad",
        "work-order.html",
        "Proved by replay · order " + shortened(by.hash()),
        view);
  }

  private static String shortened(String hash) {
    return hash.substring(0, Math.min(12, hash.length()));
  }

  private static String shortness(WorkOrder order) {
    if (order.shortness().exact()) {
      return order.shortness().acts() + " acts; no order for this work needs fewer";
    }
    return order.shortness().acts()
        + " acts; no order for this work needs fewer than "
        + order.shortness().atLeast();
  }

  private static List<View> parts(OrderSheet sheet) {
    // Most groups are left in the same way: it is told once, and named after that.
    Map<List<OrderSheet.Line>, String> told = new LinkedHashMap<>();
    List<View> parts = new ArrayList<>();
    for (OrderSheet.Part part : sheet.parts()) {
      View view =
          new View()
              .text("title", Say.capital(part.title()))
              .views("lines", lines(sheet, part.lines()))
              .flag("has-stop", part.stop().isPresent())
              .text("leave-as", "")
              .text("come-back-as", "")
              .views("leave", List.of())
              .views("come-back", List.of());
      part.stop()
          .ifPresent(stop -> {
            way(sheet, view, told, "leave", stop.leave(), part.title());
            way(sheet, view, told, "come-back", stop.comeBack(), part.title());
          });
      parts.add(view);
    }
    return parts;
  }

  private static void way(
      OrderSheet sheet,
      View view,
      Map<List<OrderSheet.Line>, String> told,
      String name,
      List<OrderSheet.Line> lines,
      String title) {
    String before = told.putIfAbsent(lines, title);
    if (before == null) {
      view.views(name, lines(sheet, lines));
    } else {
      view.text(name + "-as", before);
    }
  }

  private static List<View> lines(OrderSheet sheet, List<OrderSheet.Line> lines) {
    return lines.stream().map(line -> line(sheet, line)).toList();
  }

  private static View line(OrderSheet sheet, OrderSheet.Line line) {
    return new View()
        .number("number", line.number())
        .number("depth", Math.min(line.depth(), 3))
        .text("when", line.when())
        .texts("shows", line.shows())
        .texts("acts", line.acts())
        .text("words", line.words())
        .texts("then", line.then())
        .texts("stores", line.stores())
        .text("may-wait", sheet.unusualWait(line))
        .text("if-dropped", line.ifDropped())
        .flag("blind", line.blind())
        .flag("halt", line.halt());
  }

  private static Sheet sheet(EntrySheet sheet, List<Obstacle> why) {
    List<View> parts = new ArrayList<>();
    for (EntrySheet.Part part : sheet.parts()) {
      parts.add(
          new View()
              .text("title", part.title())
              .views(
                  "values",
                  part.values().stream()
                      .map(value ->
                          new View()
                              .text("what", value.what())
                              .text("value", value.value())
                              .text("source", value.source()))
                      .toList()));
    }
    View view =
        new View()
            .views("parts", parts)
            .views(
                "why",
                why.stream()
                    .map(each -> new View().text("what", each.what()).text("remedy", each.remedy()))
                    .toList())
            .views("missing", List.of());
    return new Sheet(
        "entry-sheet",
        "Entry sheet, unproved",
        "technician at the keypad",
        "entry-sheet.html",
        "Unproved: compare every value at the panel",
        view);
  }
}
