package keenward.inbrowser;

import org.teavm.jso.JSExport;

/** What a page may call: text in, text out, nothing kept in between. */
public final class Page {

  private Page() {}

  /**
   * Presses keys on the sample panel.
   *
   * @param keys as {@link KeyRun} reads them
   * @return one line for each key, as {@link KeyRun} writes them
   */
  @JSExport
  public static String pressKeys(String keys) {
    return new KeyRun(SamplePanel.description(), SamplePanel.KEYPAD).press(keys);
  }
}
