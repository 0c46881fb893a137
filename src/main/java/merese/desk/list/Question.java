package merese.desk.list;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.desk.web.FormException;
import merese.desk.web.Site;

/**
 * What an address asks, in its order: the order of the features is that of its parts, so that a
 * list can be put in order, kept and opened again by its address alone.
 */
public record Question(List<Part> parts) {
  private static final int LONGEST = 100_000;
  private static final Set<String> FEATURE = Set.of("term", "concept");

  /** A name with its value, as in an address. */
  public record Part(String name, String value) {
    boolean isFeature() {
      return FEATURE.contains(name);
    }
  }

  public Question {
    parts = List.copyOf(new LinkedHashSet<>(parts)); // a feature asked for twice is one
  }

  /**
   * Reads an address.
   *
   * @param known the names of parts that the page has, beside those of features
   * @throws FormException where a part is too long
   */
  static Question of(Context request, Set<String> known) {
    List<Part> parts = new ArrayList<>();
    String query = request.queryString();
    for (String each : query == null ? new String[0] : query.split("&")) {
      int equals = each.indexOf('=');
      String name = decoded(equals < 0 ? each : each.substring(0, equals));
      String value = equals < 0 ? "" : decoded(each.substring(equals + 1));
      if (value.length() > LONGEST) {
        throw new FormException("\"" + name + "\" is longer than " + LONGEST + " letters");
      }
      if (!value.isBlank() && (FEATURE.contains(name) || known.contains(name))) {
        parts.add(new Part(name, value.strip().replace("\r\n", "\n")));
      }
    }
    return new Question(parts);
  }

  private static String decoded(String part) {
    try {
      return URLDecoder.decode(part, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw new FormException("the address is not whole: \"" + part + "\" cannot be read");
    }
  }

  /** The first value of a name; "" where there is none. */
  public String get(String name) {
    List<String> all = all(name);
    return all.isEmpty() ? "" : all.get(0);
  }

  public List<String> all(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).map(Part::value).toList();
  }

  public boolean has(String name) {
    return !get(name).isEmpty();
  }

  /** The features, in their order. */
  public List<Part> features() {
    return parts.stream().filter(Part::isFeature).toList();
  }

  public boolean isEmpty() {
    return features().isEmpty() && !has("script");
  }

  /** With one value of a name in the place of any. */
  public Question with(String name, String value) {
    List<Part> others = new ArrayList<>(without(name).parts);
    others.add(new Part(name, value));
    return new Question(others);
  }

  public Question without(String name) {
    return new Question(parts.stream().filter(part -> !part.name().equals(name)).toList());
  }

  /** With another feature, or another reading of it, in the place of one. */
  public Question replacing(Part feature, String name, String value) {
    List<Part> others = new ArrayList<>(parts);
    others.set(others.indexOf(feature), new Part(name, value));
    return new Question(others);
  }

  public Question withoutFeature(Part feature) {
    return new Question(parts.stream().filter(part -> !part.equals(feature)).toList());
  }

  /**
   * With a feature at another place in the order.
   *
   * @param by -1 for one up, 1 for one down
   */
  public Question moved(Part feature, int by) {
    List<Part> features = new ArrayList<>(features());
    int from = features.indexOf(feature);
    int to = from + by;
    if (to < 0 || to >= features.size()) {
      return this;
    }
    features.set(from, features.get(to));
    features.set(to, feature);
    List<Part> all = new ArrayList<>(features);
    parts.stream().filter(part -> !part.isFeature()).forEach(all::add);
    return new Question(all);
  }

  /**
   * The address of a page that is asked this.
   *
   * @param path from the first slash; it may ask something itself
   */
  public String address(String path) {
    StringBuilder address = new StringBuilder(path);
    for (Part part : parts) {
      address.append(address.indexOf("?") < 0 ? '?' : '&');
      address.append(part.name()).append('=').append(Site.encoded(part.value()));
    }
    return address.toString();
  }
}
