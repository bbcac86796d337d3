package keenward.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import keenward.core.building.placing.Wish;
import keenward.usecases.job.Keenward;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pack.PaperPack;
import keenward.usecases.pictures.Pictures;
import keenward.usecases.rehearse.RehearsedScenario;
import keenward.usecases.site.BadInput;
import keenward.usecases.suggest.SiteSuggestion;
import keenward.usecases.trace.TracedFloor;
import org.jspecify.annotations.Nullable;

/** The local web pages, from start to stop. */
public final class Workbench implements AutoCloseable {

  private static final String STYLE = style();
  private static final String LOOPBACK = "127.0.0.1";

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "keenward.web.generated");
  private final Doorkeeper doorkeeper = new Doorkeeper();
  private final Bench bench;
  private final Javalin server;

  private Workbench(List<Path> sites, Keenward keenward, Clock clock, int port) {
    bench = new Bench(sites, keenward, clock);
    server = Javalin.create(config -> configure(config)).start(LOOPBACK, port);
  }

  /**
   * Serves the pages on this machine only.
   *
   * @param sites the site plans
   * @param keenward the use cases
   * @param clock where today comes from
   * @param port the port; 0 takes a free one
   */
  public static Workbench start(List<Path> sites, Keenward keenward, Clock clock, int port) {
    return new Workbench(List.copyOf(sites), keenward, clock, port);
  }

  /** The address to open, with the key to this start. */
  public String address() {
    return "http://" + LOOPBACK + ":" + server.port() + doorkeeper.firstPath();
  }

  /** Stops serving; requests under way are finished. */
  @Override
  public void close() {
    server.stop();
  }

  private void configure(JavalinConfig config) {
    config.concurrency.useVirtualThreads = true;
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.routes.before(doorkeeper::receive);
    config.routes.get(
        "/",
        request ->
            show(
                request,
                200,
                "start",
                Map.of("cards", bench.all().stream().map(Card::of).toList())));
    config.routes.get(
        "/assets/style.css",
        request -> request.contentType("text/css; charset=utf-8").result(STYLE));
    for (String script : List.of("light.js", "schedule.js", "trace.js")) {
      config.routes.get(
          "/assets/" + script,
          request -> request.contentType("text/javascript; charset=utf-8").result(asset(script)));
    }
    for (Stage stage : Stage.values()) {
      config.routes.get("/sites/{site}/" + stage.address(), request -> stage(request, stage));
    }
    config.routes.get("/sites/{site}/papers/{paper}", this::paper);
    config.routes.get("/sites/{site}/trace/{floor}", this::trace);
    config.routes.error(404, this::missing);
    config.routes.exception(Exception.class, (failure, request) -> fault(request));
  }

  private void stage(Context request, Stage stage) {
    Optional<Bench.Standing> found = bench.find(request.pathParam("site"));
    if (found.isEmpty()) {
      missing(request);
      return;
    }
    Bench.Standing standing = found.get();
    if (standing.find().isEmpty()) {
      show(request, 200, "broken", Map.of("card", Card.of(standing)));
      return;
    }
    SiteJob job = standing.find().get();
    Map<String, Object> values = new HashMap<>();
    values.put("page", new StagePage(standing.name(), job, stage));
    switch (stage) {
      case REHEARSAL -> {
        List<RehearsedScenario> scenarios = job.rehearsal().scenarios();
        int chosen = number(request.queryParam("scenario"), scenarios.size());
        values.put("chosen", chosen);
        values.put("scenario", scenarios.get(chosen));
      }
      case SUGGEST -> values.put("suggestion", suggestion(request, job));
      case PAPERS -> values.put("papers", PaperPack.list(job));
      case POWER ->
          values.put(
              "question",
              LoopQuestion.of(
                  job.site(),
                  number(request.queryParam("zone"), 100_000),
                  request.queryParam("measured")));
      case PLAN, FINDINGS, RADIO, ORDER, TESTS -> {
        // The page itself holds all that these show.
      }
    }
    show(request, 200, stage.address(), values);
  }

  private static SiteSuggestion suggestion(Context request, SiteJob job) {
    Wish wish =
        new Wish(
            Wish.USUAL.share(),
            "2".equals(request.queryParam("seen-by")) ? 2 : 1,
            List.of(),
            List.of(),
            "yes".equals(request.queryParam("afresh")));
    return SiteSuggestion.of(job.site(), wish);
  }

  /** A number asked for; 0 when it is none, or as large as a limit. */
  private static int number(@Nullable String asked, int limit) {
    if (asked == null || !asked.matches("[0-9]{1,5}")) {
      return 0;
    }
    int number = Integer.parseInt(asked);
    return number < limit ? number : 0;
  }

  private void paper(Context request) throws IOException {
    Optional<SiteJob> job = bench.find(request.pathParam("site")).flatMap(Bench.Standing::find);
    Optional<PaperFile> paper =
        job.isEmpty() ? Optional.empty() : PaperFile.find(job.get(), request.pathParam("paper"));
    if (paper.isEmpty()) {
      missing(request);
      return;
    }
    // A paper carries its own styles and no script, and stands on its own.
    request.header(
        "Content-Security-Policy",
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; frame-ancestors 'none'");
    paper.get().answer(request);
  }

  private void trace(Context request) {
    Optional<Bench.Standing> found = bench.find(request.pathParam("site"));
    Optional<SiteJob> job = found.flatMap(Bench.Standing::find);
    List<String> floors = job.map(each -> TracedFloor.floors(each.site().plan())).orElse(List.of());
    int number = number(request.pathParam("floor"), floors.size() + 1);
    if (number == 0) {
      missing(request);
      return;
    }
    String floor = floors.get(number - 1);
    StagePage page = new StagePage(found.orElseThrow().name(), job.orElseThrow(), Stage.PLAN);
    try {
      show(
          request,
          200,
          "trace",
          Map.of("page", page, "traced", TracedFloor.of(page.job().site(), floor)));
    } catch (BadInput bad) {
      show(
          request,
          200,
          "message",
          Map.of(
              "title", "The picture cannot be shown", "words", String.join(" ", bad.messages())));
    }
  }

  private void missing(Context request) {
    show(
        request,
        404,
        "message",
        Map.of("title", "Nothing here", "words", "There is no such page on this workbench."));
  }

  private void fault(Context request) {
    show(
        request,
        500,
        "message",
        Map.of(
            "title",
            "A fault in the program",
            "words",
            "This page could not be made. Please report it, with the plan that was open."));
  }

  private void show(Context request, int status, String template, Map<String, Object> values) {
    StringOutput page = new StringOutput();
    templates.render(template + ".jte", values, page);
    request.status(status).html(page.toString());
  }

  private static String style() {
    return Pictures.styles() + asset("style.css");
  }

  private static String asset(String name) {
    try (InputStream stream =
        Objects.requireNonNull(Workbench.class.getResourceAsStream(name), name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
