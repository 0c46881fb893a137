package merese.desk.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;

/**
 * Lets in who sits at this machine and nobody else. A page of some other site that is open in the
 * same browser can send requests here, under our address or, where it has a name of its own lead
 * here, under that name; so what names another host or another origin is refused, and a change must
 * bring a token that only our own pages know.
 */
final class Gate {
  static final String TOKEN = "token";
  static final String TOKEN_HEADER = "X-Merese-Token";

  /** Nothing is loaded from elsewhere, and nothing that stands in a page is run. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final String EARLIER =
      "this page is of an earlier start of the desk; go back, copy what you typed, open the page"
          + " anew and send it again";

  private static final Set<HandlerType> READING =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

  private final String token;
  private Set<String> hosts = Set.of();

  Gate() {
    byte[] bytes = new byte[24];
    new SecureRandom().nextBytes(bytes);
    token = HexFormat.of().formatHex(bytes);
  }

  String token() {
    return token;
  }

  /** The port that is listened to is known only once the server runs. */
  void open(int port) {
    hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
  }

  /** Sets what every answer says to the browser, then refuses what is not ours. */
  void check(Context request, long mostBytes) {
    request.header("Content-Security-Policy", POLICY);
    request.header("X-Content-Type-Options", "nosniff");
    request.header("Referrer-Policy", "same-origin");
    request.header("Cross-Origin-Opener-Policy", "same-origin");
    request.header("Cross-Origin-Resource-Policy", "same-origin");
    request.header("Cache-Control", "no-store");
    String host = request.header("Host");
    if (host == null || !hosts.contains(host)) {
      throw new RefusedException(403, "this desk answers to its own address alone");
    }
    String origin = request.header("Origin");
    if (origin != null && !isOurs(origin)) {
      throw new RefusedException(403, "this request comes from another page");
    }
    boolean reads = READING.contains(request.method());
    String site = request.header("Sec-Fetch-Site");
    boolean foreign = "cross-site".equals(site) || "same-site".equals(site);
    boolean follows = reads && "navigate".equals(request.header("Sec-Fetch-Mode"));
    if (foreign && !follows) {
      throw new RefusedException(403, "this request comes from another page");
    }
    if (request.req().getContentLengthLong() > mostBytes) {
      throw new RefusedException(
          413,
          "more than "
              + (mostBytes >> 20)
              + " MB were sent; a picture may have 64 MB: export it smaller, as JPEG");
    }
    if (!reads) {
      checkToken(request);
    }
  }

  private boolean isOurs(String origin) {
    return origin.startsWith("http://") && hosts.contains(origin.substring("http://".length()));
  }

  private void checkToken(Context request) {
    String given = request.header(TOKEN_HEADER);
    if (given == null) {
      given = request.formParam(TOKEN);
    }
    if (given == null || !isSame(given, token)) {
      if (isFormOfOurs(request)) {
        throw new EarlierStartException(EARLIER);
      }
      throw new RefusedException(403, EARLIER);
    }
  }

  /** A browser says of each form which page it is on, and no page of another site can lie there. */
  private boolean isFormOfOurs(Context request) {
    String origin = request.header("Origin");
    return HandlerType.POST.equals(request.method())
        && request.header("HX-Request") == null
        && (request.isFormUrlencoded() || request.isMultipartFormData())
        && origin != null
        && isOurs(origin);
  }

  private static boolean isSame(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
