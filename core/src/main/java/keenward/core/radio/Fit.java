package keenward.core.radio;

import java.util.List;
import java.util.Optional;

/**
 * The model bent to what was measured in a house: level = power - distance loss - scale x obstacle
 * loss + offset, by least squares.
 *
 * @param offsetDecibels how much stronger the house is than reckoned; weaker when negative
 * @param wallScale by what the losses of walls and floors are multiplied
 * @param sigmaDecibels what the fit leaves over: standard deviation of a measurement from it
 * @param measurements how many measurements went in
 */
public record Fit(double offsetDecibels, double wallScale, double sigmaDecibels, int measurements) {

  /** With fewer measurements nothing is fitted. */
  public static final int LEAST_FOR_OFFSET = 3;

  /** With fewer only the offset is. */
  public static final int LEAST_FOR_WALLS = 5;

  /** No house loses less than half or more than twice what walls of one kind do. */
  private static final double LEAST_SCALE = 0.5;

  private static final double MOST_SCALE = 2;

  /** Nothing measured. */
  static final Fit NONE = new Fit(0, 1, 0, 0);

  /**
   * One measurement.
   *
   * @param obstacleDecibels reckoned loss of walls and floors
   * @param predicted the level reckoned, in dBm
   * @param measured the level seen, in dBm
   */
  public record Sample(double obstacleDecibels, double predicted, double measured) {

    double aboveDecibels() {
      return measured - predicted;
    }
  }

  /** The fit; empty with too few measurements. */
  static Optional<Fit> of(List<Sample> samples) {
    if (samples.size() < LEAST_FOR_OFFSET) {
      return Optional.empty();
    }
    double meanWall = samples.stream().mapToDouble(Sample::obstacleDecibels).average().orElse(0);
    double meanAbove = samples.stream().mapToDouble(Sample::aboveDecibels).average().orElse(0);
    double spread = 0;
    double together = 0;
    for (Sample sample : samples) {
      double wall = sample.obstacleDecibels() - meanWall;
      spread += wall * wall;
      together += wall * (sample.aboveDecibels() - meanAbove);
    }
    // A house whose walls all take alike says nothing about them: 1 dB is their least spread.
    double slope =
        samples.size() < LEAST_FOR_WALLS || spread < samples.size() ? 0 : together / spread;
    double scale = 1 - slope;
    boolean isFitted = slope != 0 && scale >= LEAST_SCALE && scale <= MOST_SCALE;
    double kept = isFitted ? slope : 0;
    double offset = meanAbove - kept * meanWall;
    double squares = 0;
    for (Sample sample : samples) {
      double left = sample.aboveDecibels() - offset - kept * sample.obstacleDecibels();
      squares += left * left;
    }
    return Optional.of(
        new Fit(
            offset,
            1 - kept,
            Math.sqrt(squares / (samples.size() - (isFitted ? 2 : 1))),
            samples.size()));
  }

  /** Whether the walls were fitted too, not the offset alone. */
  public boolean fitsWalls() {
    return wallScale != 1;
  }

  /** By how much a level is stronger in the house than in the drawing. */
  double houseDecibels(double obstacleDecibels) {
    return offsetDecibels + (1 - wallScale) * obstacleDecibels;
  }
}
