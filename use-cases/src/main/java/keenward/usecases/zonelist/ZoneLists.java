package keenward.usecases.zonelist;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.SitePlan;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import keenward.files.table.TableReader;
import keenward.files.table.TableReading;
import keenward.files.table.TableWriter;
import keenward.files.zonelist.ListMap;
import keenward.files.zonelist.ListMapReader;
import keenward.files.zonelist.SiteText;
import keenward.files.zonelist.ZoneList;
import keenward.files.zonelist.ZoneListReader;
import keenward.files.zonelist.ZoneTable;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;
import keenward.usecases.site.OutputFile;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/** Takes a technician's own list of zones as it comes, and gives it back. */
public final class ZoneLists {

  private ZoneLists() {}

  /**
   * Reads a list as a site plan.
   *
   * @param map file that says what the list's words and columns mean; null for none
   * @throws BadInput when it is no list, or nothing of it could be understood
   */
  public static ImportedList read(Path list, @Nullable Path map) throws BadInput {
    ListMap said = map == null ? ListMap.NONE : map(map);
    byte[] bytes = InputBytes.read(list, "a list of zones (.csv, .tsv or .xlsx)");
    TableReading table = TableReader.read(list.toString(), bytes);
    if (table.table().isEmpty()) {
      throw new BadInput(table.problems());
    }
    ZoneList zones = ZoneListReader.read(table.table().get(), said);
    if (zones.zoneCount() == 0) {
      throw new BadInput(
          list.toString(),
          "no zone was found in "
              + table.table().get().rows().size()
              + " rows"
              + zones.notes().stream()
                  .reduce((_, last) -> last)
                  .map(last -> " (" + last.message() + ")")
                  .orElse(""),
          "rows with a number or name, and what the zone does or what is fitted",
          "say what the columns hold in a map (--map)");
    }
    String text = SiteText.of(zones, name(list), stem(list));
    // Whatever a list may hold, the plan has to be one that can be read.
    PlanReading plan =
        SitePlanReader.read("imported.site.yaml", text.getBytes(StandardCharsets.UTF_8));
    String site =
        plan.plan()
            .map(SitePlan::site)
            .orElseThrow(() -> new IllegalStateException(plan.problems().getFirst().message()))
            .name();
    return new ImportedList(
        site,
        zones.zoneCount(),
        zones.unplaced().size(),
        zones.notes().stream()
            .map(note ->
                new ImportedList.Note(
                    note.row(), note.column(), note.kind().word(), note.text(), note.message()))
            .toList(),
        text);
  }

  private static ListMap map(Path file) throws BadInput {
    ListMapReader.Reading reading =
        ListMapReader.read(file.toString(), InputBytes.read(file, "a map of a list"));
    Optional<ListMap> map = reading.map();
    if (map.isEmpty()) {
      throw new BadInput(reading.problems());
    }
    return map.get();
  }

  /** Writes the plan of a list. */
  public static void save(ImportedList list, Path site, boolean replace)
      throws BadInput, IOException {
    OutputFile.write(site, list.text().getBytes(StandardCharsets.UTF_8), replace);
  }

  /**
   * Writes the zones of a plan as a table: a workbook where the name ends in .xlsx, else CSV.
   *
   * @param version version of the program, which a workbook records
   */
  public static void export(SiteFile site, Path out, boolean replace, String version)
      throws BadInput, IOException {
    List<List<String>> rows = ZoneTable.of(site.plan());
    String ending = name(out).toLowerCase(Locale.ROOT);
    if (!ending.endsWith(".xlsx") && !ending.endsWith(".csv")) {
      throw new BadInput(
          out.toString(),
          "the name tells no format",
          "a name that ends in .csv or .xlsx",
          "rename it");
    }
    OutputFile.write(
        out,
        ending.endsWith(".xlsx")
            ? TableWriter.xlsx(Map.of("Zones", rows), "Keenward " + version)
            : TableWriter.csv(rows),
        replace);
  }

  private static String name(Path file) {
    return Optional.ofNullable(file.getFileName()).map(Path::toString).orElse("list");
  }

  private static String stem(Path list) {
    String name = name(list);
    int dot = name.lastIndexOf('.');
    String stem = (dot > 0 ? name.substring(0, dot) : name).strip();
    return stem.isEmpty() ? "Imported list" : stem;
  }
}
