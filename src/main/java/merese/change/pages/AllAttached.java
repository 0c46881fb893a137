package merese.change.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import merese.change.pages.Attached.Outcome;
import merese.model.PageText;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.Problem;

/**
 * The page texts of a library, in the order of their files.
 *
 * @param attached the first of them
 * @param problems what is wrong with those of the first that cannot be read
 * @param all how many there are
 */
public record AllAttached(List<Attached> attached, List<Problem> problems, int all) {
  /** Copies the lists. */
  public AllAttached {
    attached = List.copyOf(attached);
    problems = List.copyOf(problems);
  }

  /**
   * Reads the first of them, and of the others only what they are called.
   *
   * @param most how many, from 1
   */
  public static AllAttached in(WritingShelf shelf, int most) {
    Map<String, String> references = new HashMap<>();
    for (SourceAddress source : shelf.sources()) {
      references.put(source.key(), source.reference());
    }
    List<LibraryFile> files = shelf.folder().pages();
    List<Attached> attached = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (LibraryFile file : files.subList(0, Math.min(most, files.size()))) {
      try {
        PageText text = shelf.folder().readPages(file.path()).value();
        String reference = references.getOrDefault(text.source(), "");
        attached.add(
            new AttachedMaker(text)
                .make(reference, file.name(), List.of(), Outcome.AS_IT_WAS, OptionalInt.empty()));
      } catch (LibraryException e) {
        problems.add(e.problems().get(0));
      }
    }
    return new AllAttached(attached, problems, files.size());
  }
}
