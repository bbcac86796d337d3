package keenward.endtoend.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The machine's own Chromium, started; `KEENWARD_CHROMIUM` says where it is when it is elsewhere.
 */
record OneBrowser(Playwright playwright, Browser browser) implements AutoCloseable {

  private static final String USUAL_PLACE = "/usr/bin/chromium";

  static OneBrowser launch() {
    Path program =
        Path.of(Objects.requireNonNullElse(System.getenv("KEENWARD_CHROMIUM"), USUAL_PLACE));
    if (!Files.isExecutable(program)) {
      throw new IllegalStateException(
          "the tests in a browser need Chromium, and there is none at "
              + program
              + ": install it (Debian: apt-get install chromium), or set KEENWARD_CHROMIUM");
    }
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Browser browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(program)
                    .setArgs(List.of("--no-sandbox")));
    return new OneBrowser(playwright, browser);
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
