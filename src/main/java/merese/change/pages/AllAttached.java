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
 * All page texts of a library, in the order of their files.
 *
 * @param problems what is wrong with those that cannot be read
 */
public record AllAttached(List<Attached> attached, List<Problem> problems) {
  /** Copies the lists. */
  public AllAttached {
    attached = List.copyOf(attached);
    problems = List.copyOf(problems);
  }

  public static AllAttached in(WritingShelf shelf) {
    Map<String, String> references = new HashMap<>();
    for (SourceAddress source : shelf.sources()) {
      references.put(source.key(), source.reference());
    }
    List<Attached> attached = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (LibraryFile file : shelf.folder().scan()) {
      if (file.kind() == LibraryFile.Kind.PAGES) {
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
    }
    return new AllAttached(attached, problems);
  }
}
