package keenward.drawing.floor;

import keenward.core.plan.DeviceKind;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Svg;

/**
 * The symbols of the drawing. The outline says what family a device is of, the mark inside which
 * kind, so that each is told apart without colour: square for what watches an opening, drop for
 * what watches a space (its tip in the direction it looks), hexagon for fire and gas, disc for
 * buttons that people press, diamond for plant and tampering, plate for equipment. Marks are path
 * data within a unit circle.
 */
enum Symbol {
  CONTACT("contact", Outline.SQUARE, Ink.INTRUSION, false, "M-.26,-.45V.45M.26,-.45V.45", ""),
  SHOCK(
      "shock detector",
      Outline.SQUARE,
      Ink.INTRUSION,
      false,
      "M-.55,0H-.3L-.12,-.42L.14,.42L.3,0H.55",
      ""),
  GLASS_BREAK(
      "glass-break detector",
      Outline.SQUARE,
      Ink.INTRUSION,
      false,
      "M-.05,0L-.5,-.5M-.05,0L.5,-.38M-.05,0L.34,.52M-.05,0L-.48,.36",
      ""),
  MOTION("motion detector", Outline.DROP, Ink.INTRUSION, false, "", dot(0, 0, .26)),
  DUAL_MOTION(
      "dual motion detector",
      Outline.DROP,
      Ink.INTRUSION,
      false,
      "",
      dot(-.25, 0, .19) + dot(.25, 0, .19)),
  CURTAIN("curtain detector", Outline.DROP, Ink.INTRUSION, false, "M0,-.36V.36", ""),
  BEAM("beam detector", Outline.DROP, Ink.INTRUSION, false, "M-.34,-.15H.34M-.34,.15H.34", ""),
  SMOKE(
      "smoke detector",
      Outline.HEXAGON,
      Ink.FIRE,
      true,
      "M-.5,-.16C-.28,-.42 -.2,.1 .02,-.16S.3,-.36 .5,-.16M-.5,.26C-.28,0 -.2,.52 .02,.26S.3,.06 .5,.26",
      ""),
  HEAT(
      "heat detector",
      Outline.HEXAGON,
      Ink.FIRE,
      true,
      "M-.4,.46H.4M0,.46V-.46M-.28,-.18L0,-.46L.28,-.18",
      ""),
  CARBON_MONOXIDE(
      "carbon monoxide detector",
      Outline.HEXAGON,
      Ink.GAS,
      false,
      "M-.5,0a.23,.23 0 1 0 .46,0a.23,.23 0 1 0 -.46,0M.04,0a.23,.23 0 1 0 .46,0a.23,.23 0 1 0 -.46,0",
      ""),
  CALL_POINT(
      "fire call point",
      Outline.HEXAGON,
      Ink.FIRE,
      true,
      "M-.46,0a.46,.46 0 1 0 .92,0a.46,.46 0 1 0 -.92,0",
      dot(0, 0, .2)),
  HOLD_UP("hold-up button", Outline.DISC, Ink.PERSON, true, "M0,-.5V.08", dot(0, .4, .14)),
  MEDICAL("medical button", Outline.DISC, Ink.PERSON, false, "M-.42,0H.42M0,-.42V.42", ""),
  TEMPERATURE(
      "temperature sensor", Outline.DIAMOND, Ink.PLANT, false, "M0,-.46V.1", dot(0, .26, .2)),
  WATER(
      "water sensor",
      Outline.DIAMOND,
      Ink.PLANT,
      false,
      "",
      "M0,-.5C.2,-.14 .32,0 .32,.16A.32,.32 0 0 1 -.32,.16C-.32,0 -.2,-.14 0,-.5Z"),
  LID("lid contact", Outline.DIAMOND, Ink.GEAR, false, "M-.4,.22H.4M-.4,.02L.36,-.3", ""),
  KEY_SWITCH(
      "key switch",
      Outline.DIAMOND,
      Ink.GEAR,
      false,
      "M-.46,0a.18,.18 0 1 0 .36,0a.18,.18 0 1 0 -.36,0M-.1,0H.46M.34,0V.22",
      ""),
  KEYPAD(
      "keypad",
      Outline.PLATE,
      Ink.GEAR,
      false,
      "",
      dot(-.5, -.26, .13)
          + dot(0, -.26, .13)
          + dot(.5, -.26, .13)
          + dot(-.5, .26, .13)
          + dot(0, .26, .13)
          + dot(.5, .26, .13)),
  FOB("radio control", Outline.PLATE, Ink.GEAR, false, "M-.3,0H.3", dot(-.5, 0, .16)),
  SOUNDER(
      "inside sounder",
      Outline.PLATE,
      Ink.GEAR,
      false,
      "M-.6,-.14V.14M-.2,-.36V.36M.2,-.2V.2M.6,-.42V.42",
      ""),
  SIREN(
      "outside sounder",
      Outline.PLATE,
      Ink.GEAR,
      true,
      "M.38,-.22V.22M.7,-.4V.4",
      "M-.7,0L.1,-.46V.46Z"),
  STROBE(
      "flashing light",
      Outline.PLATE,
      Ink.GEAR,
      true,
      "M0,-.5V.5M-.56,0H.56M-.38,-.34L.38,.34M-.38,.34L.38,-.34",
      ""),
  EXPANDER(
      "expander",
      Outline.PLATE,
      Ink.GEAR,
      false,
      "M-.7,0H-.1M-.1,-.4V.4M-.1,-.4H.6M-.1,0H.6M-.1,.4H.6",
      ""),
  RECEIVER(
      "radio receiver", Outline.PLATE, Ink.GEAR, false, "M0,.5V-.02M-.44,-.46L0,-.02L.44,-.46", ""),
  REPEATER(
      "radio repeater",
      Outline.PLATE,
      Ink.GEAR,
      false,
      "M-.6,-.4L-.2,0L-.6,.4M.15,-.4L.55,0L.15,.4",
      ""),
  COMMUNICATOR(
      "communicator",
      Outline.PLATE,
      Ink.GEAR,
      false,
      "M0,.2V-.5M-.26,-.24L0,-.5L.26,-.24M-.6,.12V.5H.6V.12",
      ""),
  RELAY("relay", Outline.PLATE, Ink.GEAR, false, "M-.8,.24H-.35L.3,-.34M.35,.24H.8", ""),
  PANEL(
      "control panel", Outline.CABINET, Ink.GEAR, true, "M-.85,-.4H.85M-.85,0H.85M-.85,.4H.2", ""),
  SUPPLY("power supply", Outline.CABINET, Ink.GEAR, false, "M-.9,0H-.3M.3,0H.9M.6,-.3V.3", ""),
  STAIR("stair", Outline.NONE, Ink.TEXT, false, "M-1.1,.7H-.55V.25H0V-.2H.55V-.65H1.1", "");

