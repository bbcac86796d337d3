package keenward.core.dialogue.description;

/**
 * A way out of programming.
 *
 * @param name name in the description; {@code idle} and {@code power lost} are those that come by
 *     themselves
 * @param saves what becomes of what was entered
 * @param goesTo screen afterwards
 * @param restartTenths how long the panel is deaf afterwards
 * @param locks whether programming is locked from then on
 * @param safe whether it is a documented way that loses and locks nothing
 */
public record Leaving(
    String name, Saves saves, String goesTo, int restartTenths, boolean locks, boolean safe) {

  /** What becomes of what was entered since the last commit. */
  public enum Saves {
    /** It is lost. */
    NOTHING,
    /** What was stored is committed; what was still being typed is lost. */
    CONFIRMED,
    /** Even what was still being typed is stored, where it is a valid value. */
    TYPED_TOO
  }
}
