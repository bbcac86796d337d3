package keenward.usecases.zonelist;

import java.util.List;

/**
 * A list of zones as a site plan.
 *
 * @param site name of the site
 * @param zones how many zones were understood
 * @param unplaced how many rows were not
 * @param notes how it was read, guesses and problems, by row
 * @param text the plan
 */
public record ImportedList(String site, int zones, int unplaced, List<Note> notes, String text) {

  public ImportedList {
    notes = List.copyOf(notes);
  }

  /**
   * What has to be said about a row.
   *
   * @param row its number in the file; 0 for the file as a whole
   * @param column head or letter of the column; empty for the row as a whole
   * @param kind {@code read}, {@code guess} or {@code problem}
   * @param text what was done
   * @param message all of it in one line
   */
  public record Note(int row, String column, String kind, String text, String message) {}
}
