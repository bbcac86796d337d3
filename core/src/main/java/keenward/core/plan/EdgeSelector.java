package keenward.core.plan;

/**
 * The wall between two rooms, or between a room and outside.
 *
 * @param room the room whose outline is walked
 * @param beyond the room on the other side, or {@link #OUTSIDE}
 * @param edge which one, when they share several: counted from 1 along the outline of {@code room}
 */
public record EdgeSelector(String room, String beyond, Fact<Integer> edge) {

  /** The word for the other side of an outer wall. */
  public static final String OUTSIDE = "outside";
}
