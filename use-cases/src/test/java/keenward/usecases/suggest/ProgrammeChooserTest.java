package keenward.usecases.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import keenward.core.building.placing.CoverChooser.Choice;
import keenward.core.building.placing.CoverProblem;
import keenward.core.building.placing.FewestChoice;
import keenward.core.progress.Progress;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgrammeChooserTest {

  private static CoverProblem random(Random random, int candidates, int patches, int times) {
    List<CoverProblem.Patch> floor = new ArrayList<>();
    double most = 0;
    for (int i = 0; i < patches; i++) {
      List<Integer> seenBy =
          IntStream.range(0, candidates).filter(each -> random.nextInt(6) == 0).boxed().toList();
      double area = 0.25 * (1 + random.nextInt(4));
      floor.add(new CoverProblem.Patch(0, area, 0, seenBy));
      most += seenBy.size() >= times ? area : 0;
    }
    return new CoverProblem(
        IntStream.range(0, candidates).mapToObj(each -> 0.05 * random.nextInt(5)).toList(),
        floor,
        List.of(0.95 * most),
        times);
  }

  /** Problems that take more than the four that are searched, so that the programme is solved. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void solvesLargerChoicesWithABoundThatTheSearchConfirms(int times) {
    Random random = new Random(31 + times);
    int programmes = 0;
    int proved = 0;
    for (int i = 0; i < 12; i++) {
      CoverProblem problem = random(random, 18, 30, times);
      FewestChoice.Found exact = FewestChoice.search(problem, 18, Long.MAX_VALUE);
      int least = exact.chosen().orElseThrow().size();

      Choice choice = new ProgrammeChooser().choose(problem, Progress.SILENT);

      assertThat(problem.isSolvedBy(choice.chosen())).isTrue();
      assertThat(choice.atLeast()).isLessThanOrEqualTo(least);
      assertThat(choice.chosen()).hasSizeBetween(least, least + 1);
      programmes += least > 4 ? 1 : 0;
      proved += choice.atLeast() == choice.chosen().size() ? 1 : 0;
    }
    assertThat(programmes).as("choices beyond the search").isGreaterThan(6);
    // Of those that must be seen twice few are proved within the limit of nodes.
    assertThat(proved).as("proved").isGreaterThan(times == 1 ? 3 : 0);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void givesTheSameChoiceEachTime(int times) {
    CoverProblem problem = random(new Random(7), 18, 30, times);

    Choice first = new ProgrammeChooser().choose(problem, Progress.SILENT);

    for (int i = 0; i < 3; i++) {
      assertThat(new ProgrammeChooser().choose(problem, Progress.SILENT)).isEqualTo(first);
    }
  }
}
