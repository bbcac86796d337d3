package keenward.core.dialogue.description;

/** Where a key leads. */
public sealed interface Destination {

  /** Another screen, or the same one anew. */
  record ToScreen(String screen) implements Destination {}

  /** The same screen anew: what was typed is cleared. */
  record Stay() implements Destination {}

  /** The screen of the current location. */
  record ToLocation() implements Destination {}

  /** The location with the next higher ({@code NEXT}) or lower number. */
  record ToNeighbour(Effect.Move move) implements Destination {}

  /** Out of programming, by a named way of leaving. */
  record Leave(String way) implements Destination {}
}
