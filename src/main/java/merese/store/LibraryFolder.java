package merese.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import merese.model.CharacterKey;
import merese.model.Homonym;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.PageText;
import merese.model.ReceivedRecord;
import merese.model.Work;

/**
 * A library on disk. Reading takes no lock and always sees whole files. A save changes what differs
 * and leaves everything else in the file as it stands; it is atomic, durable, made under the
 * library's lock, and refused where the file is no longer what was read; {@link #change} does that
 * for several files at once. Every method throws a {@link LibraryException} for what a user can put
 * right.
 */
public final class LibraryFolder {
  /** The size in bytes from which a file is not read, but taken for a mistake. */
  public static final long LARGEST_FILE = Disk.LARGEST;

  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final Path root;
  private final Path settingsFile;
  private final Duration patience;
  private final Clock clock;
  private Stored<LibrarySettings> settings;

  private LibraryFolder(Path root, Path settingsFile, Duration patience, Clock clock) {
    this.root = root;
    this.settingsFile = settingsFile;
    this.patience = patience;
    this.clock = clock;
  }

  /** A folder that a scan looks into; {@code modified} as in {@link LibraryFile}. */
  public record Folder(String relative, long modified) {}

  /**
   * Opens the library that is the folder {@code root}; see {@link #find} for a looser address. Only
   * that it is there is made sure of: its files are read when they are asked for. A {@link
   * ChangeSet} that was decided and broken off is finished first. Files are named in messages as
   * {@code root} is given here.
   */
  public static LibraryFolder open(Path root) {
    return open(root, PATIENCE, Clock.systemUTC());
  }

  static LibraryFolder open(Path root, Duration patience, Clock clock) {
    Path settings = LibraryFinder.requireLibrary(root);
    LibraryFolder library = new LibraryFolder(root, settings, patience, clock);
    library.finishChange();
    return library;
  }

  /**
   * Where the library is: what {@code --library} names, else what the environment's {@code
   * MERESE_LIBRARY} names, else {@code library} in the working directory. Each may name the library
   * folder or the folder that holds {@code library}.
   */
  public static Path find(
      Optional<String> option, Map<String, String> environment, Path workingDirectory) {
    return LibraryFinder.find(option, environment, workingDirectory);
  }

  /**
   * Makes {@code dir/library} with the starter vocabulary, and {@code dir/index}. Nothing is
   * overwritten: a {@code dir/library} that is not empty is refused.
   */
  public static LibraryFolder create(Path dir, String title) {
    return create(dir, title, LibraryMaker.STARTER);
  }

  static LibraryFolder create(Path dir, String title, String starter) {
    return open(new LibraryMaker(dir, starter).make(title));
  }

