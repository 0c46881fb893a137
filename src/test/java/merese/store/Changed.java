package merese.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/** A change of every sort to the library of {@link Fixture}, and what a library holds. */
final class Changed {
  static final byte[] REFUSED = {'@', 'b', 'o', 'o', 'k', (byte) 0xE9};

  private Changed() {}

  /** A power cut: nothing of the program's runs any more. */
  static final class PowerCut extends Error {
    private static final long serialVersionUID = 1;
  }

  static Work work(String id, String title) {
    return new Work(
        id,
        SourceKind.LEAFLET,
        title,
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        false,
        List.of(),
        List.of());
  }

  static OwnObject object(String ref) {
    return new OwnObject(
        ref, "A jug", Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
  }

  static ReceivedRecord preamble() {
    return new ReceivedRecord(
        "bibtex",
        "preamble",
        "",
        List.of(new ReceivedRecord.Field("value", "\\newcommand{\\x}{}")));
  }

  /** Saves three files, adds three, rejects one, deletes one. */
  static void stage(LibraryFolder library, ChangeSet change) {
    Stored<LibrarySettings> settings = library.storedSettings();
    LibrarySettings old = settings.value();
    change.save(
        settings,
        new LibrarySettings(
            old.format(), "Another title", old.language(), old.style(), old.dateProfile()));
    Stored<Work> work = library.readWork(library.resolve(Fixture.WORK));
    change.save(work, work.value().withAlternateTitles(List.of("Tarn and Brook")));
    Stored<Mine> mine = library.readMine();
    change.save(mine, mine.value());
    change.save(library.readKept(), List.of(preamble()));
    change.add(work("brook", "Brook"));
    change.add(object("d-18"));
    change.reject("glass.bib", REFUSED);
    change.delete(library.readObject(library.resolve("objects/d-17.json")));
  }

  static void make(LibraryFolder library, Steps steps) {
    try (ChangeSet change = library.change("a test", steps)) {
      stage(library, change);
      change.commit();
    }
  }

  /** Every file of a library with what it holds, hidden ones too. */
  static Map<String, String> content(Path root) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.toList()) {
        String name = root.relativize(file).toString();
        if (!name.equals(LibraryLock.FILE) && !name.equals(ChangeMark.FILE)) {
          files.put(name, Files.isDirectory(file) ? "/" : Hash.of(withoutTime(name, file)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  /** The second in which a change was made is all that differs in its entry of the history. */
  private static byte[] withoutTime(String name, Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    return name.startsWith(HistoryFolder.FOLDER)
        ? new String(bytes, UTF_8).replaceFirst("\"at\": \"[^\"]*\"", "").getBytes(UTF_8)
        : bytes;
  }

  /** The names of the steps of a change. */
  static List<String> steps(Path dir) {
    List<String> steps = new ArrayList<>();
    make(Fixture.in(dir), steps::add);
    return steps;
  }
}
