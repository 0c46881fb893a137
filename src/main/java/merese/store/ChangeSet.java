package merese.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import merese.model.OwnObject;
import merese.model.PageLines;
import merese.model.PageMap;
import merese.model.PageText;
import merese.model.Work;

/**
 * A change of several files of a library that is made whole or not at all, whenever the program or
 * the machine should stop. It has the library's lock from {@link LibraryFolder#change} until it is
 * closed.
 *
 * <p>What is to be written is put by in a hidden folder of the library, file by file, so that a
 * change of any size takes little memory. {@link #commit} makes sure that every file still is what
 * was read, and then writes a journal. Up to that moment the library is byte for byte as it was,
 * and {@link #close} or the next change takes away what was put by; from that moment the change is
 * decided, and is finished by the next command on the library where this one cannot.
 *
 * <p>Readers take no lock. While the files are being put in their places, a reader may meet the new
 * one of some and the old one of others; {@link LibraryFolder#moment} lets it notice, and read
 * again.
 */
public final class ChangeSet implements AutoCloseable {
  private enum State {
    OPEN,
    DECIDED,
    CLOSED
  }

  /** A work whose place depends on how many others are added. */
  private record NewWork(int staged, String id, String is) {}

  /** The bytes of the first file, which are staged only once there is a second. */
  private record First(Path target, byte[] bytes) {}

  private final LibraryFolder library;
  private final String what;
  private final OptionalInt undoes;
  private final LibraryLock lock;
  private final Steps steps;
  private final Staging staging;
  private final HistoryFolder history;
  private final List<FileChange> changes = new ArrayList<>();
  private final List<AlteredFile> altered = new ArrayList<>();
  private final List<NewWork> works = new ArrayList<>();
  private final Set<String> touched = new HashSet<>();
  private final Rejections rejections;
  private TakenNames names;
  private First first;
  private OptionalInt number = OptionalInt.empty();
  private State state = State.OPEN;

  /**
   * @param undoes the number of the change that this one takes back
   */
  ChangeSet(LibraryFolder library, String what, OptionalInt undoes, LibraryLock lock, Steps steps) {
    this.library = library;
    this.what = what;
    this.undoes = undoes;
    this.history = new HistoryFolder(library.path());
    this.lock = lock;
    this.steps = steps;
    this.staging = new Staging(library.path(), steps);
    this.rejections = new Rejections(library.resolve(FolderScan.REJECTED));
    lock.setChanging(true);
  }

  /** Saves a value in place of the one that was read; nothing where nothing differs. */
  public <T> void save(Stored<T> old, T value) {
    save(old, value, List.of());
  }

  /**
   * The same for a value that has taken in other files, such as those of works that are merged into
   * it: what the user wrote there and the program does not know moves with its part.
   */
  public <T> void save(Stored<T> old, T value, Collection<Stored<T>> from) {
    requireOpen();
    FileNames.requireNameOf(value, old.file());
    if (!Saver.isSame(old, value)) {
      put(old.file(), old.bytes(), Saver.bytes(old, value, Donors.of(from)));
    }
  }

  /**
   * Puts bytes in place of those that were read, as they are.
   *
   * @param old null where there is no file yet
   * @param now null for a deletion
   */
  void put(Path file, byte[] old, byte[] now) {
    requireOpen();
    String to = touch(file);
    int staged = now == null ? FileChange.DELETED : stage(file, now);
    AlteredFile change = AlteredFile.of(to, old, now);
    altered.add(change);
    changes.add(new FileChange(staged, to, change.was()));
  }

  private int stage(Path target, byte[] bytes) {
    if (first == null && staging.isEmpty()) {
      first = new First(target, bytes);
      return 0;
    }
    stageFirst();
    return staging.put(target, bytes);
  }

  private void stageFirst() {
    if (first != null) {
      staging.put(first.target(), first.bytes());
      first = null;
    }
  }

  /**
   * Puts bytes just as they are in place of those of a file, for what a person has written; the
   * caller has checked that a library with them can be used.
   *
   * @param was what was read from the file
   */
  public void replace(LibraryFile file, byte[] was, byte[] bytes) {
    put(file.path(), was, bytes);
  }

  /** A new file for a work; in a sub-folder where the library is large. */
  public void add(Work work) {
    add(work, List.of());
  }

