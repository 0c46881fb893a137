package merese.change.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import merese.change.ChangeRefusedException;
import merese.change.pages.Attached.Outcome;
import merese.exchange.pages.PagesRead;
import merese.model.PageMap;
import merese.model.PageText;
import merese.shelf.SourceAddress;
import merese.store.ChangeSet;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * Attaches page texts to an edition, changes their map, and takes them off. A text is known by its
 * name, which is that of the file it came from unless it was given one.
 */
public final class Attaching {
  private final LibraryFolder folder;
  private final boolean dryRun;

  /**
   * @param dryRun whether to say only what would be done
   */
  public Attaching(LibraryFolder folder, boolean dryRun) {
    this.folder = folder;
    this.dryRun = dryRun;
  }

  /**
   * Attaches what was read; where the edition has page texts of that name, in their place.
   *
   * @param map empty for none, or for the one that the text in its place had
   * @param name empty for that of the file
   * @throws ChangeRefusedException where a map names pages that the file has not
   */
  public Attached attach(
      SourceAddress source, PagesRead read, Optional<PageMap> map, Optional<String> name) {
    String called = LibraryFolder.nameOfPages(name.orElse(read.file()));
    PageText bare =
        new PageText(
            source.key(), read.file(), read.sha256(), read.from(), PageMap.NONE, read.pages());
    Optional<LibraryFile> there = fileOf(source.key(), called);
    List<String> remarks = new ArrayList<>(read.remarks());
    if (there.isEmpty()) {
      PageText text = mapped(bare, map.orElse(PageMap.NONE));
      OptionalInt change =
          change("pages of " + source.key() + ": " + read.file(), set -> set.add(text, called));
      return say(source, called, text, remarks, Outcome.NEW, change);
    }
    Stored<PageText> old = folder.readPages(there.get().path());
    requireSame(source.key(), old);
    PageText text = mapped(bare, map.orElse(old.value().map()));
    if (map.isEmpty() && !text.map().isEmpty()) {
      remarks.add("The page map is the one that it had.");
    }
    OptionalInt change =
        change(
            "pages of " + source.key() + " again: " + read.file(),
            set -> set.replacePages(old, text));
    Outcome outcome = old.value().equals(text) ? Outcome.AS_IT_WAS : Outcome.REPLACED;
    return say(source, there.get().name(), text, remarks, outcome, change);
  }

  /** Two keys may give one folder; each has names of its own in it. */
  private static void requireSame(String key, Stored<PageText> old) {
    if (!old.value().source().equals(key)) {
      throw new ChangeRefusedException(
          "page texts of this name belong to "
              + old.value().source()
              + "; give these another with --name");
    }
  }

  /** Gives another map to what is attached. */
  public Attached map(SourceAddress source, PageMap map, Optional<String> name) {
    Stored<PageText> old = theOne(source, name);
    PageText text = mapped(old.value(), map);
    OptionalInt change = change("page map of " + source.key(), set -> set.save(old, text));
    Outcome outcome = old.value().equals(text) ? Outcome.AS_IT_WAS : Outcome.MAPPED;
    return say(source, nameOf(old), text, List.of(), outcome, change);
  }

  /** Takes page texts off an edition; the file that they came from is not touched. */
  public Attached remove(SourceAddress source, Optional<String> name) {
    Stored<PageText> old = theOne(source, name);
    OptionalInt change = change("pages of " + source.key() + " taken off", set -> set.delete(old));
    return say(source, nameOf(old), old.value(), List.of(), Outcome.REMOVED, change);
  }

  /** What is attached to a source, by name. */
  public List<Attached> of(SourceAddress source) {
    List<Attached> all = new ArrayList<>();
    for (Stored<PageText> each : read(source.key())) {
      all.add(
          say(
              source,
              nameOf(each),
              each.value(),
              List.of(),
              Outcome.AS_IT_WAS,
              OptionalInt.empty()));
    }
    return all;
  }

  private OptionalInt change(String what, Consumer<ChangeSet> made) {
    if (dryRun) {
      return OptionalInt.empty();
    }
    try (ChangeSet change = folder.change(what)) {
      made.accept(change);
      change.commit();
      return change.number();
    }
  }

  private static PageText mapped(PageText text, PageMap map) {
    try {
      return text.withMap(map);
    } catch (IllegalArgumentException e) {
      throw ChangeRefusedException.of(e);
    }
  }

  private Stored<PageText> theOne(SourceAddress source, Optional<String> name) {
    List<Stored<PageText>> all = read(source.key());
    if (all.isEmpty()) {
      throw new ChangeRefusedException(
          source.key()
              + " has no page texts; attach them with merese pages "
              + source.key()
              + " FILE");
    }
    List<String> names = new ArrayList<>();
    for (Stored<PageText> each : all) {
      names.add(nameOf(each));
      if (name.isPresent() && nameOf(each).equals(LibraryFolder.nameOfPages(name.get()))) {
        return each;
      }
    }
    if (name.isEmpty() && all.size() == 1) {
      return all.get(0);
    }
    throw new ChangeRefusedException(
        (name.isEmpty()
                ? source.key() + " has several page texts; say which with --name: "
                : source.key() + " has no page texts called \"" + name.get() + "\", but ")
            + String.join(", ", names));
  }

  private Optional<LibraryFile> fileOf(String key, String name) {
    return folder.pagesOf(key).stream()
        .filter(file -> file.name().equalsIgnoreCase(name))
        .findFirst();
  }

  /**
   * @throws LibraryException where one of them cannot be read
   */
  private List<Stored<PageText>> read(String key) {
    List<Stored<PageText>> all = new ArrayList<>();
    for (LibraryFile file : folder.pagesOf(key)) {
      Stored<PageText> stored = folder.readPages(file.path());
      if (stored.value().source().equals(key)) {
        all.add(stored);
      }
    }
    return all;
  }

  private static String nameOf(Stored<PageText> stored) {
    return LibraryFolder.nameOfPages(stored.file().getFileName().toString());
  }

  private static Attached say(
      SourceAddress source,
      String name,
      PageText text,
      List<String> remarks,
      Outcome outcome,
      OptionalInt change) {
    return new AttachedMaker(text).make(source.reference(), name, remarks, outcome, change);
  }
}
