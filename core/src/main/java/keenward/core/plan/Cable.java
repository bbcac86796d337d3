package keenward.core.plan;

import keenward.core.quantities.Conductor;
import keenward.core.quantities.Current;
import keenward.core.quantities.Length;
import keenward.core.quantities.Temperature;

/**
 * One run of cable that carries power.
 *
 * @param name name, unique in the plan
 * @param from name of the supply, junction or device nearer the supply
 * @param to name of the junction or device further from it
 * @param length length of the run, one way
 * @param conductor size of each conductor
 * @param doubled whether two cores are used for each pole
 * @param temperature highest temperature of its conductors
 * @param fuse rated current of the fuse or current limit at its near end
 */
public record Cable(
    String name,
    String from,
    String to,
    Fact<Length> length,
    Fact<Conductor> conductor,
    Fact<Boolean> doubled,
    Fact<Temperature> temperature,
    Fact<Current> fuse) {

  /** A cable without a stated temperature or fuse. */
  public Cable(
      String name,
      String from,
      String to,
      Fact<Length> length,
      Fact<Conductor> conductor,
      Fact<Boolean> doubled) {
    this(name, from, to, length, conductor, doubled, Fact.missing(), Fact.missing());
  }
}
