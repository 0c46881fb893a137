package merese.change.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.Unread;
import merese.model.Nearest;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.Problem;

/**
 * The sources that somebody may mean who typed a key, or words.
 *
 * @param near keys that are near to what names no source
 * @param unread what is wrong with the files that cannot be read, where no source was found
 */
public record SourceChoice(
    String typed, List<SourceAddress> found, List<String> near, List<Problem> unread) {
  /** As many as somebody can be asked to choose from. */
  public static final int MOST = 9;

  private static final int MOST_NEAR = 3;

  public SourceChoice {
    found = List.copyOf(found);
    near = List.copyOf(near);
    unread = List.copyOf(unread);
  }

  public static SourceChoice of(WritingShelf shelf, String typed) {
    List<SourceAddress> found = shelf.find(typed);
    if (!found.isEmpty()) {
      return new SourceChoice(typed, found, List.of(), List.of());
    }
    List<String> keys = new ArrayList<>();
    for (SourceAddress source : shelf.sources()) {
      keys.add(source.key());
    }
    List<Problem> unread = new ArrayList<>();
    shelf
        .unread()
        .forEach((file, first) -> unread.add(Unread.below(shelf.folder().path(), file, first)));
    return new SourceChoice(typed, found, Nearest.to(typed, keys, MOST_NEAR), unread);
  }

  /** The one that is meant; empty where several may be, or none is. */
  public Optional<SourceAddress> source() {
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /** Those to choose from, a line each; {@value #MOST} at most. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    for (SourceAddress source : found.subList(0, Math.min(found.size(), MOST))) {
      words.add(source.words());
    }
    return words;
  }

  /** Why no one source is meant, and what to do. */
  public String refusal() {
    if (found.isEmpty()) {
      return "no source is called \""
          + typed
          + "\""
          + (near.isEmpty()
              ? "; a source is named by its key, or by words of its author, year and title"
              : "; did you mean " + String.join(" or ", near) + "?")
          + Unread.words(unread);
    }
    String more = found.size() > MOST ? "\n  + " + (found.size() - MOST) + " more" : "";
    return "“"
        + typed
        + "” fits "
        + found.size()
        + " sources; name one by its key, or with more words:\n  "
        + String.join("\n  ", words())
        + more;
  }
}
