package merese.desk.chart;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.desk.web.Query;
import merese.desk.web.Site;

/**
 * What a page is asked about.
 *
 * @param all words, ids of concepts or facets, as they stand in the address
 */
public record Terms(List<String> all) {
  public Terms {
    all = List.copyOf(all);
  }

  /** Those of an address, which may call each "term", "terms" or "concept". */
  static Terms of(Context request) {
    Set<String> all = new LinkedHashSet<>();
    for (String name : List.of("term", "terms", "concept")) {
      all.addAll(Query.texts(request, name));
    }
    return new Terms(new ArrayList<>(all));
  }

  public boolean isEmpty() {
    return all.isEmpty();
  }

  /** As a part of an address. */
  public String query() {
    List<String> parts = new ArrayList<>();
    all.forEach(term -> parts.add("term=" + Site.encoded(term)));
    return String.join("&", parts);
  }

  /** The same with another in the place of one. */
  public Terms with(String old, String now) {
    List<String> other = new ArrayList<>(all);
    other.replaceAll(term -> term.equals(old) ? now : term);
    return new Terms(other);
  }

  @Override
  public String toString() {
    return String.join("; ", all);
  }
}
