package keenward.endtoend.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import keenward.core.building.Building;
import keenward.core.plan.SitePlan;
import keenward.core.rehearsal.planned.PlannedSystem;
import keenward.core.rehearsal.planned.StandardScenario;
import keenward.core.rehearsal.planned.StandardScenarios;
import keenward.core.rehearsal.planned.SystemModels;
import keenward.endtoend.Repository;
import keenward.files.plan.SitePlanReader;
import keenward.inbrowser.SystemText;
import org.junit.jupiter.api.Test;
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        """
        # Out in the morning, back too slowly, a window in between
        start 07:58
        arm away by Potter at Hall
        t+20 open "Street door"
        t+25 close "Street door"
        t+3600 open "Yard window"
        t+3660 close "Yard window"
        t+3700 open "Street door"
        t+3705 open "Passage motion"
        t+3740 disarm by Potter at Hall
        expect t+60 signal 3401
        """,
        """
        # A swinging detector, a smoke alarm over it, a hold-up that nobody hears
        start 23:59:30
        arm away by Potter at Hall
        t+100 open "Kiln room"
        t+110 close "Kiln room"
        t+200 open "Smoke loft"
        t+220 open "Desk button"
        t+400 open "Kiln room"
        t+410 close "Kiln room"
        t+900 open "Kiln room"
        t+1200 disarm by Potter at Hall
        """,
        "open \"Sreet door\"\nnonsense\n"
      })
  void scriptsDoTheSame(String script, Page page) {
    Object shown = evaluate(page, "rehearse", script);

    assertThat(shown).isEqualTo(keenward.inbrowser.Page.rehearse(script));
    assertThat(shown).asString().contains(":");
  }

  /** Real plans, mapped here, handed over as text and rehearsed there. */
  @Test
  void everyStandardScenarioOfTheDemoSitesGoesTheSame(Page page) throws IOException {
    open(page);
    int compared = 0;
    for (Path file : demoSites()) {
      SitePlan plan =
          SitePlanReader.read(file.toString(), Files.readAllBytes(file)).plan().orElseThrow();
      PlannedSystem system = SystemModels.from(plan);
      String text = SystemText.write(system.model());
      for (StandardScenario scenario :
          StandardScenarios.of(plan, system, Building.of(plan)).scenarios()) {
        Object shown =
            page.evaluate(
                "async both => (await import('/keenward.js')).rehearseSystem(both[0], both[1])",
                List.of(text, scenario.script()));

        assertThat(shown)
            .as("%s: %s", file, scenario.name())
            .isEqualTo(keenward.inbrowser.Page.rehearseSystem(text, scenario.script()));
        compared++;
      }
    }

    assertThat(compared).isGreaterThan(20);
  }

  private static List<Path> demoSites() throws IOException {
    try (Stream<Path> files = Files.walk(Repository.root().resolve("demo"))) {
      return files.filter(file -> file.toString().endsWith(".site.yaml")).sorted().toList();
    }
  }

  private static Object evaluate(Page page, String function, String argument) {
    open(page);
    return page.evaluate(
        "async text => (await import('/keenward.js'))." + function + "(text)", argument);
  }

  private static void open(Page page) {
    page.route(PLACE + "**", CompiledCoreTest::answer);
    page.navigate(PLACE);
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
