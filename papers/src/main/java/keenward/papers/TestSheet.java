package keenward.papers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import keenward.core.proof.Caution;
import keenward.core.proof.ExpectedSignal;
import keenward.core.proof.Phase;
import keenward.core.proof.TestStep;

/** What to test, with room for what was seen. */
final class TestSheet {

  private TestSheet() {}

  static Sheet of(PapersInput input) {
    Set<Caution> cautions = new LinkedHashSet<>();
    input.testPlan().steps().forEach(step -> cautions.addAll(step.cautions()));
    List<Caution> order = List.copyOf(cautions);
    List<View> phases = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      List<View> steps =
          input.testPlan().steps().stream()
              .filter(step -> step.phase() == phase)
              .map(step -> step(step, order))
              .toList();
      if (!steps.isEmpty()) {
        phases.add(new View().text("title", phase.words()).views("steps", steps));
      }
    }
    List<View> read = new ArrayList<>();
    for (Caution caution : order) {
      read.add(new View().text("letter", letter(order, caution)).text("text", caution.text()));
    }
    View view =
        new View()
            .views("cautions", read)
            .texts("notes", input.testPlan().notes())
            .views("phases", phases)
            .views("missing", input.testPlan().notAssessed().stream().map(Say::missing).toList());
    return Sheet.of("test-sheet", "Test sheet", "technician", view);
  }

  private static View step(TestStep step, List<Caution> cautions) {
    return new View()
        .number("number", step.number())
        .text("what", Say.capital(step.subject().label()))
        .text("where", step.place().map(place -> place.room()).orElse(""))
        .text("given", step.precondition())
        .text("action", step.action())
        .text("shows", step.keypadShows())
        .text("time", step.time().map(time -> time.words() + " (" + time.source() + ")").orElse(""))
        .flag("timed", step.time().isPresent())
        .views("signals", step.signals().stream().map(TestSheet::signal).toList())
        .text(
            "cautions",
            String.join(
                " ", step.cautions().stream().map(each -> letter(cautions, each)).toList()));
  }

  private static View signal(ExpectedSignal signal) {
    return new View().text("text", signal.text()).text("words", signal.event());
  }

  private static String letter(List<Caution> order, Caution caution) {
    return Character.toString('A' + order.indexOf(caution));
  }
}
