package keenward.core.dialogue.search;

import java.util.List;

/** The way from start to end, or what stands in the way. */
sealed interface Plan {

  /**
   * A way.
   *
   * @param path all moves, from rest to rest
   * @param exact whether it is a shortest one
   */
  record Found(Path path, boolean exact) implements Plan {}

  /**
   * None was found.
   *
   * @param units what could not be done
   * @param gaveUp whether only because the search was given up
   */
  record Failed(List<Scope.Unit> units, boolean gaveUp) implements Plan {
    public Failed {
      units = List.copyOf(units);
    }
  }
}
