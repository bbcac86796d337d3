package keenward.core.plan;

/** What a device is. */
public enum DeviceKind implements Worded {
  /** Magnetic contact on an opening: magnet on the moving part, contact on the frame. */
  CONTACT("contact"),
  /** Passive infra-red motion detector. */
  MOTION("motion"),
  /** Motion detector of two technologies that alarms where both see. */
  DUAL_MOTION("dual-motion"),
  /** Motion detector with a narrow flat pattern. */
  CURTAIN("curtain"),
  /** Infra-red beam between two posts. */
  BEAM("beam"),
  /** Acoustic glass-break detector. */
  GLASS_BREAK("glass-break"),
  /** Vibration or seismic detector. */
  SHOCK("shock"),
  /** Smoke detector. */
  SMOKE("smoke"),
  /** Heat detector. */
  HEAT("heat"),
  /** Carbon monoxide detector. */
  CARBON_MONOXIDE_DETECTOR("carbon-monoxide-detector"),
  /** Manual fire call point. */
  CALL_POINT("call-point"),
  /** Button that asks for help under threat. */
  HOLD_UP_BUTTON("hold-up-button"),
  /** Button or pendant that asks for medical help. */
  MEDICAL_BUTTON("medical-button"),
  /** Temperature sensor with a limit. */
  TEMPERATURE("temperature"),
  /** Water or flood sensor. */
  WATER("water"),
  /** Tamper contact of a lid or enclosure. */
  LID("lid"),
  /** Key switch that arms and disarms. */
  KEY_SWITCH_CONTACT("key-switch-contact"),
  /** Keypad. */
  KEYPAD("keypad"),
  /** Portable radio control. */
  FOB("fob"),
  /** Inside sounder. */
  SOUNDER("sounder"),
  /** Outside sounder, with or without strobe. */
  SIREN("siren"),
  /** Flashing light. */
  STROBE("strobe"),
  /** Zone or output expander. */
  EXPANDER("expander"),
  /** Radio receiver or transceiver. */
  RECEIVER("receiver"),
  /** Radio repeater. */
  REPEATER("repeater"),
  /** Sender of signals to the monitoring centre. */
  COMMUNICATOR("communicator"),
  /** Output relay. */
  RELAY("relay");

  private final String word;

  DeviceKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
