package keenward.endtoend.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was compiled for the browser does there what it does here. */
@InBrowser
class CompiledCoreTest {

  /** A place that no network knows: the test itself answers for it. */
  private static final String PLACE = "http://page.invalid/";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "take-leave code:engineer take 4 5 take leave",
        "take-leave code:engineer next take 6 6 take 1 2 0 take next take leave",
        "take-leave code:guess take wait:30 take-leave code:engineer wait:1300",
        "nonsense 1 2 3 leave"
      })
  void keysDoTheSame(String keys, Page page) {
    Object shown = evaluate(page, "pressKeys", keys);

    assertThat(shown).isEqualTo(keenward.inbrowser.Page.pressKeys(keys));
  }

  private static Object evaluate(Page page, String function, String argument) {
    page.route(PLACE + "**", CompiledCoreTest::answer);
    page.navigate(PLACE);
    return page.evaluate(
        "async text => (await import('/keenward.js'))." + function + "(text)", argument);
  }

  private static void answer(Route route) {
    if (route.request().url().equals(PLACE + "keenward.js")) {
      route.fulfill(
          new Route.FulfillOptions().setContentType("text/javascript").setBodyBytes(compiled()));
    } else {
      route.fulfill(
          new Route.FulfillOptions().setContentType("text/html").setBody("<!doctype html>"));
    }
  }

  private static byte[] compiled() {
    try (InputStream stream =
        Objects.requireNonNull(keenward.inbrowser.Page.class.getResourceAsStream("keenward.js"))) {
      return stream.readAllBytes();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
