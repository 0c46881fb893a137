package merese.benchmark;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The libraries of all sizes that a run measures, each made when it is first asked for: five notes
 * to a work. {@code -Dsizes=1000,20000,200000} says how many works they have.
 */
final class Libraries implements Closeable {
  private static final int NOTES_A_WORK = 5;

  private final List<Integer> sizes;
  private final Map<Integer, LargeLibrary> made = new TreeMap<>();

  Libraries(String sizes) {
    this.sizes = Stream.of(sizes.split(",")).map(String::strip).map(Integer::valueOf).toList();
  }

  List<Integer> sizes() {
    return sizes;
  }

  /** The library of so many works; what one comparison writes into it, the next one meets. */
  LargeLibrary of(int works) throws IOException {
    LargeLibrary known = made.get(works);
    if (known == null) {
      known = LargeLibrary.of(works, works * NOTES_A_WORK);
      made.put(works, known);
    }
    return known;
  }

  @Override
  public void close() throws IOException {
    for (LargeLibrary each : made.values()) {
      each.close();
    }
  }
}
