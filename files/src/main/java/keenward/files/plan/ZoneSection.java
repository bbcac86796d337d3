package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ContactForm;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.LoopCable;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.Partition;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import keenward.core.quantities.Resistance;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** Zones. */
final class ZoneSection {

  /** A device as a zone names it, and the input; the input is empty when the zone does not say. */
  record Watched(String device, Fact<String> input) {}

  static final Field<String> WATCHED_DEVICE =
      required("device", Common.device(), "Shop door contact", "Device of the plan.");
  static final Field<String> WATCHED_INPUT =
      optional("input", Shapes.text(30), "terminals", "Name of its input.")
          .usual("its first input");
  static final MapShape WATCHED =
      MapShape.of("zone device", "An input of a device.", WATCHED_DEVICE, WATCHED_INPUT);

  private static final Shape<Watched> DEVICE_NAME =
      Common.device()
          .orWords(Arrays.stream(DeviceKind.values()).map(DeviceKind::word).toList())
          .as(name -> new Watched(name, Fact.missing()));
  private static final Shape<Watched> DEVICE_MAP =
      WATCHED.as(fields -> new Watched(fields.get(WATCHED_DEVICE), fields.given(WATCHED_INPUT)));

  static final Field<String> NAME =
      required("name", Shapes.text(60), "Shop door", "Name at the keypad and on paper.");
  static final Field<ZoneResponse> RESPONSE =
      required(
          "response",
          Shapes.word(ZoneResponse.class),
          "entry-exit",
          "What the system does when the zone is violated.");
  static final Field<List<String>> PARTITION =
      optional(
              "partition",
              Shapes.oneOrMore(Common.partition()),
              "Shop",
              "The partition, or a list of the partitions, that it belongs to.")
          .usual("the only one");
  static final Field<Watched> DEVICE =
      optional(
          "device",
          Shapes.<Watched>either(DEVICE_NAME, DEVICE_MAP),
          "Shop door contact",
          "What it watches: a device of the plan, one of its inputs, or a plain kind that stands for a device not placed"
              + " yet.");
  static final Field<List<Watched>> DEVICES =
      optional(
          "devices",
          Shapes.list(Shapes.<Watched>either(DEVICE_NAME, DEVICE_MAP)).of(1, 99),
          "[Shop motion, { device: Shop door contact, input: terminals }]",
          "Instead of `device`, when it watches several.");
  static final Field<Fact<LoopWiring>> WIRING =
      optional(
          "wiring",
          Shapes.word(LoopWiring.class).orUnknown(),
          "double resistor",
          "How the loop is supervised; nothing for radio and bus devices.");
  static final Field<List<Resistance>> RESISTORS =
      optional(
          "resistors",
          Shapes.list(Shapes.quantity(Resistance::parse, Resistance.units())).of(1, 9),
          "[4.7 kohm, 4.7 kohm]",
          "Resistor values of the loop.");
  static final Field<Fact<ContactForm>> CONTACT =
      optional(
          "contact",
          Shapes.word(ContactForm.class).orUnknown(),
          "normally-closed",
          "State of the contact at rest.");
  static final Field<Fact<Length>> LOOP_LENGTH =
      optional("length", Common.length(), "40 m", "Length one way.");
  static final Field<Fact<Conductor>> LOOP_CONDUCTOR =
      optional(
          "conductor",
          Shapes.quantity(Conductor::parse, Conductor.units()).orUnknown(),
          "0.22 mm2",
          "Size of each core.");
  static final MapShape LOOP_CABLE_SHAPE =
      MapShape.of(
          "loop cable",
          "The two cores from the panel to the far end of the loop.",
          LOOP_LENGTH,
          LOOP_CONDUCTOR);
  static final Field<Fact<LoopCable>> LOOP_CABLE =
      optional(
          "loop cable",
          LOOP_CABLE_SHAPE.as(ZoneSection::loopCable).orUnknown(),
          "",
          "The cable of its loop; `loops` counts with it.");
  static final Field<List<ArmingMode>> LIVE_IN =
      optional(
              "live in",
              Shapes.list(Shapes.word(ArmingMode.class)).of(1, 3).withoutRepetition(),
              "[away]",
              "Arming modes in which it is live.")
          .usual("by its response");
  static final Field<Fact<Integer>> ENTRY_DELAY =
      optional(
              "entry delay",
              Shapes.wholeNumber(1, 9).orUnknown(),
              "1",
              "Number of the entry delay that it starts.")
          .usual("1");
  static final Field<Fact<Boolean>> BYPASS =
      optional("bypass", Common.yesNo(), "yes", "Whether a user may leave it out.");
  static final Field<Fact<Boolean>> FORCE_ARM =
      optional("force arm", Common.yesNo(), "yes", "Whether the system may arm while it is open.");
  static final Field<Fact<Boolean>> CHIME =
      optional("chime", Common.yesNo(), "yes", "Whether opening it while disarmed chimes.");
  static final Field<Fact<Integer>> SWINGER_LIMIT =
      optional(
              "swinger limit",
              Shapes.wholeNumber(0, 99).orUnknown(),
              "1",
              "Its own limit of alarms that are reported in one arming period.")
          .usual("the panel's");
  static final Field<Fact<Boolean>> SILENT =
      optional("silent", Common.yesNo(), "no", "Whether its alarm is silent on site.")
          .usual("by its response");
  static final Field<List<Integer>> FOLLOWS =
      optional(
              "follows",
              Shapes.list(Common.zone()).of(1, 99).withoutRepetition(),
              "[1]",
              "Entry zones that release it as a follower.")
          .usual("any entry zone");
  static final Field<Fact<Integer>> EVENT =
      optional("event", Shapes.wholeNumber(100, 999).orUnknown(), "132", "DC-05 event code.")
          .usual("by response and device");
  static final Field<Fact<Boolean>> RESTORE =
      optional("restore", Common.yesNo(), "yes", "Whether the restore is reported.");
  static final Field<Fact<String>> REASON =
      optional(
          "reason",
          Common.line(),
          "the safe is never to be moved",
          "Why a choice that the checks would question is right here.");
  static final Field<Fact<String>> NOTE = optional("note", Common.note(), "", "Anything else.");

