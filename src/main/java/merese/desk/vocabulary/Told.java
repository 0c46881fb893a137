package merese.desk.vocabulary;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import merese.change.Effect;
import merese.desk.web.Site;
import merese.store.History;
import merese.store.LibraryFolder;

/**
 * What the last changes did, so that the page they lead on to can say it, with what somebody should
 * look at.
 */
final class Told {
  private static final int MOST = 30;

  private final LibraryFolder library;
  private final Map<String, List<Effect>> byNumber = new LinkedHashMap<>();

  Told(LibraryFolder library) {
    this.library = library;
  }

  /** What a change did, and its number in the history; empty where another came in between. */
  record Done<T>(T made, OptionalInt number) {}

  /** Does a change. */
  <T> Done<T> doing(Supplier<T> change) {
    int before = last(library);
    T made = change.get();
    int after = last(library);
    return new Done<>(made, after == before + 1 ? OptionalInt.of(after) : OptionalInt.empty());
  }

  private static int last(LibraryFolder library) {
    List<History.Line> lines = History.of(library).lines();
    return lines.isEmpty() ? 0 : lines.get(0).entry().number();
  }

  synchronized void keep(OptionalInt number, List<Effect> effects) {
    if (number.isPresent()) {
      byNumber.put(Integer.toString(number.getAsInt()), List.copyOf(effects));
      List<String> numbers = new ArrayList<>(byNumber.keySet());
      if (numbers.size() > MOST) {
        byNumber.remove(numbers.get(0));
      }
    }
  }

  /** Of the change that led to a page. */
  synchronized List<Effect> of(Context request) {
    return Optional.ofNullable(request.queryParam(Site.DONE)).map(byNumber::get).orElse(List.of());
  }
}
