package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import java.util.Map;
import keenward.core.plan.Fact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.PanelSettings;
import keenward.core.plan.Regime;
import keenward.core.plan.Service;
import keenward.core.plan.Site;
import keenward.core.plan.UnplacedRow;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.JsonSchema;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.ReferencePage;
import keenward.files.shape.Shapes;

/** The whole format of a site plan file, its JSON Schema and its reference page. */
public final class SitePlanShape {

  /** The version of the format that this program reads. */
  public static final int VERSION = 1;

  static final Field<Integer> KEENWARD =
      required(
          "keenward", Shapes.wholeNumber(VERSION, VERSION), "" + VERSION, "Version of the format.");
  static final Field<Site> SITE =
      required("site", SiteSection.VALUE, "Mill Cottage Pottery", "The site as a whole.");
  static final Field<List<Regime>> REGIME =
      optional(
              "regime",
              RegimeSection.VALUE,
              "[cp-01 2010, en50131 grade 2]",
              "Published rules that the site has to meet. Of several, the strictest figure rules, and the checks say where"
                  + " they disagree.")
          .usual("none");
  static final Field<Fact<Monitoring>> MONITORING =
      optional(
          "monitoring",
          MonitoringSection.SHAPE.as(MonitoringSection::bind).orUnknown(),
          "",
          "The account at the monitoring centre.");
  static final Field<Map<String, Fields>> PEOPLE =
      optional(
          "people",
          Shapes.names(NameKey.name("a person"), PeopleSection.PERSON),
          "",
          "People and what they regularly do.");
  static final Field<Map<String, Fields>> FLOORS =
      optional(
          "floors",
          Shapes.names(NameKey.name("a floor"), FloorSection.SHAPE),
          "",
          "Floors, lowest first.");
  static final Field<Map<String, Fields>> TYPES =
      optional(
          "types",
          Shapes.names(NameKey.name("a device type"), Traits.TYPE),
          "",
          "Bought devices, described once.");
  static final Field<Map<String, Fields>> DEVICES =
      optional(
          "devices",
          Shapes.names(NameKey.name("a device"), DeviceSection.SHAPE),
          "",
          "Fitted devices.");
  static final Field<Map<String, Fields>> SUPPLIES =
      optional(
          "supplies",
          Shapes.names(NameKey.name("a supply"), PowerSection.SUPPLY),
          "",
          "Power supplies.");
  static final Field<Map<String, Fields>> JUNCTIONS =
      optional(
              "junctions",
              Shapes.names(NameKey.name("a junction"), PowerSection.JUNCTION),
              "",
              "Joint boxes.")
          .usual("none");
  static final Field<Map<String, Fields>> CABLES =
      optional(
          "cables",
          Shapes.names(NameKey.name("a cable"), PowerSection.CABLE),
          "",
          "Cables that carry power.");
  static final Field<PanelSettings> PANEL =
      optional(
          "panel",
          PanelSection.SHAPE.as(PanelSection::bind),
          "",
          "The control panel and its settings.");
  static final Field<Map<String, Fields>> PARTITIONS =
      optional(
              "partitions",
              Shapes.names(NameKey.name("a partition"), PartitionSection.SHAPE),
              "",
              "Parts that are armed on their own.")
          .usual("one partition");
  static final Field<Map<Integer, Fields>> ZONES =
      required(
          "zones",
          Shapes.names(NameKey.number("a zone's number", 5), ZoneSection.SHAPE),
          "{ 1: { name: Shop door, response: entry-exit } }",
          "Zones by number.");
  static final Field<Map<Integer, Fields>> USERS =
      optional(
          "users",
          Shapes.names(NameKey.number("a user's number", 3), UserSection.SHAPE),
          "",
          "Users by number.");
  static final Field<Fact<Service>> SERVICE =
      optional(
          "service", ServiceSection.SHAPE.as(ServiceSection::bind).orUnknown(), "", "Maintenance.");
  static final Field<List<UnplacedRow>> UNPLACED =
      optional(
              "unplaced",
              Shapes.list(ServiceSection.UNPLACED.as(ServiceSection::unplaced)),
              "",
              "Rows of an import that did not fit.")
          .usual("none");

  /** The shape of a whole file. */
  public static final MapShape ROOT =
      MapShape.of(
              "site plan",
              "Only `keenward`, `site` and `zones` are compulsory, and of a zone only name and response: everything that"
                  + " can be said about such a plan is said, and what cannot is *not assessed*, with the line to add.",
              KEENWARD,
              SITE,
              REGIME,
              MONITORING,
              PEOPLE,
              FLOORS,
              TYPES,
              DEVICES,
              SUPPLIES,
              JUNCTIONS,
              CABLES,
              PANEL,
              PARTITIONS,
              ZONES,
              USERS,
              SERVICE,
              UNPLACED)
          .example(
              """
              keenward: 1
              site: Mill Cottage Pottery
              regime: cp-01
              zones:
                1: { name: Shop door, response: entry-exit, device: contact }
                2: { name: Shop motion, response: follower, device: motion }
                3: { name: Counter button, response: hold-up }
              """);

  private static final String INTRODUCTION =
      """
      A site plan is one YAML file, `NAME.site.yaml`, in UTF-8. This page is generated from the shape that the reader
      itself uses; editors can use [site-plan.schema.json](site-plan.schema.json).

      - The YAML is small and strict: no anchors, aliases, merge keys, tags, tabs, second documents or names given twice;
        at most 4 MiB, 64 levels, 64 Ki characters a value and 60 characters a name.
      - A thing is named once, as a key, and referred to by that name; a name that is declared nowhere is an error.
      - Units are written as on site (`120 ft`, `36 m`, `22 AWG`, `7 Ah`, `45 s`) and kept so. A number of a quantity
        without its unit is an error.
      - `unknown` says that somebody still has to find out; a missing line says nothing. Both make sums say "at least"
        and checks say *not assessed*.
      - `yes` and `no` are the words for what is so or not.
      - Codes, keys and passwords never stand in a plan; nor do test results.
      """;

  private SitePlanShape() {}

  /** The JSON Schema of the format. */
  public static String jsonSchema() {
    return JsonSchema.of(ROOT, "urn:keenward:site-plan:" + VERSION, "Keenward site plan");
  }

  /** The reference page of the format, in Markdown. */
  public static String referencePage() {
    return ReferencePage.of(ROOT, "The site plan file", INTRODUCTION);
  }
}
