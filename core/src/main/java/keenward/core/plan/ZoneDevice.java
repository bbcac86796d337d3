package keenward.core.plan;

/**
 * What a zone watches: an input of a device of the plan, or a plain kind that stands for a device
 * not placed yet.
 */
public sealed interface ZoneDevice {

  /** What kind of device it is. */
  DeviceKind kind();

  /** The device in words, with its input where it names one. */
  default String words() {
    return switch (this) {
      case Unplaced unplaced -> "a " + unplaced.kind().word() + " not placed yet";
      case Fitted fitted ->
          fitted.device().name() + (fitted.inputName().isEmpty() ? "" : " / " + fitted.inputName());
    };
  }

  /**
   * An input of a device of the plan.
   *
   * @param device the device
   * @param input name of its input; missing means its first or only one
   */
  record Fitted(Device device, Fact<String> input) implements ZoneDevice {

    @Override
    public DeviceKind kind() {
      return device.kind();
    }

    /** The input in words; empty for the only input of a device that names none. */
    public String inputName() {
      return input
          .find()
          .orElseGet(
              () -> device.traits().inputs().isEmpty() ? "" : device.traits().inputs().getFirst());
    }
  }

  /**
   * A device that has no place in the plan yet.
   *
   * @param kind its kind
   */
  record Unplaced(DeviceKind kind) implements ZoneDevice {}
}