  /**
   * The same for a work whose editions were other works': what the user wrote into them and the
   * program does not know moves with them.
   */
  public void add(Work work, Collection<Stored<Work>> from) {
    requireOpen();
    names().claim(FolderScan.WORKS, work.id());
    Path anyPlace = library.resolve(FolderScan.WORKS).resolve(work.id() + FolderScan.ENDING);
    Stored<Work> none = new Stored<>(work, anyPlace, null, WorkCodec.WORK);
    byte[] bytes = Saver.bytes(none, work, Donors.of(from));
    works.add(new NewWork(stage(anyPlace, bytes), work.id(), Hash.of(bytes)));
  }

  /** A new file for one of the user's own pieces. */
  public void add(OwnObject object) {
    add(object, FolderScan.OBJECTS, object.ref(), OwnObjectCodec.OBJECT);
  }

  /** A new file for a facet. */
  public void add(VocabularyFile file) {
    add(file, FolderScan.VOCABULARY, file.facet().id(), VocabularyCodec.VOCABULARY);
  }

  /**
   * A new file for the text of an edition's pages.
   *
   * @param name of the file, without its ending
   * @throws LibraryException where the edition has one of that name
   */
  public void add(PageText text, String name) {
    requireOpen();
    Path folder = PagesFolder.of(library.path(), text.source());
    FileNames.requireUsable(folder, name);
    for (LibraryFile there : library.pagesOf(text.source())) {
      if (FileNames.folded(there.name()).equals(FileNames.folded(name))) {
        throw new LibraryException(
            there.path(), "there are page texts of this name already", "give them another name");
      }
    }
    Path file = folder.resolve(name + FolderScan.ENDING);
    put(file, null, Saver.bytes(new Stored<>(text, file, null, PageTextCodec.PAGES), text));
  }

  /** Other text in place of what was attached; what the user wrote beside the pages stays. */
  public void replacePages(Stored<PageText> old, PageText text) {
    requireOpen();
    if (!Saver.isSame(old, text)) {
      PageText bare =
          new PageText(
              text.source(),
              text.file(),
              text.sha256(),
              text.from(),
              PageMap.NONE,
              List.of(PageLines.NONE));
      byte[] without = Saver.bytes(old, bare); // no new page is taken for an old one
      put(old.file(), old.bytes(), Saver.bytes(Stored.of(old.file(), without, old.codec()), text));
    }
  }

  private <T> void add(T value, String folder, String name, Codec<T> codec) {
    requireOpen();
    names().claim(folder, name);
    Path file = library.resolve(folder).resolve(name + FolderScan.ENDING);
    put(file, null, Saver.bytes(new Stored<>(value, file, null, codec), value));
  }

  public void delete(Stored<?> old) {
    if (old.isOnDisk()) {
      put(old.file(), old.bytes(), null);
    }
  }

  /**
   * Keeps what could not be taken in, as it stands, in the folder {@code rejected}. Where that has
   * the same bytes under the name there is nothing to do; where it has others, "name-2.bib" is
   * taken, and so on. A name that no file can have is mended.
   *
   * @return where it is, or will be
   */
  public Path reject(String name, byte[] bytes) {
    requireOpen();
    Rejections.Place place = rejections.placeFor(name, Hash.of(bytes));
    if (place.isNew()) {
      put(place.file(), null, bytes);
    }
    return place.file();
  }

  /**
   * A new file below the folder of pictures; where there is one of its name already, "-2" is put to
   * the name, and so on.
   *
   * @param folder the name of the folder in it
   * @param name what to call it, without its ending
   * @param ending as "jpg"
   * @return the path below the folder of pictures, with "/"
   * @throws LibraryException for a name that no file can have
   */
  public String addPicture(String folder, String name, String ending, byte[] bytes) {
    requireOpen();
    Path pictures = library.resolve(FolderScan.PICTURES);
    FileNames.requireUsable(pictures, folder);
    FileNames.requireUsable(pictures.resolve(folder), name + "." + ending);
    for (int number = 1; ; number++) {
      String file = name + (number == 1 ? "" : "-" + number) + "." + ending;
      Path path = pictures.resolve(folder).resolve(file);
      boolean coming = touched.contains(FolderScan.PICTURES + "/" + folder + "/" + file);
      if (!coming && !Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        put(path, null, bytes);
        return folder + "/" + file;
      }
    }
  }

  /** What the change does, in words. */
  public String what() {
    return what;
  }

  public boolean isEmpty() {
    return files() == 0;
  }

  /** How many files would be written or deleted. */
  public int files() {
    return changes.size() + works.size();
  }

