package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.dialogue.planned.PlanFact.Kind;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ContactForm;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.SignalPath;
import keenward.core.plan.UserRole;
import keenward.core.plan.Wiring;
import keenward.core.plan.Worded;
import keenward.core.plan.ZoneResponse;

/** Every fact of a site plan that a panel description may name after {@code from:}. */
public final class PlanFacts {
  private PlanFacts() {}

  /** All facts, in the order of the reference. */
  public static final List<PlanFact> ALL =
      List.of(
          new PlanFact(
              "zone.in use",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "yes for every zone of the plan"),
          new PlanFact("zone.name", Optional.of(PlanRecords.ZONES), Kind.TEXT, List.of(), "name"),
          new PlanFact(
              "zone.response",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              words(ZoneResponse.values()),
              "what it does when violated"),
          new PlanFact(
              "zone.partitions",
              Optional.of(PlanRecords.ZONES),
              Kind.NUMBERS,
              List.of(),
              "numbers of its partitions"),
          new PlanFact(
              "zone.wiring",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              words(Wiring.values()),
              "how its devices reach the panel"),
          new PlanFact(
              "zone.device.serial",
              Optional.of(PlanRecords.ZONES),
              Kind.TEXT,
              List.of(),
              "serial of its radio device, without spaces"),
          new PlanFact(
              "zone.device.input",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              List.of(),
              "input of its radio device, by the plan's name for it"),
          new PlanFact(
              "zone.device.kind",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              words(DeviceKind.values()),
              "kind of its devices"),
          new PlanFact(
              "zone.loop",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              words(LoopWiring.values()),
              "how its loop is supervised"),
          new PlanFact(
              "zone.contact",
              Optional.of(PlanRecords.ZONES),
              Kind.WORD,
              words(ContactForm.values()),
              "state of its contact at rest"),
          new PlanFact(
              "zone.live in",
              Optional.of(PlanRecords.ZONES),
              Kind.WORDS,
              words(ArmingMode.values()),
              "arming modes in which it is live: as stated, or by its response; not for responses that are always live"),
          new PlanFact(
              "zone.entry delay",
              Optional.of(PlanRecords.ZONES),
              Kind.NUMBER,
              List.of(),
              "number of the entry delay it starts"),
          new PlanFact(
              "zone.bypass",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether a user may leave it out"),
          new PlanFact(
              "zone.force arm",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether the system may arm while it is open"),
          new PlanFact(
              "zone.chime",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether it chimes"),
          new PlanFact(
              "zone.silent",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether its alarm is silent on site"),
          new PlanFact(
              "zone.restore",
              Optional.of(PlanRecords.ZONES),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether its restore is reported"),
          new PlanFact(
              "zone.swinger limit",
              Optional.of(PlanRecords.ZONES),
              Kind.NUMBER,
              List.of(),
              "its own limit of reported alarms"),
          new PlanFact(
              "zone.cross zone",
              Optional.of(PlanRecords.ZONES),
              Kind.NUMBER,
              List.of(),
              "number of its cross-zone group, from 1; 0 for none"),
          new PlanFact(
              "zone.follows",
              Optional.of(PlanRecords.ZONES),
              Kind.NUMBERS,
              List.of(),
              "entry zones that release it"),
          new PlanFact(
              "zone.event",
              Optional.of(PlanRecords.ZONES),
              Kind.TEXT,
              List.of(),
              "DC-05 event code, three digits"),
          new PlanFact(
              "partition.in use",
              Optional.of(PlanRecords.PARTITIONS),
              Kind.YES_NO,
              List.of("yes", "no"),
              "yes for every partition of the plan"),
          new PlanFact(
              "partition.name", Optional.of(PlanRecords.PARTITIONS), Kind.TEXT, List.of(), "name"),
          new PlanFact(
              "partition.common to",
              Optional.of(PlanRecords.PARTITIONS),
              Kind.NUMBERS,
              List.of(),
              "numbers of the partitions whose common area it is"),
          new PlanFact(
              "user.in use",
              Optional.of(PlanRecords.USERS),
              Kind.YES_NO,
              List.of("yes", "no"),
              "yes for every user of the plan"),
          new PlanFact("user.name", Optional.of(PlanRecords.USERS), Kind.TEXT, List.of(), "name"),
          new PlanFact(
              "user.role",
              Optional.of(PlanRecords.USERS),
              Kind.WORD,
              words(UserRole.values()),
              "what they may do"),
          new PlanFact(
              "user.partitions",
              Optional.of(PlanRecords.USERS),
              Kind.NUMBERS,
              List.of(),
              "numbers of the partitions they may use"),
          new PlanFact(
              "user.may bypass",
              Optional.of(PlanRecords.USERS),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether they may leave zones out"),
          new PlanFact(
              "user.code",
              Optional.of(PlanRecords.USERS),
              Kind.CODE,
              List.of(),
              "their code, by reference"),
          new PlanFact(
              "keypad.name", Optional.of(PlanRecords.KEYPADS), Kind.TEXT, List.of(), "name"),
          new PlanFact(
              "keypad.partitions",
              Optional.of(PlanRecords.KEYPADS),
              Kind.NUMBERS,
              List.of(),
              "numbers of the partitions that it serves"),
          new PlanFact(
              "entry delay.time",
              Optional.of(PlanRecords.ENTRY_DELAYS),
              Kind.TIME,
              List.of(),
              "the delay"),
          new PlanFact("panel.exit time", Optional.empty(), Kind.TIME, List.of(), "exit time"),
          new PlanFact(
              "panel.sounder time",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long sounders run"),
          new PlanFact(
              "panel.abort window",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long a burglary signal is held back"),
          new PlanFact(
              "panel.cancel window",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long after an alarm a disarming sends a cancel"),
          new PlanFact(
              "panel.recent closing window",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how soon after arming an alarm counts as recent closing"),
          new PlanFact(
              "panel.swinger limit",
              Optional.empty(),
              Kind.NUMBER,
              List.of(),
              "reported alarms of one zone in one arming period; 0 for all"),
          new PlanFact(
              "panel.exit restart",
              Optional.empty(),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether re-opening the exit door restarts the exit time"),
          new PlanFact(
              "panel.automatic stay",
              Optional.empty(),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether arming away without leaving arms stay"),
          new PlanFact(
              "panel.mains failure report",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long mains may be absent before it is reported"),
          new PlanFact(
              "panel.radio supervision",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long a radio device may be silent"),
          new PlanFact(
              "panel.keypad lock-out.after",
              Optional.empty(),
              Kind.NUMBER,
              List.of(),
              "wrong codes after which a keypad stops listening; 0 for never"),
          new PlanFact(
              "panel.keypad lock-out.for",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "how long a keypad stops listening"),
          new PlanFact(
              "monitoring.account",
              Optional.empty(),
              Kind.TEXT,
              List.of(),
              "account at the monitoring centre"),
          new PlanFact(
              "monitoring.format",
              Optional.empty(),
              Kind.WORD,
              words(SignalFormat.values()),
              "event vocabulary"),
          new PlanFact(
              "monitoring.path 1",
              Optional.empty(),
              Kind.WORD,
              words(SignalPath.values()),
              "way to the centre, first choice"),
          new PlanFact(
              "monitoring.path 2",
              Optional.empty(),
              Kind.WORD,
              words(SignalPath.values(), "none"),
              "way to the centre, second choice; none where the plan has just one"),
          new PlanFact(
              "monitoring.polling",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "interval at which the path is polled"),
          new PlanFact(
              "monitoring.test every",
              Optional.empty(),
              Kind.TIME,
              List.of(),
              "interval of the test signal"),
          new PlanFact(
              "monitoring.openings and closings",
              Optional.empty(),
              Kind.YES_NO,
              List.of("yes", "no"),
              "whether openings and closings are reported"));

  /** The fact of this name. */
  public static Optional<PlanFact> find(String path) {
    return ALL.stream().filter(fact -> fact.path().equals(path)).findFirst();
  }

  private static List<String> words(Worded[] values, String... more) {
    List<String> words = new ArrayList<>();
    for (Worded value : values) {
      words.add(value.word());
    }
    words.addAll(List.of(more));
    return words;
  }
}
