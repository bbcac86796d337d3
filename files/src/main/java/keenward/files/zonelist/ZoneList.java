package keenward.files.zonelist;

import java.util.List;
import keenward.core.plan.UnplacedRow;

/**
 * A list of zones, understood as far as it can be.
 *
 * @param site name of the site, or the empty text
 * @param zones zones in the order of their numbers
 * @param unplaced rows that did not fit
 * @param comments rows that hold no zone: titles, spare rows
 * @param notes how it was read, guesses and problems, by row
 */
public record ZoneList(
    String site,
    List<ListedZone> zones,
    List<UnplacedRow> unplaced,
    List<String> comments,
    List<ListNote> notes) {

  public ZoneList {
    zones = List.copyOf(zones);
    unplaced = List.copyOf(unplaced);
    comments = List.copyOf(comments);
    notes = List.copyOf(notes);
  }

  /** How many zones were understood. */
  public int zoneCount() {
    return zones.size();
  }
}