  static final MapShape SHAPE =
      MapShape.of(
              "zone",
              "What the panel watches under one number, from 1. Hold-up, fire, carbon monoxide and medical zones call help:"
                  + " local code and the authority having jurisdiction come first.",
              NAME,
              RESPONSE,
              PARTITION,
              DEVICE,
              DEVICES,
              WIRING,
              RESISTORS,
              CONTACT,
              LOOP_CABLE,
              LIVE_IN,
              ENTRY_DELAY,
              BYPASS,
              FORCE_ARM,
              CHIME,
              SWINGER_LIMIT,
              SILENT,
              FOLLOWS,
              EVENT,
              RESTORE,
              REASON,
              NOTE)
          .example(
              """
              zones:
                1: { name: Shop door, response: entry-exit, device: Shop door contact, entry delay: 1, chime: yes }
                2:
                  name: Shop motion
                  response: follower
                  devices: [Shop motion, { device: Shop door contact, input: terminals }]
                  wiring: double resistor
                  resistors: [4.7 kohm, 4.7 kohm]
                  contact: normally-closed
                  live in: [away]
                  bypass: yes
                  swinger limit: 1
                  follows: [1]
                  event: 132
                3: { name: Counter button, response: hold-up, device: hold-up-button }
              devices:
                Shop door contact: { kind: contact, wiring: radio, inputs: [contact, terminals, lid] }
                Shop motion: { kind: motion }
              """);

  private ZoneSection() {}

  /** Everything that the zone says it watches. */
  static List<Watched> watched(Fields fields) {
    return Stream.concat(fields.find(DEVICE).stream(), fields.list(DEVICES).stream()).toList();
  }

  private static LoopCable loopCable(Fields fields) {
    return new LoopCable(fields.fact(LOOP_LENGTH), fields.fact(LOOP_CONDUCTOR));
  }

  static Zone bind(
      int number, Fields fields, List<Partition> partitions, Map<String, Device> devices) {
    return new Zone(
        number,
        fields.get(NAME),
        fields.get(RESPONSE),
        fields.find(PARTITION).orElseGet(() -> List.of(partitions.getFirst().name())),
        watched(fields).stream().map(each -> device(each, devices)).toList(),
        fields.fact(WIRING),
        fields.list(RESISTORS),
        fields.fact(CONTACT),
        fields.fact(LOOP_CABLE),
        fields.list(LIVE_IN),
        fields.fact(ENTRY_DELAY),
        fields.fact(BYPASS),
        fields.fact(FORCE_ARM),
        fields.fact(CHIME),
        fields.fact(SWINGER_LIMIT),
        fields.fact(SILENT),
        fields.list(FOLLOWS),
        fields.fact(EVENT),
        fields.fact(RESTORE),
        fields.fact(REASON),
        fields.fact(NOTE));
  }

  private static ZoneDevice device(Watched watched, Map<String, Device> devices) {
    Device device = devices.get(watched.device());
    if (device != null) {
      return new ZoneDevice.Fitted(device, watched.input());
    }
    return Arrays.stream(DeviceKind.values())
        .filter(kind -> kind.word().equals(watched.device()))
        .findFirst()
        .map(ZoneDevice.Unplaced::new)
        .orElseThrow(() -> new IllegalStateException("neither device nor kind: " + watched));
  }
}
