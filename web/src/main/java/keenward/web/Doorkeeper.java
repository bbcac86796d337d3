package keenward.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only the person who started the program: requests must name this machine as host, and
 * carry the token of this start. See docs/decisions/0007-the-workbench-lets-in-who-started-it.md.
 */
final class Doorkeeper {

  private static final String COOKIE = "keenward-start";
  private static final int TOKEN_BYTES = 24;
  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

  private final String token;

  Doorkeeper() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    token = HexFormat.of().formatHex(bytes);
  }

  /** The address to open first, below the root. */
  String firstPath() {
    return "/?start=" + token;
  }

  /** Decides about a request before anything else does; what is refused is answered here. */
  void receive(Context request) {
    headers(request);
    int port = request.port();
    if (!Set.of("127.0.0.1:" + port, "localhost:" + port)
        .contains(String.valueOf(request.host()))) {
      refuse(request, 421, "This address is not this workbench's own.");
      return;
    }
    if (!READING.contains(request.method())) {
      refuse(request, 405, "The workbench only shows; it takes nothing.");
      return;
    }
    if (isToken(request.queryParam("start"))) {
      Cookie cookie = new Cookie(COOKIE, token);
      cookie.setHttpOnly(true);
      cookie.setSameSite(SameSite.STRICT);
      cookie.setPath("/");
      request.cookie(cookie);
      request.redirect(request.path());
      request.skipRemainingHandlers();
      return;
    }
    if (!isToken(request.cookie(COOKIE))) {
      refuse(
          request,
          403,
          "Open the address that `./keenward serve` printed: it carries the key to this start.");
    }
  }

  private boolean isToken(@Nullable String given) {
    return given != null
        && MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  private static void headers(Context request) {
    request.header(
        "Content-Security-Policy",
        "default-src 'none'; style-src 'self' 'unsafe-inline'; script-src 'self'; img-src 'self' data:; font-src 'self';"
            + " frame-ancestors 'none'; base-uri 'none'; form-action 'self'");
    request.header("X-Content-Type-Options", "nosniff");
    request.header("Referrer-Policy", "no-referrer");
    request.header("Cache-Control", "no-store");
    request.header("Cross-Origin-Resource-Policy", "same-origin");
  }

  private static void refuse(Context request, int status, String words) {
    request.status(status).contentType("text/plain; charset=utf-8").result(words + "\n");
    request.skipRemainingHandlers();
  }
}
