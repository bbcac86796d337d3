package keenward.files.panel;

/** The name of the file that describes a panel. */
public final class PanelFileName {
  /** What the names of such files end in. */
  public static final String ENDING = ".panel.yaml";

  private PanelFileName() {}

  /** The file name of a panel: {@code Marram 32} is described in {@code marram-32.panel.yaml}. */
  public static String of(String panel) {
    StringBuilder name = new StringBuilder();
    for (int place = 0; place < panel.length(); place++) {
      char character = Character.toLowerCase(panel.charAt(place));
      boolean plain = Character.isLetterOrDigit(character);
      if (plain) {
        name.append(character);
      } else if (!name.isEmpty() && name.charAt(name.length() - 1) != '-') {
        name.append('-');
      }
    }
    return name + ENDING;
  }
}
