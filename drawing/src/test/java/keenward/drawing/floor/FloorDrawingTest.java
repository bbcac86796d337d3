package keenward.drawing.floor;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import keenward.core.building.Building;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Hinge;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Swing;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.Involved;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Svg;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class FloorDrawingTest {

  private static String draw(SitePlan plan, String floor, FloorOptions options) {
    return FloorDrawing.svg(plan, Building.of(plan), floor, options).orElseThrow();
  }

  private static Document parse(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)));
    } catch (IOException | ParserConfigurationException | SAXException e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  private static List<Element> elements(Document document, String name) {
    List<Element> found = new ArrayList<>();
    var nodes = document.getElementsByTagName(name);
    for (int i = 0; i < nodes.getLength(); i++) {
      if (nodes.item(i) instanceof Element element) {
        found.add(element);
      }
    }
    return found;
  }

  private static List<String> texts(Document document) {
    return elements(document, "text").stream().map(Element::getTextContent).toList();
  }

  /**
   * The drawing as reviewed by eye. When it is meant to change, run with {@code -Dgolden=renew} and
   * look at the new picture.
   */
  @Test
  void theBakerysGroundFloorIsDrawnAsReviewed() throws IOException {
    String drawn = draw(SampleSites.bakery(), "Ground", FloorOptions.paper());
    if ("renew".equals(System.getProperty("golden"))) {
      Files.writeString(
          Path.of("src/test/resources/keenward/drawing/floor/bakery-ground.svg"), drawn);
    }
    try (InputStream golden = FloorDrawingTest.class.getResourceAsStream("bakery-ground.svg")) {
      assertThat(golden).isNotNull();
      assertThat(drawn).isEqualTo(new String(golden.readAllBytes(), UTF_8));
    }
  }

  @Test
  void theSameFloorIsDrawnTheSameWayTwice() {
    assertThat(draw(SampleSites.boathouse(), "River floor", FloorOptions.phone()))
        .isEqualTo(draw(SampleSites.boathouse(), "River floor", FloorOptions.phone()));
  }

  @Test
  void everyDrawingIsWellFormedWithUniqueIds() {
    for (SitePlan plan : List.of(SampleSites.bakery(), SampleSites.boathouse())) {
      for (String floor : FloorDrawing.floors(Building.of(plan))) {
        Document document = parse(draw(plan, floor, FloorOptions.desk().idPrefix("x-")));
        List<String> ids = new ArrayList<>();
        for (String name : List.of("g", "title", "desc")) {
          elements(document, name).stream()
              .map(element -> element.getAttribute("id"))
              .filter(id -> !id.isEmpty())
              .forEach(ids::add);
        }
        assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.startsWith("x-"));
      }
    }
  }

  @Test
  void peopleWhoDoNotSeeItAreToldWhatItShows() {
    Document document = parse(draw(SampleSites.bakery(), "Upper", FloorOptions.desk()));
    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby")).isEqualTo("title-upper described-upper");
    assertThat(elements(document, "title").getFirst().getTextContent())
        .isEqualTo("Upper, Lock Street Bakery");
    assertThat(elements(document, "desc").getFirst().getTextContent())
        .contains("Rooms: Living, Landing,", "Zones: 18 Living window, 19 Kitchen window,");
  }

  @Test
  void aDeviceCarriesItsZonesForThePage() {
    Document document = parse(draw(SampleSites.bakery(), "Upper", FloorOptions.desk()));
    assertThat(elements(document, "g"))
        .filteredOn(group -> group.getAttribute("data-device").equals("Living window contact"))
        .singleElement()
        .satisfies(group -> {
          assertThat(group.getAttribute("id")).isEqualTo("device-living-window-contact");
          assertThat(group.getAttribute("data-zone")).isEqualTo("18 19");
          assertThat(group.getAttribute("class")).isEqualTo("device intrusion");
          assertThat(group.getElementsByTagName("title").item(0).getTextContent())
              .isEqualTo(
                  "Zones 18 Living window, 19 Kitchen window: Living window contact (contact)");
          assertThat(group.getElementsByTagName("text").getLength()).isEqualTo(1);
          assertThat(group.getElementsByTagName("text").item(0).getTextContent())
              .isEqualTo("18, 19");
        });
  }

  @Test
  void theLegendHoldsWhatOccursAndNothingElse() {
    PlanSketch one =
        new PlanSketch("Kiosk")
            .room("Kiosk", RoomUse.SHOP, 0, 0, 4, 0, 4, 3, 0, 3)
            .opening("Window", OpeningKind.WINDOW, "Kiosk", "outside", 1, 1, 1)
            .floor("F", DrawingUnit.METRES)
            .device("Smoke", DeviceKind.SMOKE, "Kiosk", 2, 1.5);
    assertThat(texts(parse(draw(one.plan(), "F", FloorOptions.desk()))))
        .contains("smoke detector", "window", "outer wall")
        .doesNotContain(
            "zone number",
            "motion detector",
            "door",
            "inner wall",
            "control panel",
            "only the room is stated",
            "finding: error");
    one.zone(1, "Smoke", ZoneResponse.FIRE, "Smoke")
        .device("Pir", DeviceKind.MOTION, "Kiosk")
        .panel("Kiosk");
    FloorOptions marked =
        FloorOptions.desk().marks(List.of(new FloorMark("1", Severity.ERROR, Involved.zone(1))));
    assertThat(texts(parse(draw(one.plan(), "F", marked))))
        .contains(
            "zone number",
            "motion detector",
            "control panel",
            "only the room is stated",
            "finding: error");
  }

  @Test
  void paperHasNoVariablesAndAPageHasNothingElse() {
    assertThat(draw(SampleSites.bakery(), "Ground", FloorOptions.paper())).doesNotContain("var(");
    String page = draw(SampleSites.bakery(), "Ground", FloorOptions.desk());
    assertThat(page).contains("fill=\"var(--drawing-paper,#ffffff)\"");
    assertThat(page).doesNotContainPattern("(fill|stroke)=\"#");
  }

  @Test
  void aDoorShowsItsSwingOnlyWhenThePlanSaysWhichWay() {
    String known = draw(SampleSites.bakery(), "Ground", FloorOptions.desk());
    assertThat(group(known, "Yard door")).contains("A");
    String unknown = draw(SampleSites.boathouse(), "River floor", FloorOptions.desk());
    assertThat(group(unknown, "Workshop door")).doesNotContain("A");
  }

  @Test
  void aLeafOpensToTheSideAndHangsOnTheJambThatThePlanSays() {
    SitePlan plan =
        new PlanSketch("Doors")
            .room("Room", RoomUse.SHOP, 0, 0, 9, 0, 9, 9, 0, 9)
            .door("In", "Room", "outside", 1, 1, Hinge.LEFT, Swing.IN)
            .door("Out", "Room", "outside", 1, 4, Hinge.RIGHT, Swing.OUT)
            .floor("F", DrawingUnit.METRES)
            .plan();
    Building building = Building.of(plan);
    var layout = FloorLayout.of(plan, building, building.floors().getFirst(), FloorOptions.desk());
    // Facing the southern wall from inside, the east is on the left hand.
    OpeningShape.Leaf in = layout.openings().get(0).leaves().getFirst();
    assertThat(layout.frame().metres(in.hinge()).xMetres()).isCloseTo(1.9, within(1e-9));
    assertThat(layout.frame().metres(in.open()).yMetres()).isCloseTo(0.9, within(1e-9));
    OpeningShape.Leaf out = layout.openings().get(1).leaves().getFirst();
    assertThat(layout.frame().metres(out.hinge()).xMetres()).isCloseTo(4, within(1e-9));
    assertThat(layout.frame().metres(out.open()).yMetres()).isCloseTo(-0.9, within(1e-9));
    assertThat(in.shutsClockwise()).isFalse();
    assertThat(out.shutsClockwise()).isFalse();
  }

  /** Path data of an opening. */
  private static String group(String svg, String opening) {
    StringBuilder paths = new StringBuilder();
    for (Element group : elements(parse(svg), "g")) {
      if (group.getAttribute("data-opening").equals(opening)) {
        var children = group.getElementsByTagName("path");
        for (int i = 0; i < children.getLength(); i++) {
          paths.append(((Element) children.item(i)).getAttribute("d"));
        }
      }
    }
    assertThat(paths).isNotEmpty();
    return paths.toString();
  }

  @Test
  void namesFromThePlanCannotBreakOut() {
    String hostile = "\"/><script>alert('x')</script>&";
    SitePlan plan =
        new PlanSketch(hostile)
            .room(hostile, RoomUse.SHOP, 0, 0, 9, 0, 9, 9, 0, 9)
            .opening(hostile, OpeningKind.WINDOW, hostile, "outside", 1, 1, 1)
            .furniture(hostile, 1, 1, 8, 1, 8, 2, 1, 2)
            .floor(hostile, DrawingUnit.METRES)
            .device(hostile, DeviceKind.MOTION, hostile, 4, 4)
            .zone(1, hostile, ZoneResponse.INSTANT, hostile)
            .plan();
    Document document = parse(draw(plan, hostile, FloorOptions.desk()));
    assertThat(elements(document, "script")).isEmpty();
    assertThat(document.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(hostile + ", " + hostile);
  }

  @Test
  void whatLiesFarOffTheFloorIsNotedAndHarmsNothing() {
    SitePlan plan =
        new PlanSketch("Far")
            .room("Room", RoomUse.SHOP, 0, 0, 9, 0, 9, 9, 0, 9)
            .furniture("Table", 1, 1, 1e12, 1, 8, 2)
            .furniture("Ghost", 1, Double.NaN, 2, 1, 8, 2)
            .floor("F", DrawingUnit.METRES)
            .device("Lost", DeviceKind.MOTION, "Room", 1e9, 4)
            .device("Nowhere", DeviceKind.MOTION, "Room", Double.NaN, 4)
            .plan();
    assertThat(texts(parse(draw(plan, "F", FloorOptions.paper()))))
        .contains(
            "No room on the drawing for: Lost; Nowhere", "Furniture off the floor: Table; Ghost");
  }

  @Test
  void flagsAndLightsAreDrawnWhereThingsAre() {
    FloorOptions options =
        FloorOptions.desk()
            .lit(Set.of(5), Set.of("Yard door"))
            .marks(
                List.of(
                    new FloorMark("7", Severity.ERROR, Involved.zone(2)),
                    new FloorMark("8", Severity.WARNING, Involved.zone(20))));
    Document document = parse(draw(SampleSites.bakery(), "Ground", options));
    assertThat(elements(document, "g"))
        .filteredOn(group -> group.hasAttribute("data-mark"))
        .extracting(group -> group.getAttribute("data-mark"))
        // Zone 20 is on the other floor.
        .containsExactly("7");
    assertThat(elements(document, "g"))
        .filteredOn(group -> group.getAttribute("class").endsWith(" lit"))
        .extracting(group -> group.getAttribute("data-device") + group.getAttribute("data-opening"))
        .containsExactlyInAnyOrder("Shop motion", "Yard door");
  }

  @Test
  void sizesAreWholePixelsBecauseAPdfRendererReadsNoOther() {
    for (FloorOptions options :
        List.of(FloorOptions.desk(), FloorOptions.phone(), FloorOptions.paper())) {
      Element root = parse(draw(SampleSites.bakery(), "Ground", options)).getDocumentElement();
      assertThat(root.getAttribute("width")).matches("[0-9]+");
      assertThat(root.getAttribute("height")).matches("[0-9]+");
      assertThat(root.getAttribute("viewBox"))
          .isEqualTo("0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"));
    }
  }

  @Test
  void theScaleBarMeasuresInTheFloorsUnit() {
    assertThat(texts(parse(draw(SampleSites.bakery(), "Ground", FloorOptions.desk()))))
        .contains("2 m");
    SitePlan boathouse = SampleSites.boathouse();
    String svg = draw(boathouse, "River floor", FloorOptions.desk());
    assertThat(texts(parse(svg))).contains("10 ft");
    Building building = Building.of(boathouse);
    double scale =
        FloorLayout.of(boathouse, building, building.floors().getFirst(), FloorOptions.desk())
            .frame()
            .scale();
    // Both halves together are 10 ft of 0.3048 m.
    assertThat(svg).contains("width=\"" + Svg.number(scale * 3.048 / 2) + "\" height=\"5\"");
  }

  @Test
  void aFloorWithoutOutlinesHasNoDrawing() {
    SitePlan plan =
        new PlanSketch("Bare").room("Room", RoomUse.SHOP).floor("F", DrawingUnit.METRES).plan();
    Building building = Building.of(plan);
    assertThat(FloorDrawing.floors(building)).isEmpty();
    assertThat(FloorDrawing.svg(plan, building, "F", FloorOptions.desk())).isEmpty();
    assertThat(FloorDrawing.svg(plan, building, "G", FloorOptions.desk())).isEmpty();
  }

  @Test
  void aSiteWithoutADrawingGetsBoxesAndTheLineToAdd() {
    SitePlan plan =
        new PlanSketch("Kiosk")
            .room("Room", RoomUse.SHOP)
            .room("Yard", RoomUse.OTHER)
            .floor("F", DrawingUnit.METRES)
            .device("Smoke", DeviceKind.SMOKE, "Room")
            .zone(1, "Smoke", ZoneResponse.FIRE, "Smoke")
            .zone(2, "Door & <hatch>", ZoneResponse.ENTRY_EXIT, DeviceKind.CONTACT)
            .plan();
    String svg =
        SchematicDrawing.svg(
            plan, Building.of(plan), FloorOptions.phone().lit(Set.of(2), Set.of()));
    Document document = parse(svg);
    assertThat(texts(document))
        .containsExactly(
            "Kiosk",
            "No drawing: add floors: with rooms and their outlines",
            "Room",
            "1",
            "Smoke",
            "Yard",
            "no zones",
            "No room stated",
            "2",
            "Door & <hatch>");
    assertThat(elements(document, "g"))
        .filteredOn(group -> group.getAttribute("class").equals("zone lit"))
        .singleElement()
        .satisfies(group -> assertThat(group.getAttribute("data-zone")).isEqualTo("2"));
  }
}
