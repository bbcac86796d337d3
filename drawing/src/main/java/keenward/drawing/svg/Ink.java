package keenward.drawing.svg;

/** What a colour is for, with the colour on paper and on a dark page. */
public enum Ink {
  PAPER("paper", "#ffffff", "#12171d"),
  TEXT("text", "#1f2933", "#e8edf2"),
  QUIET("quiet", "#55626f", "#a3b0bc"),
  RULE("rule", "#ccd3da", "#38434e"),
  WALL("wall", "#2b3642", "#cdd6de"),
  INNER_WALL("inner-wall", "#5b6875", "#98a6b3"),
  LIGHT_WALL("light-wall", "#8d99a5", "#74828f"),
  GLASS("glass", "#a9cfe0", "#47748a"),
  FURNITURE("furniture", "#e8e4da", "#2b3138"),
  FURNITURE_EDGE("furniture-edge", "#b5ad9c", "#59626b"),
  SWING("swing", "#7b8794", "#8593a0"),

  TRADE("trade", "#fbf4e4", "#2a2619"),
  WORK("work", "#f5efe6", "#28241d"),
  STORE("store", "#eff1ea", "#22261f"),
  COLD("cold", "#e7f1f7", "#18262e"),
  WAY("way", "#f3f5f7", "#1b2127"),
  LIVING("living", "#edf4e9", "#1d271b"),
  SLEEPING("sleeping", "#f1eef7", "#24212e"),
  WET("wet", "#e6f3f2", "#172827"),
  PLANT_ROOM("plant-room", "#f3eded", "#2a2020"),
  ANY_USE("any-use", "#f7f7f5", "#1f2224"),

  INTRUSION("intrusion", "#17588a", "#83c4ef"),
  PERSON("person", "#7b2a80", "#dfa3e6"),
  FIRE("fire", "#b0301a", "#ff9f8a"),
  GAS("gas", "#855600", "#e6b95f"),
  PLANT("plant", "#176b59", "#79cfb7"),
  GEAR("gear", "#3f4b57", "#bcc7d1"),

  WALK("walk", "#4636b8", "#b3a8ff"),
  SEEN("seen", "#2f7fb5", "#4f9fd0"),
  UNSEEN("unseen", "#7a4a12", "#e0a35a"),

  HIGHLIGHT("highlight", "#ffd24a", "#8a6d0f"),
  ERROR("error", "#a8071a", "#ff8d94"),
  WARNING("warning", "#8a4b00", "#f2b066"),
  NOTE("note", "#2f5d8c", "#8fbbe8");

  private final String word;
  private final String light;
  private final String dark;

  Ink(String word, String light, String dark) {
    this.word = word;
    this.light = light;
    this.dark = dark;
  }

  /** The custom property by which a page sets it. */
  public String property() {
    return "--drawing-" + word;
  }

  String light() {
    return light;
  }

  String dark() {
    return dark;
  }
}
