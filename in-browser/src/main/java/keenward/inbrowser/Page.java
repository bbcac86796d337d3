package keenward.inbrowser;

import org.teavm.jso.JSExport;

/** What a page may call: text in, text out, nothing kept in between. */
public final class Page {

  private Page() {}

  /**
   * Plays a scenario script on the sample system.
   *
   * @param script as docs/reference/scenario-script.md describes it
   * @return the timeline with its reasons, or what is wrong with the script, as {@link ScriptRun}
   *     writes them
   */
  @JSExport
  public static String rehearse(String script) {
    return ScriptRun.play(SampleSystem.model(), script);
  }

  /**
   * Plays a scenario script on a system.
   *
   * @param system as {@link SystemText} writes it
   * @param script as docs/reference/scenario-script.md describes it
   * @return as {@link #rehearse}
   */
  @JSExport
  public static String rehearseSystem(String system, String script) {
    return ScriptRun.play(SystemText.read(system), script);
  }

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
