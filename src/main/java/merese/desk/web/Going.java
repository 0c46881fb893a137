package merese.desk.web;

import io.javalin.http.Context;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;

/** Where a change that can be asked for on any page leads back to. */
public final class Going {
  private static final String CHANGES = "/changes";

  private Going() {}

  /** The page of this desk that a request came from, without the change that it told of. */
  public static String back(Context request) {
    String from = request.header("Referer");
    if (from == null) {
      return CHANGES;
    }
    URI uri;
    try {
      uri = URI.create(from);
    } catch (IllegalArgumentException e) {
      return CHANGES;
    }
    String path = uri.getRawPath();
    boolean ours =
        "http".equals(uri.getScheme())
            && uri.getRawAuthority() != null
            && uri.getRawAuthority().equals(request.header("Host"));
    // A second slash would name another host.
    if (!ours || path == null || !path.startsWith("/") || path.startsWith("//")) {
      return CHANGES;
    }
    if (path.equals("/undo")) {
      return CHANGES; // that is no page
    }
    String query = without(uri.getRawQuery(), Site.DONE);
    return query.isEmpty() ? path : path + "?" + query;
  }

  private static String without(String query, String name) {
    if (query == null) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    for (String part : query.split("&", -1)) {
      if (!part.startsWith(name + "=") && !part.isEmpty()) {
        parts.add(part);
      }
    }
    return String.join("&", parts);
  }
}
