package keenward.core.rehearsal.scenario;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.Beep;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.Notice;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.Subject;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Tone;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.reporting.EventCodes;
import keenward.core.reporting.Qualifier;

/** Says in plain words what happens in one system. */
public final class Wording {

  private final SystemModel model;

  /** Words with the names of this system. */
  public Wording(SystemModel model) {
    this.model = model;
  }

  String zone(int index) {
    return name(Subject.ZONE, model.zones(), index, ZoneModel::name);
  }

  String partition(int index) {
    return name(Subject.PARTITION, model.partitions(), index, PartitionModel::name);
  }

  private String user(int index) {
    return name(Subject.USER, model.users(), index, UserModel::name);
  }

  private String keypad(int index) {
    return name(Subject.KEYPAD, model.keypads(), index, KeypadModel::name);
  }

  /** An input may name something outside the system; it is told all the same. */
  private static <T> String name(Subject kind, List<T> all, int index, Function<T, String> name) {
    return index >= 0 && index < all.size()
        ? name.apply(all.get(index))
        : "an unknown " + folded(kind.name());
  }

  private String atKeypad(int index) {
    return index == SystemModel.NONE ? "" : " at " + keypad(index);
  }

  private String inPartition(int index) {
    return index == SystemModel.NONE ? "" : " " + partition(index);
  }

  /** What is named by an index; empty text for the system as a whole. */
  String subject(Subject kind, int index) {
    if (index == SystemModel.NONE) {
      return "";
    }
    return switch (kind) {
      case ZONE -> zone(index);
      case PARTITION -> partition(index);
      case USER -> user(index);
      case KEYPAD -> keypad(index);
      case SYSTEM -> "";
    };
  }

  /** An input as a sentence. */
  public String input(Input input) {
    return switch (input) {
      case Input.Advance(int tenths) -> TimeText.length(tenths) + " pass";
      case Input.ZoneOpened(int zone) -> zone(zone) + " " + begins(zone);
      case Input.ZoneClosed(int zone) -> zone(zone) + " " + ends(zone);
      case Input.LidOpened(int zone) -> "lid of " + zone(zone) + " is opened";
      case Input.LidShut(int zone) -> "lid of " + zone(zone) + " is shut";
      case Input.RadioLost(int zone) -> zone(zone) + " falls silent";
      case Input.RadioHeard(int zone) -> zone(zone) + " is heard";
      case Input.Cell(int zone, boolean low) ->
          "cell of " + zone(zone) + (low ? " is low" : " is good");
      case Input.Code(int user, int keypad) -> user(user) + " enters a code" + atKeypad(keypad);
      case Input.WrongCode(int keypad) -> "a wrong code is entered" + atKeypad(keypad);
      case Input.Arm(int user, int keypad, int partition, ArmingMode mode, boolean forced) ->
          user(user)
              + " arms"
              + inPartition(partition)
              + " "
              + mode(mode)
              + (forced ? ", leaving open zones out," : "")
              + atKeypad(keypad);
      case Input.Disarm(int user, int keypad, int partition) ->
          user(user) + " disarms" + inPartition(partition) + atKeypad(keypad);
      case Input.Bypass(int user, int keypad, int zone) ->
          user(user) + " leaves " + zone(zone) + " out" + atKeypad(keypad);
      case Input.EndBypass(int user, int keypad, int zone) ->
          user(user) + " takes " + zone(zone) + " back in" + atKeypad(keypad);
      case Input.Isolate(int user, int zone, boolean out) ->
          user(user) + " takes " + zone(zone) + (out ? " out of service" : " back into service");
      case Input.Reset(int user, int keypad) -> user(user) + " resets" + atKeypad(keypad);
      case Input.PostponeArming(int user, int keypad, int tenths) ->
          user(user) + " puts arming off by " + TimeText.length(tenths) + atKeypad(keypad);
      case Input.ClockSet(int tenths) ->
          "the clock is set "
              + (tenths < 0 ? "back" : "forward")
              + " by "
              + TimeText.length(Math.abs(tenths));
      case Input.Mains(boolean present) -> present ? "mains comes back" : "mains fails";
      case Input.Battery(boolean low) -> low ? "the battery is low" : "the battery is good";
      case Input.Programming(boolean open) ->
          open ? "programming is opened" : "programming is to be left";
      case Input.Restart() -> "the panel starts again";
    };
  }

  private static String mode(ArmingMode mode) {
    return mode == ArmingMode.NIGHT ? "for the night" : mode.word();
  }

  private String begins(int zone) {
    if (zone < 0 || zone >= model.zones().size()) {
      return "is violated";
    }
    return switch (model.zones().get(zone).response()) {
      case ENTRY_EXIT, PERIMETER -> "opens";
      case HOLD_UP, MEDICAL -> "is pressed";
      case FIRE, CARBON_MONOXIDE -> "detects";
      case TECHNICAL -> "passes its limit";
      case KEY_SWITCH -> "is turned";
      case FOLLOWER, INSTANT, TWENTY_FOUR_HOUR, TAMPER -> "is violated";
    };
  }

