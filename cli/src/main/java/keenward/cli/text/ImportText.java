package keenward.cli.text;

import java.nio.file.Path;
import keenward.usecases.zonelist.ImportedList;

/** How a list was read, row by row. */
public final class ImportText {

  private ImportText() {}

  /** The whole page. */
  public static String of(ImportedList list, Path out) {
    Page page = new Page();
    page.heading(
            list.site() + ": " + list.zones() + " zones, " + list.unplaced() + " rows unplaced")
        .line("written to " + out);
    for (ImportedList.Note note : list.notes()) {
      page.hanging("  ", 4, note.message());
    }
    return page.toString();
  }
}
