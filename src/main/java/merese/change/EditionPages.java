package merese.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import merese.change.Effect.Sort;
import merese.model.PageText;
import merese.store.ChangeSet;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;

/** The page texts of editions that go: they go with them, or follow to the edition that stays. */
final class EditionPages {
  private final LibraryFolder folder;

  /** By what is moved, what it is called where it goes. */
  private final Map<Stored<PageText>, String> names = new LinkedHashMap<>();

  private String to = "";

  EditionPages(LibraryFolder folder) {
    this.folder = folder;
  }

  /** What is attached to an edition. */
  List<Stored<PageText>> of(String key) {
    List<Stored<PageText>> all = new ArrayList<>();
    for (LibraryFile file : folder.pagesOf(key)) {
      Stored<PageText> stored = folder.readPages(file.path());
      if (stored.value().source().equals(key)) {
        all.add(stored);
      }
    }
    return all;
  }

  /** "the text of 12 pages, from scan.pdf". */
  static String words(PageText text) {
    int pages = text.pages().size();
    return "the text of " + pages + (pages == 1 ? " page" : " pages") + ", from " + text.file();
  }

  /** Decides what the page texts of editions that go are called with the one that stays. */
  void follow(List<String> gone, String kept, List<Effect> effects) {
    to = kept;
    Set<String> taken = new HashSet<>();
    folder.pagesOf(kept).forEach(file -> taken.add(file.name().toLowerCase(Locale.ROOT)));
    for (String key : gone) {
      for (Stored<PageText> stored : of(key)) {
        String own = LibraryFolder.nameOfPages(stored.file().getFileName().toString());
        String name = own;
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
          name = own + "-" + i;
        }
        names.put(stored, name);
        String called = name.equals(own) ? "" : ", called " + name + " from now on";
        effects.add(new Effect(Sort.FOLLOWS, words(stored.value()) + ", of " + key + called));
      }
    }
  }

  int files() {
    return 2 * names.size();
  }

  void stage(ChangeSet change) {
    names.forEach((stored, name) -> change.movePages(stored, to, name));
  }
}