  /**
   * Makes the change.
   *
   * @throws LibraryException with the library as it was where a file is no longer what was read, or
   *     cannot be written; or, where it says so, with a change that is decided and not yet finished
   */
  public void commit() {
    requireOpen();
    if (!isEmpty()) {
      for (NewWork work : works) {
        String to = touch(names.placeOf(work.id(), works.size()));
        altered.add(AlteredFile.made(to, work.is()));
        changes.add(new FileChange(work.staged(), to, Hash.NONE));
      }
      works.clear();
      changes.forEach(this::requireUnchanged);
      HistoryEntry entry = new HistoryEntry(history.next(), library.now(), what, undoes, altered);
      if (changes.size() == 1) {
        commitOne(changes.get(0), entry);
      } else {
        commitSeveral(entry);
      }
      number = OptionalInt.of(entry.number());
      history.prune(entry.number());
    }
    close();
  }

  /** What the history calls the change; empty until it is made, and where nothing differed. */
  public OptionalInt number() {
    return number;
  }

  /**
   * One file needs no journal. The history is written first: an entry that was not carried out is
   * known by its file, which still is what it was.
   */
  private void commitOne(FileChange change, HistoryEntry entry) {
    Path file = library.resolve(change.to());
    try {
      step("write the history");
      history.write(entry);
      step("write the file");
      if (change.deletes()) {
        Disk.delete(file);
      } else {
        Disk.replace(file, first.bytes());
      }
    } catch (LibraryException e) {
      if (!isMade(file, change)) {
        forget(entry, e);
      }
      throw e;
    }
  }

  /** Whether a change that failed is in the file all the same. */
  private static boolean isMade(Path file, FileChange change) {
    try {
      return !Hash.of(Disk.readIfThere(file)).equals(change.was());
    } catch (LibraryException e) {
      return true;
    }
  }

  private void forget(HistoryEntry entry, LibraryException failure) {
    try {
      history.remove(entry.number());
    } catch (LibraryException e) {
      failure.addSuppressed(e); // the next change forgets it
    }
  }

  private void step(String what) {
    try {
      steps.before(what);
    } catch (IOException e) {
      throw Disk.unwritable(library.path(), e);
    }
  }

  private void commitSeveral(HistoryEntry entry) {
    stageFirst();
    Path file = history.file(entry.number());
    int staged = staging.put(file, HistoryFolder.bytes(entry));
    changes.add(new FileChange(staged, history.relative(entry.number()), Hash.NONE));
    staging.tryFolders(changes.stream().map(FileChange::to).toList());
    Journal journal = new Journal(library.path(), steps);
    journal.write(changes);
    state = State.DECIDED;
    journal.carryOut(changes);
  }

  private void requireUnchanged(FileChange change) {
    Path file = library.resolve(change.to());
    Disk.requireReplaceable(file);
    byte[] now = Disk.readIfThere(file);
    if (!Hash.of(now).equals(change.was())) {
      throw Saver.changed(file, !change.was().equals(Hash.NONE), now != null);
    }
  }

  /** Without {@link #commit}, everything is as it was. Gives the lock back. */
  @Override
  public void close() {
    if (state == State.CLOSED) {
      return;
    }
    boolean decided = state == State.DECIDED;
    state = State.CLOSED;
    try {
      if (!decided) {
        Staging.discard(library.path());
      } else if (!new Journal(library.path(), steps).isThere()) {
        discardQuietly();
      }
    } finally {
      lock.setChanging(false);
      lock.close();
    }
  }

  /** The change is made: that its traces cannot be removed is for the next writer. */
  private void discardQuietly() {
    try {
      Staging.discard(library.path());
    } catch (LibraryException e) {
      return;
    }
  }

  /** Leaves everything as a process does that ends here: for tests. */
  void abandon() {
    if (state != State.CLOSED) {
      state = State.CLOSED;
      lock.setChanging(false);
      lock.close();
    }
  }

  private void requireOpen() {
    if (state != State.OPEN) {
      throw new IllegalStateException("this change is made or given up");
    }
  }

  private TakenNames names() {
    if (names == null) {
      names = TakenNames.of(library.path());
    }
    return names;
  }

  /** The path below the library of a file that this change has not touched before. */
  private String touch(Path file) {
    if (!file.startsWith(library.path())) {
      throw new IllegalArgumentException(file + " is not in " + library.path());
    }
    StringBuilder relative = new StringBuilder();
    for (Path name : library.path().relativize(file)) {
      relative.append(relative.length() == 0 ? "" : "/").append(name);
    }
    String path = relative.toString();
    for (int i = 0; i < path.length(); i++) {
      if (Character.isISOControl(path.charAt(i))) {
        throw new LibraryException(
            file, "the name of this file has a control character in it", "rename the file");
      }
    }
    if (!touched.add(path)) {
      throw new IllegalStateException(file + " is changed twice in one change");
    }
    return path;
  }
}
