package keenward.core.building.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FewestChoiceTest {

  /** A random problem that all its candidates together solve. */
  static CoverProblem random(Random random, int candidates, int times) {
    int rooms = 1 + random.nextInt(2);
    List<CoverProblem.Patch> patches = new ArrayList<>();
    double[] most = new double[rooms];
    for (int i = 0; i < 12; i++) {
      List<Integer> seenBy =
          IntStream.range(0, candidates).filter(each -> random.nextInt(3) == 0).boxed().toList();
      int room = random.nextInt(rooms);
      int already = random.nextInt(5) == 0 ? 1 : 0;
      double area = 0.25 * (1 + random.nextInt(8));
      patches.add(new CoverProblem.Patch(room, area, already, seenBy));
      most[room] += already + seenBy.size() >= times ? area : 0;
    }
    List<Double> needs = new ArrayList<>();
    for (double each : most) {
      needs.add(each * (0.5 + 0.5 * random.nextDouble()));
    }
    List<Double> misfits =
        IntStream.range(0, candidates).mapToObj(each -> 0.05 * random.nextInt(5)).toList();
    return new CoverProblem(misfits, patches, needs, times);
  }

  /** The least number among all subsets. */
  private static int leastOfAll(CoverProblem problem) {
    int candidates = problem.misfits().size();
    int least = Integer.MAX_VALUE;
    for (int subset = 0; subset < 1 << candidates; subset++) {
      int bits = subset;
      if (Integer.bitCount(bits) < least
          && problem.isSolvedBy(
              IntStream.range(0, candidates)
                  .filter(each -> (bits >> each & 1) == 1)
                  .boxed()
                  .toList())) {
        least = Integer.bitCount(bits);
      }
    }
    return least;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void findsTheLeastNumberOfAllSubsets(int times) {
    Random random = new Random(4711 + times);
    int found = 0;
    for (int i = 0; i < 300; i++) {
      CoverProblem problem = random(random, 9, times);

      FewestChoice.Found search = FewestChoice.search(problem, 9, Long.MAX_VALUE);

      List<Integer> chosen = search.chosen().orElseThrow();
      assertThat(problem.isSolvedBy(chosen)).isTrue();
      assertThat(chosen).hasSize(leastOfAll(problem));
      assertThat(search.atLeast()).isEqualTo(chosen.size());
      found += chosen.size() > 2 ? 1 : 0;
    }
    assertThat(found).as("problems that take more than two").isGreaterThan(30);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void saysWhatIsProvedWhenItGivesUp(int times) {
    Random random = new Random(99);
    for (int i = 0; i < 100; i++) {
      CoverProblem problem = random(random, 9, times);
      int least = leastOfAll(problem);

      FewestChoice.Found search = FewestChoice.search(problem, Math.max(0, least - 1), 5);

      assertThat(search.atLeast()).isLessThanOrEqualTo(least);
    }
  }
}
