package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import keenward.core.rehearsal.Behaviour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Runs the behaviour cases; their numbers are those of docs/methods/rehearsal.md. Common practice,
 * no source.
 */
class BehaviourCasesTest {

  /** Rows that no script can reach; {@code EngineTest} cites them. */
  private static final Set<String> OUTSIDE_SCRIPTS = Set.of("SYS-1");

  private static final int CASES = 40;

  static List<CaseFile> all() {
    return CaseFile.all();
  }

  @ParameterizedTest
  @MethodSource("all")
  void goesAsTheCaseSays(CaseFile file) {
    Rehearsal.Result result = run(file);
    assertThat(result.unmet()).extracting(Unmet::text).as(result.timeline().text(true)).isEmpty();
    assertThat(exercised(result.timeline())).containsAll(file.rows());
  }

  @Test
  void coversEveryCase() {
    Set<Integer> numbers = new TreeSet<>();
    for (CaseFile file : CaseFile.all()) {
      if (!file.name().startsWith("row-")) {
        numbers.add(Integer.parseInt(file.name().substring(0, 2)));
      }
    }
    assertThat(numbers).containsExactlyElementsOf(IntStream.rangeClosed(1, CASES).boxed().toList());
  }

  @Test
  void citesEveryRowOfTheSemantics() {
    Set<String> cited = new TreeSet<>(OUTSIDE_SCRIPTS);
    for (CaseFile file : CaseFile.all()) {
      cited.addAll(file.rows());
    }
    Set<String> rows = new TreeSet<>();
    for (Behaviour behaviour : Behaviour.values()) {
      assertThat(rows.add(behaviour.id())).as("%s is there once", behaviour.id()).isTrue();
    }
    assertThat(cited).isEqualTo(rows);
  }

  private static Rehearsal.Result run(CaseFile file) {
    ParsedScript parsed = ScriptParser.parse(file.script(), file.model());
    assertThat(parsed.problems()).extracting(ScriptProblem::text).isEmpty();
    return Rehearsal.run(file.model(), parsed.script().orElseThrow());
  }

  private static Set<String> exercised(Timeline timeline) {
    Set<String> found = new HashSet<>();
    for (Row row : timeline.rows()) {
      row.because().ifPresent(because -> collect(because, found));
    }
    return found;
  }

  private static void collect(Because because, Set<String> found) {
    for (Because.Step step : because.steps()) {
      found.add(step.behaviour().id());
      step.given().forEach(given -> collect(given, found));
    }
  }
}
