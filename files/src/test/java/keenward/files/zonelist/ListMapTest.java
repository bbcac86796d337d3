package keenward.files.zonelist;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;
import keenward.files.Golden;
import keenward.files.table.Table;
import keenward.files.table.TableRow;
import org.junit.jupiter.api.Test;

class ListMapTest {

  private static final Path REFERENCE = Path.of("../docs/reference");

  private static ListMap map(String yaml) {
    ListMapReader.Reading reading = ListMapReader.read("map.yaml", yaml.getBytes(UTF_8));
    assertThat(reading.problems()).isEmpty();
    return reading.map().orElseThrow();
  }

  private static Table table(String... lines) {
    List<TableRow> rows =
        List.of(lines).stream()
            .map(line -> List.of(line.split("\\|", -1)))
            .map(cells -> new TableRow(0, cells))
            .toList();
    return new Table(
        java.util.stream.IntStream.range(0, rows.size())
            .mapToObj(i -> new TableRow(i + 1, rows.get(i).cells()))
            .toList(),
        List.of());
  }

  @Test
  void thePagesAreThoseOfTheShape() {
    Golden.assertSame(REFERENCE.resolve("list-map.md"), ListMapReference.page());
    Golden.assertSame(REFERENCE.resolve("list-map.schema.json"), ListMapReference.schema());
  }

  @Test
  void theExampleIsRead() {
    ListMap map = map(ListMapShape.ROOT.example());
    assertThat(map.headRow()).contains(4);
    assertThat(map.columns()).containsEntry("Wo", Column.PLACE).containsEntry("F", Column.SERIAL);
    assertThat(map.responses()).containsEntry("quick", ZoneResponse.INSTANT);
    assertThat(map.devices()).containsEntry("eye", DeviceKind.MOTION);
  }

  @Test
  void whatTheMapSaysWins() {
    ZoneList zones =
        ZoneListReader.read(
            table("Pos|Wo|Auge|Tut|X9", "1|Hall|eye|instant|K-7", "2|Stair|eye|slow|K-8"),
            map(
                """
                keenward-list: 1
                columns: { Pos: number, Wo: name, Auge: device, Tut: response, E: serial }
                responses: { slow: entry-exit, instant: follower }
                devices: { eye: motion }
                """));
    assertThat(zones.zones()).extracting(ListedZone::name).containsExactly("Hall", "Stair");
    assertThat(zones.zones())
        .extracting(ListedZone::response)
        .containsExactly(ZoneResponse.FOLLOWER, ZoneResponse.ENTRY_EXIT);
    assertThat(zones.zones().getFirst().devices())
        .containsExactly(new ListedZone.Sensor(DeviceKind.MOTION, true, "K-7"));
  }

  @Test
  void theRowOfHeadsCanBeNamed() {
    ZoneList zones =
        ZoneListReader.read(
            table("No|Name|Device", "x|y|z", "No|Device|Name", "1|pir|Hall"),
            map("keenward-list: 1\nhead row: 3\n"));
    assertThat(zones.zones()).extracting(ListedZone::name).containsExactly("Hall");
    assertThat(
            ZoneListReader.read(
                    table("No|Name|Device", "1|Hall|pir"), map("keenward-list: 1\nhead row: 99\n"))
                .notes())
        .anyMatch(note -> note.kind() == ListNote.Kind.PROBLEM && note.text().contains("row 99"));
  }

  @Test
  void everyFaultOfAMapIsSaidWithItsPlace() {
    ListMapReader.Reading reading =
        ListMapReader.read(
            "map.yaml",
            "keenward-list: 1\ncolumns: { Wo: plaice }\nresponses: { slow: entry }\nrow: 3\n"
                .getBytes(UTF_8));
    assertThat(reading.map()).isEmpty();
    assertThat(reading.problems())
        .extracting(Object::toString)
        .anySatisfy(text -> assertThat(text).startsWith("map.yaml:2:").contains("place"))
        .anySatisfy(text -> assertThat(text).startsWith("map.yaml:3:").contains("entry-exit"))
        .anySatisfy(text -> assertThat(text).startsWith("map.yaml:4:"));
  }
}