  private String ends(int zone) {
    if (zone < 0 || zone >= model.zones().size()) {
      return "is at rest";
    }
    ZoneResponse response = model.zones().get(zone).response();
    return switch (response) {
      case ENTRY_EXIT, PERIMETER -> "closes";
      case HOLD_UP, MEDICAL -> "is released";
      case FIRE, CARBON_MONOXIDE -> "detects no more";
      case TECHNICAL -> "is within its limit";
      case KEY_SWITCH -> "is turned back";
      case FOLLOWER, INSTANT, TWENTY_FOUR_HOUR, TAMPER -> "is at rest";
    };
  }

  /** Where an output is noticed. */
  static RowKind kind(Output output) {
    return switch (output) {
      case Output.Signal ignored -> RowKind.SIGNAL;
      case Output.Sounder ignored -> RowKind.SOUNDER;
      case Output.Strobe ignored -> RowKind.STROBE;
      case Output.Annunciation ignored -> RowKind.KEYPAD_TONE;
      case Output.Display ignored -> RowKind.DISPLAY;
      case Output.Refused ignored -> RowKind.DISPLAY;
      case Output.Log ignored -> RowKind.LOG;
      case Output.NoEffect ignored -> RowKind.NO_EFFECT;
    };
  }

  /** An output in plain words. */
  public String output(Output output) {
    return switch (output) {
      case Output.Signal signal -> signal(signal);
      case Output.Sounder(Tone tone) -> tone.word();
      case Output.Strobe(boolean on) -> on ? "flashes" : "off";
      case Output.Annunciation(int partition, Beep beep, boolean on) ->
          partition(partition) + ": " + beep.word() + lasting(beep, on);
      case Output.Display(int ignored, Notice notice, int subject, int tenths) ->
          notice(notice, subject, tenths);
      case Output.Refused(int keypad, Notice notice, int subject) ->
          "refused" + atKeypad(keypad) + ": " + notice(notice, subject, 0);
      case Output.Log(Notice notice, int subject, int tenths) -> notice(notice, subject, tenths);
      case Output.NoEffect(int zone) -> zone(zone);
    };
  }

  private static String lasting(Beep beep, boolean on) {
    if (!beep.isLasting()) {
      return "";
    }
    return on ? " starts" : " ends";
  }

  private String notice(Notice notice, int subject, int tenths) {
    return filled(notice.phrase(), subject(notice.subject(), subject), tenths);
  }

  static String filled(String phrase, String subject, int tenths) {
    return phrase.replace("{subject}", subject).replace("{time}", TimeText.length(tenths));
  }

  /** Event, group and number as in a DC-05 message, and what they mean. */
  private String signal(Output.Signal signal) {
    int partition =
        signal.partition() == SystemModel.NONE
            ? 0
            : model.partitions().get(signal.partition()).number();
    String name = "";
    int number = 0;
    if (signal.zone() != SystemModel.NONE) {
      number = model.zones().get(signal.zone()).number();
      name = zone(signal.zone());
    } else if (signal.user() != SystemModel.NONE) {
      number = model.users().get(signal.user()).number();
      name = user(signal.user());
    }
    String meaning =
        EventCodes.find(signal.code())
            .map(code -> code.meaning() + qualified(signal, code.use()))
            .orElseGet(() -> EventCodes.meaning(signal.code()));
    return signal.qualifier()
        + digits(signal.code(), 3)
        + " "
        + digits(partition, 2)
        + " "
        + digits(number, 3)
        + " "
        + meaning
        + (name.isEmpty() ? "" : ": " + name);
  }

  private static String qualified(Output.Signal signal, keenward.core.reporting.QualifierUse use) {
    return Qualifier.find(signal.qualifier())
        .map(qualifier -> ", " + use.meaning(qualifier))
        .orElse("");
  }

  private static String digits(int number, int width) {
    String text = Integer.toString(number);
    return "0".repeat(Math.max(width - text.length(), 0)) + text;
  }

  /** A chain of reasons as one sentence; times are those of the clock. */
  String reason(Because because, int startTenths, int atTenths) {
    StringBuilder text = new StringBuilder("because ");
    text.append(root(because));
    int last = because.input().isPresent() ? because.atTenths() : -1;
    if (last >= 0 && because.atTenths() != atTenths) {
      text.append(" at ").append(TimeText.clock(startTenths + because.atTenths()));
    }
    String separator = ": ";
    for (Because.Step step : because.steps()) {
      text.append(separator);
      String subject = subject(step.behaviour().subject(), step.subject());
      text.append(filled(step.behaviour().because(), subject, step.tenths()));
      if (step.atTenths() != last && step.atTenths() != atTenths) {
        text.append(" at ").append(TimeText.clock(startTenths + step.atTenths()));
      }
      text.append(" [").append(step.behaviour().id()).append(']');
      for (Because given : step.given()) {
        text.append(given.input().isPresent() ? ", since " + root(given) : "");
        if (given.input().isPresent() && given.atTenths() != atTenths) {
          text.append(" at ").append(TimeText.clock(startTenths + given.atTenths()));
        }
      }
      last = step.atTenths();
      separator = "; ";
    }
    return text.toString();
  }

  private String root(Because because) {
    return because.input().map(this::input).orElse("time passed");
  }

  /** A name without regard to capitals. */
  static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