  /** The outline of a symbol, with half its extent in symbol radii. */
  enum Outline {
    SQUARE("M-.86,-.86H.86V.86H-.86Z", .95, .95),
    DROP("M-.6,-.36L0,-1.2L.6,-.36A.72,.72 0 1 1 -.6,-.36Z", 1.1, 1.1),
    HEXAGON("M-1,0L-.5,-.88H.5L1,0L.5,.88H-.5Z", 1.08, .98),
    DISC("M-.95,0a.95,.95 0 1 0 1.9,0a.95,.95 0 1 0 -1.9,0Z", 1.04, 1.04),
    DIAMOND("M0,-1.2L1.2,0L0,1.2L-1.2,0Z", 1.3, 1.3),
    PLATE(
        "M-1,-.8H1Q1.2,-.8 1.2,-.6V.6Q1.2,.8 1,.8H-1Q-1.2,.8 -1.2,.6V-.6Q-1.2,-.8 -1,-.8Z",
        1.3,
        .9),
    CABINET("M-1.35,-.9H1.35V.9H-1.35Z", 1.45, 1.0),
    NONE("", 1.2, .8);

    private final String path;
    private final double halfWidth;
    private final double halfHeight;

    Outline(String path, double halfWidth, double halfHeight) {
      this.path = path;
      this.halfWidth = halfWidth;
      this.halfHeight = halfHeight;
    }

    String path() {
      return path;
    }

    double halfWidth() {
      return halfWidth;
    }

    double halfHeight() {
      return halfHeight;
    }
  }

  private final String caption;
  private final Outline outline;
  private final Ink ink;
  private final boolean solid;
  private final String strokes;
  private final String fills;

  Symbol(String caption, Outline outline, Ink ink, boolean solid, String strokes, String fills) {
    this.caption = caption;
    this.outline = outline;
    this.ink = ink;
    this.solid = solid;
    this.strokes = strokes;
    this.fills = fills;
  }

  private static String dot(double x, double y, double radius) {
    String r = Svg.number(radius);
    String across = Svg.number(2 * radius);
    return "M"
        + Svg.number(x - radius)
        + ","
        + Svg.number(y)
        + "a"
        + r
        + ","
        + r
        + " 0 1 0 "
        + across
        + ",0a"
        + r
        + ","
        + r
        + " 0 1 0 -"
        + across
        + ",0Z";
  }

  static Symbol of(DeviceKind kind) {
    return switch (kind) {
      case CONTACT -> CONTACT;
      case MOTION -> MOTION;
      case DUAL_MOTION -> DUAL_MOTION;
      case CURTAIN -> CURTAIN;
      case BEAM -> BEAM;
      case GLASS_BREAK -> GLASS_BREAK;
      case SHOCK -> SHOCK;
      case SMOKE -> SMOKE;
      case HEAT -> HEAT;
      case CARBON_MONOXIDE_DETECTOR -> CARBON_MONOXIDE;
      case CALL_POINT -> CALL_POINT;
      case HOLD_UP_BUTTON -> HOLD_UP;
      case MEDICAL_BUTTON -> MEDICAL;
      case TEMPERATURE -> TEMPERATURE;
      case WATER -> WATER;
      case LID -> LID;
      case KEY_SWITCH_CONTACT -> KEY_SWITCH;
      case KEYPAD -> KEYPAD;
      case FOB -> FOB;
      case SOUNDER -> SOUNDER;
      case SIREN -> SIREN;
      case STROBE -> STROBE;
      case EXPANDER -> EXPANDER;
      case RECEIVER -> RECEIVER;
      case REPEATER -> REPEATER;
      case COMMUNICATOR -> COMMUNICATOR;
      case RELAY -> RELAY;
    };
  }

  /** What the legend calls it. */
  String caption() {
    return caption;
  }

  Outline outline() {
    return outline;
  }

  Ink ink() {
    return ink;
  }

  /** Whether the outline is filled with ink and the mark left out of it. */
  boolean isSolid() {
    return solid;
  }

  String strokes() {
    return strokes;
  }

  String fills() {
    return fills;
  }
}
