package merese.desk.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an address asks: its parts after the question mark, or the fields of a form. */
public final class Query {
  private static final int LONGEST = 100_000;

  private Query() {}

  /** A part that says something; empty where it is missing or blank. */
  public static Optional<String> text(Context request, String name) {
    return said(request.queryParam(name), name);
  }

  /** All parts of a name that say something. */
  public static List<String> texts(Context request, String name) {
    List<String> texts = new ArrayList<>();
    for (String each : request.queryParams(name)) {
      said(each, name).ifPresent(texts::add);
    }
    return texts;
  }

  public static boolean flag(Context request, String name) {
    return text(request, name).isPresent();
  }

  /** A field of a form that says something; empty where it is missing or blank. */
  public static Optional<String> field(Context request, String name) {
    return said(request.formParam(name), name);
  }

  private static Optional<String> said(String given, String name) {
    if (given == null || given.isBlank()) {
      return Optional.empty();
    }
    if (given.length() > LONGEST) {
      throw new FormException("\"" + name + "\" is longer than " + LONGEST + " letters");
    }
    return Optional.of(given.strip().replace("\r\n", "\n"));
  }
}
