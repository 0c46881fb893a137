package merese.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is wrong in a library as a whole. It reads every file twice, first for its own faults and
 * its ids, then for what refers to them, so that only one file at a time is in memory. References
 * into files that are not JSON are left alone: what those files hold is not known.
 */
final class Consistency {
  private final LibraryFolder library;
  private final LibraryFolder.Visitor visitor;
  private final Map<Path, byte[]> instead;
  private final Map<Ids.Kind, Ids> ids = new HashMap<>();
  private final Set<String> broken = new HashSet<>();

  /**
   * @param instead what to read for some of the files, as if it stood in them
   */
  Consistency(LibraryFolder library, LibraryFolder.Visitor visitor, Map<Path, byte[]> instead) {
    this.library = library;
    this.instead = instead;
    this.visitor = visitor;
    for (Ids.Kind kind : Ids.Kind.values()) {
      ids.put(kind, new Ids(kind));
    }
  }

  List<Problem> problems() {
    List<LibraryFile> files = library.scan();
    visitor.start(files);
    Map<String, List<Problem>> found = new HashMap<>();
    for (LibraryFile file : files) {
      found.put(file.relative(), new ArrayList<>());
      visit(file, found.get(file.relative()), true);
    }
    for (LibraryFile file : files) {
      if (!broken.contains(file.relative())) {
        visit(file, found.get(file.relative()), false);
      }
      visitor.done(file);
    }
    List<Problem> all = new ArrayList<>();
    for (LibraryFile file : files) {
      List<Problem> here = found.get(file.relative());
      here.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
      all.addAll(here);
    }
    return all;
  }

  private void visit(LibraryFile file, List<Problem> found, boolean first) {
    try {
      byte[] other = instead.get(file.path());
      byte[] bytes = other == null ? Disk.readInside(library.path(), file.path()) : other;
      Source source = Source.of(file.path(), bytes);
      Json.Obj json = JsonReader.read(source);
      if (file.kind() == LibraryFile.Kind.SETTINGS) {
        SettingsCodec.requireKnownFormat(source, json);
      }
      Spot top = Spot.top(json);
      Reading reading = new Reading(source, true);
      if (first) {
        hand(file, bytes, reading, new Fields(reading, null, top), codec(file.kind()));
        new Definitions(file, reading, ids).visit(top);
        if (file.kind() == LibraryFile.Kind.OBJECT) {
          for (Spot photograph : top.each("photographs")) {
            new PictureFiles(library.path()).check(photograph, reading);
          }
        }
      } else {
        new References(reading, ids).visit(file.kind(), top);
      }
      found.addAll(reading.problems());
    } catch (LibraryException e) {
      found.addAll(e.problems());
      broken.add(file.relative());
      if (first) {
        visitor.unreadable(file);
      }
      for (Ids.Kind kind : Ids.Kind.values()) {
        if (kind.in == file.kind()) {
          ids.get(kind).lacksSome();
        }
      }
    }
  }

  /** Only what a command could read as well is handed on. */
  private <T> void hand(
      LibraryFile file, byte[] bytes, Reading reading, Fields fields, Codec<T> codec) {
    T value = reading.value(fields, codec);
    boolean sound =
        value != null
            && reading.problems().stream().allMatch(p -> p.severity() == Problem.Severity.WARNING);
    if (sound) {
      visitor.read(file, new Stored<>(value, file.path(), bytes, codec));
    } else {
      visitor.unreadable(file);
    }
  }

  /** How the files of a kind are read. */
  static Codec<?> codec(LibraryFile.Kind kind) {
    return switch (kind) {
      case SETTINGS -> SettingsCodec.SETTINGS;
      case WORK -> WorkCodec.WORK;
      case VOCABULARY -> VocabularyCodec.VOCABULARY;
      case HOMONYMS -> VocabularyCodec.REGISTER;
      case CHARACTERS -> CharacterKeyCodec.KEY;
      case OBJECT -> OwnObjectCodec.OBJECT;
      case MINE -> MineCodec.MINE;
      case RECEIVED -> ReceivedCodec.KEPT;
      case PAGES -> PageTextCodec.PAGES;
    };
  }
}
