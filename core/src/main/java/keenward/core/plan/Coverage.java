package keenward.core.plan;

import java.util.Optional;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;

/**
 * What a detector sees, as its data sheet states it.
 *
 * @param pattern the shape
 * @param range reach
 * @param angle opening angle of a fan
 * @param looksDown the steepest angle below the horizontal at which it still sees
 * @param petAllowance whether the pattern leaves room for an animal on the floor
 */
public record Coverage(
    Fact<CoveragePattern> pattern,
    Fact<Length> range,
    Fact<Angle> angle,
    Fact<Angle> looksDown,
    Fact<Boolean> petAllowance) {

  /** The shape; where none is stated, a fan. */
  public CoveragePattern shape() {
    return pattern.orElse(CoveragePattern.FAN);
  }

  /** The reach in metres. */
  public Optional<Double> rangeMetres() {
    return range.map(Length::metres).find();
  }
}
