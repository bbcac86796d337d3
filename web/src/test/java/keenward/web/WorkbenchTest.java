package keenward.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import keenward.usecases.job.Keenward;
import keenward.usecases.panel.PanelFinder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorkbenchTest {

  private static final String PLAN =
      """
      keenward: 1
      site: "Kiosk <script>alert(1)</script>"
      zones:
        1: { name: "Door & <b>hatch</b>", response: entry-exit, device: contact }
        2: { name: Motion, response: follower, device: motion }
      """;

  @TempDir Path folder;
  private Path site;
  private Workbench workbench;
  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.ALWAYS)
          .build();

  @BeforeEach
  void start() throws IOException {
    site = Files.writeString(folder.resolve("kiosk.site.yaml"), PLAN);
    workbench =
        Workbench.start(
            List.of(site),
            new Keenward(new PanelFinder(folder), "0.1.0"),
            Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC),
            0);
  }

  @AfterEach
  void stop() {
    workbench.close();
  }

  @Test
  void showsTheSitesToWhoHasTheKey() throws Exception {
    HttpResponse<String> page = get(workbench.address());
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body())
        .contains("Sites on the bench", "Kiosk &lt;script&gt;")
        .doesNotContain("<script>alert");
    assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'");
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void showsAPageForEveryStage(Stage stage) throws Exception {
    get(workbench.address());
    HttpResponse<String> page = get("/sites/kiosk/" + stage.address());
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("aria-current=\"page\"").doesNotContain("<b>hatch</b>");
  }

  @Test
  void tellsWhatAMeasuredLoopMeans() throws Exception {
    get(workbench.address());
    Files.writeString(
        site,
        PLAN.replace(
            "device: contact }",
            "wiring: single resistor, resistors: [4.7 kohm], contact: normally-closed, device: contact }"));
    assertThat(get("/sites/kiosk/power").body()).contains("What a measured loop means");
    assertThat(get("/sites/kiosk/power?zone=1&measured=4700").body())
        .contains("The loop is at rest.");
    assertThat(get("/sites/kiosk/power?zone=1&measured=%3Cb%3E").body())
        .contains("&lt;b>")
        .doesNotContain("<b>\";");
    assertThat(get("/sites/kiosk/power?zone=9&measured=open").body()).contains("too little");
    assertThat(get("/sites/kiosk/power?zone=x&measured=open").statusCode()).isEqualTo(200);
  }

  @Test
  void saysWhyAPictureCannotBeTracedAndHasNoPageWithoutOne() throws Exception {
    get(workbench.address());
    assertThat(get("/sites/kiosk/trace/1").statusCode()).isEqualTo(404);

    Files.writeString(
        site,
        PLAN + "floors: { Ground: { backdrop: { picture: no.png } } }" + System.lineSeparator());
    assertThat(get("/sites/kiosk/plan").body()).contains("/sites/kiosk/trace/1");
    assertThat(get("/sites/kiosk/trace/1").body()).contains("no file 'no.png'");
    assertThat(get("/sites/kiosk/trace/2").statusCode()).isEqualTo(404);
    assertThat(get("/sites/kiosk/trace/0").statusCode()).isEqualTo(404);
  }

  @Test
  void refusesWhoHasNoKeyOrAWrongOne() throws Exception {
    HttpClient stranger = HttpClient.newHttpClient();
    for (String path :
        List.of("/", "/sites/kiosk/plan", "/assets/style.css", "/?start=" + "0".repeat(48))) {
      assertThat(
              stranger
                  .send(request(path).build(), HttpResponse.BodyHandlers.ofString())
                  .statusCode())
          .as(path)
          .isEqualTo(403);
    }
  }

  @Test
  void refusesAnotherHostName() throws IOException {
    URI address = URI.create(workbench.address());
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
      socket
          .getOutputStream()
          .write(
              ("GET "
                      + address.getPath()
                      + "?"
                      + address.getQuery()
                      + " HTTP/1.1\r\nHost: rebound.test\r\nConnection: close\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
          .startsWith("HTTP/1.1 421")
          .doesNotContain("keenward-start");
    }
  }

  @Test
  void takesNothing() throws Exception {
    get(workbench.address());
    HttpRequest post = request("/").POST(HttpRequest.BodyPublishers.ofString("x")).build();
    assertThat(client.send(post, HttpResponse.BodyHandlers.ofString()).statusCode()).isEqualTo(405);
  }

  @Test
  void saysThatThereIsNoSuchPage() throws Exception {
    get(workbench.address());
    for (String path :
        List.of(
            "/sites/none/plan",
            "/sites/kiosk/nothing",
            "/sites/kiosk/papers/..%2Fx",
            "/sites/kiosk/papers/x.html")) {
      HttpResponse<String> page = get(path);
      assertThat(page.statusCode()).as(path).isBetween(400, 404);
      assertThat(page.body()).doesNotContain("Exception", "\tat ");
    }
  }

  @Test
  void givesPapersAndTablesToFetch() throws Exception {
    get(workbench.address());
    for (String file : List.of("pack-a4.pdf", "pack-letter.pdf", "tables.xlsx", "findings.html")) {
      HttpResponse<String> fetched = get("/sites/kiosk/papers/" + file);
      assertThat(fetched.statusCode()).as(file).isEqualTo(200);
      assertThat(fetched.body()).as(file).isNotEmpty();
    }
    assertThat(get("/sites/kiosk/papers/tables.xlsx").body()).startsWith("PK");
  }

  @Test
  void followsTheFileAndSaysWhatIsWrongWithIt() throws Exception {
    get(workbench.address());
    Files.writeString(site, PLAN.replace("follower", "folower"));
    assertThat(get("/sites/kiosk/plan").body())
        .contains("cannot be used", "kiosk.site.yaml:5:", "follower");
    Files.writeString(site, PLAN.replace("Motion", "Movement"));
    assertThat(get("/sites/kiosk/plan").body()).contains("Movement");
  }

  @Test
  void answersManyAtOnce() throws Exception {
    get(workbench.address());
    List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
    List<Stage> quick = List.of(Stage.PLAN, Stage.FINDINGS, Stage.POWER, Stage.ORDER, Stage.TESTS);
    for (int number = 0; number < 50; number++) {
      answers.add(
          client.sendAsync(
              request("/sites/kiosk/" + quick.get(number % quick.size()).address()).build(),
              HttpResponse.BodyHandlers.ofString()));
    }
    for (CompletableFuture<HttpResponse<String>> answer : answers) {
      assertThat(answer.get().statusCode()).isEqualTo(200);
    }
  }

  private HttpResponse<String> get(String pathOrAddress) throws Exception {
    return client.send(request(pathOrAddress).build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String pathOrAddress) {
    return HttpRequest.newBuilder(URI.create(workbench.address()).resolve(pathOrAddress));
  }
}