  /** The time of a change, to the second. */
  Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS);
  }

  /** The library folder, as it was given. */
  public Path path() {
    return root;
  }

  /** Where the index of this library belongs: {@code index} beside the library folder. */
  public Path index() {
    return LibraryFinder.indexOf(root);
  }

  /** A path that a {@link LibraryFile} gave as relative. */
  public Path resolve(String relative) {
    return root.resolve(relative);
  }

  /**
   * Refuses a file that is, or stands behind, a link out of the library; such a file is not read.
   */
  public void requireInside(Path file) {
    Disk.requireInside(root, file);
  }

  /** What the library says of itself; a format that this program does not know is refused. */
  public LibrarySettings settings() {
    return storedSettings().value();
  }

  /**
   * Refuses a library that a newer program made: nothing of it may be taken for what it seems. What
   * else is wrong with its settings is left to whoever asks for them.
   */
  public void requireKnownFormat() {
    try {
      settings();
    } catch (LibraryException e) {
      if (e.isOfNewerProgram()) {
        throw e;
      }
    }
  }

  /** What a library says of itself that says nothing else. */
  public static LibrarySettings usualSettings() {
    return LibraryMaker.settings("Library");
  }

  /** As it was when it was first asked for. */
  public Stored<LibrarySettings> storedSettings() {
    if (settings == null) {
      byte[] bytes = Disk.readInside(root, settingsFile);
      Source source = Source.of(settingsFile, bytes);
      Json.Obj json = JsonReader.read(source);
      SettingsCodec.requireKnownFormat(source, json);
      LibrarySettings value = Reading.decode(source, json, SettingsCodec.SETTINGS);
      settings = new Stored<>(value, settingsFile, bytes, SettingsCodec.SETTINGS);
    }
    return settings;
  }

  /** All files of the library, unread, in the order of their relative paths. */
  public List<LibraryFile> scan() {
    return List.copyOf(new FolderScan(root).files());
  }

  /** The names of the folders below a library's own. */
  public static List<String> tops() {
    return FolderScan.TOPS;
  }

  /**
   * The folders that {@link #scan} looks into. A file added, removed or saved by us changes the
   * time of its folder; one overwritten in place by an editor does not.
   */
  public List<Folder> folders() {
    return List.copyOf(new FolderScan(root).folders());
  }

  /**
   * What is in one folder.
   *
   * @param modified the folder's time, as in {@link LibraryFile}, from before it was listed
   * @param files unread, in the order of their relative paths
   * @param folders by their relative paths
   */
  public record Listing(long modified, List<LibraryFile> files, List<String> folders) {
    public Listing {
      files = List.copyOf(files);
      folders = List.copyOf(folders);
    }
  }

  /**
   * One of the folders that {@link #scan} looks into, without those in it; empty where it is gone.
   *
   * @param relative "" for the library's own
   */
  public Optional<Listing> list(String relative) {
    return new FolderScan(root).list(relative);
  }

  /** When one of those folders was changed last, as {@link #folders} has it; empty for none. */
  public OptionalLong timeOf(String folder) {
    return new FolderScan(root).timeOf(folder);
  }

  /** One file as {@link #scan} would find it; empty where it is gone. */
  public Optional<LibraryFile> look(String relative) {
    return new FolderScan(root).look(relative);
  }

  public Stored<Work> readWork(Path file) {
    return read(file, WorkCodec.WORK);
  }

  public Stored<VocabularyFile> readVocabulary(Path file) {
    return read(file, VocabularyCodec.VOCABULARY);
  }

  public Stored<OwnObject> readObject(Path file) {
    return read(file, OwnObjectCodec.OBJECT);
  }

  /** The text of an edition's pages that came from one file. */
  public Stored<PageText> readPages(Path file) {
    return read(file, PageTextCodec.PAGES);
  }

  /** What page texts from a file are called: as the file, without its ending. */
  public static String nameOfPages(String file) {
    int dot = file.lastIndexOf('.');
    int longest = 8; // "Plates, vol. II of the old series" has a point, and no ending
    boolean ending = dot > 0 && file.length() - dot <= longest && file.indexOf(' ', dot) < 0;
    return FileNames.mended(ending ? file.substring(0, dot) : file, "pages");
  }

  /** The files of all page texts, in the order of their paths. */
  public List<LibraryFile> pages() {
    return List.copyOf(new FolderScan(root).pages());
  }

  /** The files of an edition's page texts, unread, by their names. */
  public List<LibraryFile> pagesOf(String edition) {
    return List.copyOf(PagesFolder.files(root, edition));
  }

  /** The register of homonyms; an empty one where there is no file. */
  public Stored<List<Homonym>> readHomonyms() {
    Path file = root.resolve(FolderScan.VOCABULARY).resolve(FolderScan.HOMONYMS);
    return readOr(file, VocabularyCodec.REGISTER, List.of());
  }

  /** The key to look-alikes; an empty one where there is no file. */
  public Stored<CharacterKey> readCharacters() {
    Path file = root.resolve(FolderScan.VOCABULARY).resolve(FolderScan.CHARACTERS);
    return readOr(file, CharacterKeyCodec.KEY, CharacterKey.EMPTY);
  }

  /** The key that a new library starts with. */
  public static CharacterKey starterCharacters() {
    Source source =
        Source.of(
            Path.of(FolderScan.CHARACTERS),
            LibraryMaker.resource(LibraryMaker.STARTER, FolderScan.CHARACTERS));
    return Reading.decode(source, JsonReader.read(source), CharacterKeyCodec.KEY);
  }

  /** The ids of the concepts that a new library starts with. */
  public static Set<String> starterConcepts() {
    Set<String> ids = new HashSet<>();
    for (String name : LibraryMaker.names(LibraryMaker.STARTER)) {
      boolean facet = !name.equals(FolderScan.HOMONYMS) && !name.equals(FolderScan.CHARACTERS);
      if (facet && name.endsWith(FolderScan.ENDING)) {
        Source source = Source.of(Path.of(name), LibraryMaker.resource(LibraryMaker.STARTER, name));
        VocabularyFile file =
            Reading.decode(source, JsonReader.read(source), VocabularyCodec.VOCABULARY);
        file.concepts().forEach(concept -> ids.add(concept.id()));
      }
    }
    return ids;
  }

  /** The user's own opinions; none where there is no file. */
  public Stored<Mine> readMine() {
    return readOr(root.resolve(FolderScan.MINE), MineCodec.MINE, Mine.NOTHING);
  }

  /** The library's records that describe no source; none where there is no file. */
  public Stored<List<ReceivedRecord>> readKept() {
    return readOr(root.resolve(FolderScan.RECEIVED), ReceivedCodec.KEPT, List.of());
  }

  private <T> Stored<T> read(Path file, Codec<T> codec) {
    return Stored.of(file, Disk.readInside(root, file), codec);
  }

  private <T> Stored<T> readOr(Path file, Codec<T> codec, T absent) {
    byte[] bytes = Disk.readInsideIfThere(root, file);
    return bytes == null ? new Stored<>(absent, file, null, codec) : Stored.of(file, bytes, codec);
  }

  /**
   * Where a picture is, or belongs: the one way from the name of a picture in the data to a file.
   *
   * @param relative below the library's folder {@code pictures}, with "/"
   * @throws LibraryException where the name, or a symbolic link on the way, leads out of the folder
   */
  public Path picture(String relative) {
    return new PictureFiles(root).place(relative);
  }

  /** The work of an id, wherever in {@code works} it is. */
  public Optional<Stored<Work>> findWork(String id) {
    return FileNames.isUsable(id) ? workFile(id).map(this::readWork) : Optional.empty();
  }

  /** The user's own piece of a reference. */
  public Optional<Stored<OwnObject>> findObject(String ref) {
    if (!FileNames.isUsable(ref)) {
      return Optional.empty();
    }
    Path file = root.resolve(FolderScan.OBJECTS).resolve(ref + FolderScan.ENDING);
    return Files.exists(file) ? Optional.of(readObject(file)) : Optional.empty();
  }

  private Optional<Path> workFile(String id) {
    String name = id + FolderScan.ENDING;
    Path works = root.resolve(FolderScan.WORKS);
    for (Path likely : List.of(works.resolve(name), FileNames.shard(works, id).resolve(name))) {
      if (Files.exists(likely)) {
        return Optional.of(likely);
      }
    }
    for (LibraryFile file : scan()) {
      if (file.kind() == LibraryFile.Kind.WORK && file.name().equals(id)) {
        return Optional.of(file.path());
      }
    }
    return Optional.empty();
  }

  /**
   * Saves a value in place of the one that was read.
   *
   * @return what is on the disk now; {@code old} itself where nothing changed and nothing was
   *     written
   */
  public <T> Stored<T> save(Stored<T> old, T value) {
    FileNames.requireNameOf(value, old.file());
    return Saver.isSame(old, value) ? old : write(old, value);
  }

  @SuppressWarnings("try")
  private <T> Stored<T> write(Stored<T> old, T value) {
    byte[] bytes = Saver.bytes(old, value);
    try (LibraryLock lock = writing()) {
      return Saver.write(old, value, bytes);
    }
  }

  /** A new file for a work; in a sub-folder where the library is large. */
  @SuppressWarnings("try")
  public Stored<Work> add(Work work) {
    try (LibraryLock lock = writing()) {
      TakenNames names = TakenNames.of(root);
      names.claim(FolderScan.WORKS, work.id());
      return write(new Stored<>(work, names.placeOf(work.id(), 1), null, WorkCodec.WORK), work);
    }
  }

  /** Refuses a work that could not be added, for its name. */
  public void requireAddable(Work work) {
    TakenNames.of(root).claim(FolderScan.WORKS, work.id());
  }

  /** A new file for one of the user's own pieces. */
  public Stored<OwnObject> add(OwnObject object) {
    return add(object, FolderScan.OBJECTS, object.ref(), OwnObjectCodec.OBJECT);
  }

  /** A new file for a facet. */
  public Stored<VocabularyFile> add(VocabularyFile file) {
    return add(file, FolderScan.VOCABULARY, file.facet().id(), VocabularyCodec.VOCABULARY);
  }

  @SuppressWarnings("try")
  private <T> Stored<T> add(T value, String folder, String name, Codec<T> codec) {
    try (LibraryLock lock = writing()) {
      TakenNames.of(root).claim(folder, name);
      Path file = root.resolve(folder).resolve(name + FolderScan.ENDING);
      return write(new Stored<>(value, file, null, codec), value);
    }
  }

  /** Deletes a file, under the same conditions as a save. */
  @SuppressWarnings("try")
  public void delete(Stored<?> old) {
    try (LibraryLock lock = writing()) {
      Saver.delete(old);
    }
  }

  /**
   * Takes the right to write: saves of this thread then do not wait. What a {@link ChangeSet} that
   * was broken off has left behind is finished or taken away first.
   */
  public LibraryLock lock() {
    LibraryLock lock = LibraryLock.take(root, patience, clock);
    boolean settled = false;
    try {
      if (!lock.isChanging()) {
        Recovery.settle(root);
      }
      settled = true;
      return lock;
    } finally {
      if (!settled) {
        lock.close();
      }
    }
  }

  /**
   * Starts a change of one file or several; it has the library's lock until it is closed.
   *
   * @param what it does, in a few words for a person, such as "note “bladed ring” in quenby-1949"
   */
  public ChangeSet change(String what) {
    return change(what, Steps.NONE);
  }

  ChangeSet change(String what, Steps steps) {
    return change(what, OptionalInt.empty(), steps);
  }

  /** The lock, with the library in the format that this program writes. */
  private LibraryLock writing() {
    LibraryLock lock = lock();
    boolean ready = false;
    try {
      if (!lock.isChanging() && FormatSteps.carryForward(root)) {
        settings = null;
      }
      ready = true;
      return lock;
    } finally {
      if (!ready) {
        lock.close();
      }
    }
  }

  /**
   * @param undoes the number of the change that this one takes back
   */
  ChangeSet change(String what, OptionalInt undoes, Steps steps) {
    LibraryLock lock = writing();
    if (lock.isChanging()) {
      lock.close();
      throw new IllegalStateException("a change of this library is open already");
    }
    return new ChangeSet(this, what, undoes, lock, steps);
  }

  /**
   * Between two changes of several files, for a reader of many files: where {@link #isStill} says
   * so after the reading, no {@link ChangeSet} came in between. A change that is being made is
   * waited for, and one that was broken off is finished.
   */
  public String moment() {
    finishChange();
    return ChangeMark.read(root);
  }

  /** Whether no change of several files was made, and none is being made, since a moment. */
  public boolean isStill(String moment) {
    return !Recovery.isPending(root) && ChangeMark.read(root).equals(moment);
  }

  private void finishChange() {
    if (Recovery.isPending(root)) {
      try {
        lock().close();
      } catch (LibraryException e) {
        throw Recovery.refusal(root, e);
      }
    }
  }

  /**
   * Everything that is wrong in the library: files that cannot be read, keys that look misspelt,
   * ids that stand twice, references that lead nowhere. In the order of the files.
   */
  public List<Problem> check() {
    return check(new Visitor() {});
  }

  /** The same, with each file that could be read handed on, so that it need not be read again. */
  public List<Problem> check(Visitor visitor) {
    return check(visitor, Map.of());
  }

  /**
   * The same, as if other bytes stood in some of the files: what would be wrong then.
   *
   * @param instead by the paths that {@link #scan} gives
   */
  public List<Problem> check(Visitor visitor, Map<Path, byte[]> instead) {
    return new Consistency(this, visitor, instead).problems();
  }

  /** Temporary files that killed saves have left behind; nothing in them is of the library. */
  public List<Path> leftovers() {
    return Leftovers.in(this, clock);
  }

  /** Sees the files of a library while they are checked, in the order of their paths. */
  public interface Visitor {
    /** Before anything is read. */
    default void start(List<LibraryFile> files) {}

    /** A file whose own faults, if any, are warnings. */
    default void read(LibraryFile file, Stored<?> stored) {}

    /** A file that no command could use as it is. */
    default void unreadable(LibraryFile file) {}

    /** After the last look at a file. */
    default void done(LibraryFile file) {}
  }
}
