package keenward.core.proof;

import java.util.ArrayList;
import java.util.List;
import keenward.core.building.contact.ContactTrip;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneDevice;

/**
 * How each kind of device is made to respond, and the cautions that go with it; common practice, no
 * source.
 */
final class ZoneActions {
  /** Inputs whose name tells what they are, whatever the device. */
  private static final String LID_INPUT = "lid";

  private static final String TERMINALS_INPUT = "terminals";
  private static final double OUT_OF_REACH_METRES = 2.0;

  private ZoneActions() {}

  /** What to do at an input of a device. */
  static String action(ZoneDevice watched) {
    return switch (watched) {
      case ZoneDevice.Unplaced unplaced ->
          sentence(unplaced.kind(), "the " + words(unplaced.kind()), "what the contact watches");
      case ZoneDevice.Fitted fitted -> action(fitted);
    };
  }

  /** What an input is called in lists. */
  static String input(ZoneDevice watched) {
    return switch (watched) {
      case ZoneDevice.Unplaced unplaced -> words(unplaced.kind());
      case ZoneDevice.Fitted fitted ->
          fitted.inputName().isEmpty()
              ? fitted.device().name()
              : fitted.device().name() + " (" + fitted.inputName() + ")";
    };
  }

  /** Cautions of working an input, without those of what it sets off. */
  static List<Caution> cautions(ZoneDevice watched) {
    List<Caution> cautions = new ArrayList<>();
    if (isLid(watched)) {
      addLadder(watched, cautions);
      return cautions;
    }
    switch (watched.kind()) {
      case SMOKE, HEAT -> cautions.add(Caution.NO_FLAME);
      case CARBON_MONOXIDE_DETECTOR -> cautions.add(Caution.TEST_GAS);
      case GLASS_BREAK -> cautions.add(Caution.NO_BREAKING);
      default -> {
        return cautions;
      }
    }
    addLadder(watched, cautions);
    return cautions;
  }

  /** Whether the input is a lid. */
  static boolean isLid(ZoneDevice watched) {
    return watched instanceof ZoneDevice.Fitted fitted
        && fitted.inputName().equalsIgnoreCase(LID_INPUT);
  }

  /** Whether a device has a lid input. */
  static boolean hasLid(Device device) {
    return device.traits().inputs().stream().anyMatch(input -> input.equalsIgnoreCase(LID_INPUT));
  }

  /** The same for a device that no zone uses by its lid. */
  static List<Caution> lidCautions(Device device) {
    return isHigh(device) ? List.of(Caution.LADDER) : List.of();
  }

  private static void addLadder(ZoneDevice watched, List<Caution> cautions) {
    if (watched instanceof ZoneDevice.Fitted fitted && isHigh(fitted.device())) {
      cautions.add(Caution.LADDER);
    }
  }

  private static boolean isHigh(Device device) {
    return device
        .height()
        .find()
        .filter(height -> height.metres() > OUT_OF_REACH_METRES)
        .isPresent();
  }

  private static String action(ZoneDevice.Fitted fitted) {
    Device device = fitted.device();
    String input = fitted.inputName();
    if (isLid(fitted)) {
      return "Open the lid of " + device.name() + ", then shut it.";
    }
    if (input.equalsIgnoreCase(TERMINALS_INPUT)) {
      return "Open what is wired to the terminals of " + device.name() + ", then shut it.";
    }
    String watchedOpening = device.opening().orElse("what " + device.name() + " watches");
    String sentence = sentence(fitted.kind(), device.name(), watchedOpening);
    return isFirstInput(fitted) ? sentence : sentence + " Use its input \"" + input + "\".";
  }

  /** Whether it is the input for what the device itself watches. */
  static boolean isFirstInput(ZoneDevice.Fitted fitted) {
    List<String> inputs = fitted.device().traits().inputs();
    return inputs.isEmpty() || inputs.getFirst().equals(fitted.inputName());
  }

  /** How a contact is opened of which it is known when it trips. */
  static String slowOpening(Device contact, ContactTrip trip) {
    return "Open "
        + contact.opening().orElse("what " + contact.name() + " watches")
        + " slowly: it trips before its edge stands "
        + Math.max(1, Math.round(1000 * trip.edgeMetres()))
        + " mm open. Then shut it.";
  }

  private static String sentence(DeviceKind kind, String device, String opening) {
    return switch (kind) {
      case CONTACT -> "Open " + opening + " by the width of a hand, then shut it.";
      case MOTION, DUAL_MOTION, CURTAIN ->
          "Stay out of sight of " + device + " until it rests, then walk across what it covers.";
      case BEAM -> "Walk through the beam of " + device + ".";
      case GLASS_BREAK -> "Use a glass-break tester at the far pane that " + device + " guards.";
      case SHOCK -> "Knock beside " + device + " as its maker's test says.";
      case SMOKE -> "Use test aerosol at " + device + " as its maker says, until it alarms.";
      case HEAT -> "Use a heat tester at " + device + " as its maker says, until it alarms.";
      case CARBON_MONOXIDE_DETECTOR ->
          "Use test gas at " + device + " as its maker says, until it alarms.";
      case CALL_POINT -> "Use the test key of " + device + ".";
      case HOLD_UP_BUTTON ->
          "Press " + device + " and hold it as long as it asks, then let go and reset it.";
      case MEDICAL_BUTTON -> "Press " + device + ", then reset it.";
      case TEMPERATURE ->
          "Bring " + device + " past its limit, or use the test function that its maker gives.";
      case WATER -> "Wet the sensor of " + device + " as its maker says, then dry it.";
      case LID -> "Open the enclosure watched by " + device + ", then shut it.";
      case KEY_SWITCH_CONTACT -> "Turn the key of " + device + ".";
      default -> "Make " + device + " respond as its maker's test says.";
    };
  }

  private static String words(DeviceKind kind) {
    return kind.word().replace('-', ' ');
  }
}
