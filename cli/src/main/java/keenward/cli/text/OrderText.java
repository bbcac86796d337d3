package keenward.cli.text;

import java.util.List;
import keenward.core.dialogue.order.OrderSheet;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.Proof;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.planned.CannotExpress;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.dialogue.sheet.EntrySheet;
import keenward.usecases.order.KeyIn;
import keenward.usecases.site.SiteFile;

/** The work order, step by step, or the entry sheet. */
public final class OrderText {

  private OrderText() {}

  /** The whole page. */
  public static String of(SiteFile site, KeyIn keyIn) {
    Page page = new Page();
    switch (keyIn) {
      case KeyIn.Ordered ordered -> order(page, site, ordered);
      case KeyIn.Refused refused -> refused(page, site, refused);
      case KeyIn.ByHand byHand -> sheet(page, site, byHand);
    }
    return page.toString();
  }

  /** The verdict in one line. */
  public static String summary(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered ->
          "order proved: "
              + ordered.order().effort().keys()
              + " keys, about "
              + OrderWords.effort(ordered.order().effort())
              + ", hash "
              + ordered.hash().substring(0, 12);
      case KeyIn.Refused refused ->
          "no order: "
              + refused.reasons().size()
              + " reason(s), first: "
              + refused.reasons().getFirst().what();
      case KeyIn.ByHand byHand -> "entry sheet, UNPROVED: " + byHand.why();
    };
  }

  private static void order(Page page, SiteFile site, KeyIn.Ordered ordered) {
    WorkOrder order = ordered.order();
    Proof proof = ordered.proof();
    page.heading("Work order: " + site.plan().site().name() + ", " + order.panel())
        .line("keypad    " + ordered.keypad())
        .line("found     " + ordered.found())
        .line("plan      " + site.sha256())
        .line("order     " + ordered.hash())
        .line(
            "proof     PROVED: "
                + proof.keysReplayed()
                + " keys replayed, "
                + proof.casesReplayed()
                + " cases, the panel then holds what the plan wants")
        .line(
            "effort    "
                + order.effort().keys()
                + " keys, about "
                + OrderWords.effort(order.effort()))
        .line(
            "length    "
                + (order.shortness().exact()
                    ? "the shortest there is"
                    : order.shortness().acts()
                        + " acts; none can be shorter than "
                        + order.shortness().atLeast()));
    order.whileOpen().forEach(warning -> page.hanging("caution   ", 10, warning));
    if (order.nothingToDo()) {
      page.gap().line("The panel holds what the plan wants: nothing to do.");
    }
    planned(page, ordered.planned());
    order.assumptions().forEach(assumption -> page.hanging("assumed   ", 10, assumption.what()));
    order
        .overwritten()
        .forEach(unseen ->
            page.hanging(
                "unseen    ",
                10,
                unseen.slot().describe()
                    + " is overwritten without having been seen, step "
                    + unseen.atStep()));
    OrderSheet sheet = OrderSheet.of(order);
    if (!sheet.usualWait().isEmpty()) {
      page.line(
          "wait      at most "
              + sheet.usualWait()
              + " before a key, unless the step says otherwise");
    }
    for (OrderSheet.Part part : sheet.parts()) {
      page.heading(part.title());
      part.lines().forEach(line -> line(page, sheet, line));
      part.stop()
          .ifPresent(stop ->
              page.gap()
                  .hanging("  STOP HERE IF YOU LIKE. Leave: ", 4, acts(stop.leave()))
                  .hanging("  Come back: ", 4, acts(stop.comeBack())));
    }
  }

  private static void line(Page page, OrderSheet sheet, OrderSheet.Line line) {
    String indent = "  ".repeat(line.depth() + 1);
    if (!line.when().isEmpty()) {
      page.line(indent + line.when() + ":");
    }
    String number = indent + line.number() + ". ";
    String shows =
        line.blind() && !line.halt()
            ? "(blind: this keypad shows nothing of use)"
            : "[" + String.join(" | ", line.shows()) + "]";
    page.hanging(number, number.length(), shows + "  " + line.words());
    if (!line.then().isEmpty() && !line.blind()) {
      page.line(" ".repeat(number.length()) + "then [" + String.join(" | ", line.then()) + "]");
    }
    for (String stored : line.stores()) {
      page.line(" ".repeat(number.length()) + "stores " + stored);
    }
    if (!sheet.unusualWait(line).isEmpty()) {
      page.line(" ".repeat(number.length()) + "within " + sheet.unusualWait(line));
    }
  }

  private static String acts(List<OrderSheet.Line> lines) {
    return String.join("; ", lines.stream().map(OrderSheet.Line::words).toList());
  }

  private static void refused(Page page, SiteFile site, KeyIn.Refused refused) {
    page.heading(
        "No order for " + site.plan().site().name() + ", " + refused.description().panel());
    for (Reason reason : refused.reasons()) {
      page.hanging("  - ", 4, reason.what()).hanging("    > ", 6, reason.remedy());
    }
    planned(page, refused.planned());
  }

  private static void planned(Page page, PlannedMemory planned) {
    for (CannotExpress open : planned.cannotExpress()) {
      page.hanging(
          "cannot    ",
          10,
          open.place()
              + ": "
              + open.what()
              + "; the panel can hold "
              + open.expected()
              + "; "
              + open.remedy());
    }
    planned
        .notes()
        .forEach(
            note -> page.hanging("note      ", 10, note.slot().describe() + ": " + note.text()));
    planned
        .notYetKnown()
        .forEach(open ->
            page.hanging(
                "unknown   ",
                10,
                open.slot().describe() + " is left as found; add: " + open.line()));
  }

  private static void sheet(Page page, SiteFile site, KeyIn.ByHand byHand) {
    page.heading("Entry sheet, UNPROVED: " + site.plan().site().name())
        .paragraph(0, byHand.why() + "; to get an order: " + byHand.remedy() + ".")
        .paragraph(
            0,
            "Values to enter by hand, by the panel's own manual. Leave programming the documented way, then walk-test"
                + " every zone.");
    for (EntrySheet.Part part : byHand.sheet().parts()) {
      page.heading(part.title());
      page.table(
          part.values().stream()
              .map(value ->
                  List.of(
                      value.what(),
                      value.value()
                          + (value.source().isEmpty() ? "" : "  (" + value.source() + ")")))
              .toList());
    }
  }
}
