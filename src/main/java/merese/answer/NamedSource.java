package merese.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.Nearest;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * A source that a user named by its key, and the part of it that they named after a "#".
 *
 * @param part an entry, chapter or essay in it
 */
public record NamedSource(Source source, Optional<Edition.Part> part) {
  private static final int MOST_NEAR = 3;

  /**
   * Finds a source.
   *
   * @param typed "osmere-1988" or "osmere-1988#feet"
   * @throws UnknownSourceException naming the keys or parts that may have been meant
   */
  public static NamedSource find(Shelf shelf, String typed) {
    String word = typed.strip();
    Optional<Source> whole = withKey(shelf, word);
    if (whole.isPresent()) {
      return new NamedSource(whole.get(), Optional.empty());
    }
    int mark = word.indexOf('#');
    String key = mark < 0 ? word : word.substring(0, mark);
    Source source =
        withKey(shelf, key).orElseThrow(() -> UnknownSourceException.key(key, near(shelf, key)));
    String id = word.substring(mark + 1);
    List<Edition.Part> parts = source.edition().parts();
    Optional<Edition.Part> part = parts.stream().filter(p -> p.id().equals(id)).findFirst();
    if (part.isEmpty()) {
      List<String> ids = parts.stream().map(Edition.Part::id).toList();
      throw UnknownSourceException.part(source.key(), id, ids);
    }
    return new NamedSource(source, part);
  }

  /** Capitals are forgiven where only one key is meant. */
  private static Optional<Source> withKey(Shelf shelf, String key) {
    List<Source> alike = new ArrayList<>();
    for (Source source : shelf.sources()) {
      if (source.key().equals(key)) {
        return Optional.of(source);
      }
      if (source.key().equalsIgnoreCase(key)) {
        alike.add(source);
      }
    }
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  private static List<String> near(Shelf shelf, String typed) {
    List<String> keys = new ArrayList<>();
    for (Source source : shelf.sources()) {
      keys.add(source.key());
    }
    keys.sort(null);
    return Nearest.to(typed, keys, MOST_NEAR);
  }
}
