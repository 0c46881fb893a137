package merese.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import merese.model.LibrarySettings;

/**
 * Carries a library of an older format forward, one step after the other, before anything else is
 * written to it. Each file is copied as it was to {@code .history/format-N}, forced to the disk,
 * before it is written anew; library.json, which says the format, comes last. So a step that was
 * broken off is done again, and leaves alone what it has altered already.
 *
 * <p>Reading never carries forward: a library of format 1 answers as it stands.
 */
final class FormatSteps {
  /** From a format to the next one. */
  interface Step {
    int from();

    /** The files that it alters, below the library; library.json need not be among them. */
    List<String> files(Path root);

    /** A file as the next format has it; the same bytes where it is so already. */
    byte[] altered(String file, byte[] bytes);
  }

  /**
   * From format 2 on, changes are recorded in the library's history. No file looks different; but a
   * program that knows only format 1 would write behind the history's back.
   */
  private static final class WithHistory implements Step {
    @Override
    public int from() {
      return 1;
    }

    @Override
    public List<String> files(Path root) {
      return List.of();
    }

    @Override
    public byte[] altered(String file, byte[] bytes) {
      return bytes;
    }
  }

  private static final List<Step> ALL = List.of(new WithHistory());

  private final Path root;
  private final Steps steps;

  FormatSteps(Path root, Steps steps) {
    this.root = root;
    this.steps = steps;
  }

  /**
   * The caller has the library's lock.
   *
   * @return whether there was anything to do
   * @throws LibraryException where library.json cannot be read, or is of a later format
   */
  static boolean carryForward(Path root) {
    return new FormatSteps(root, Steps.NONE).carryForward(ALL);
  }

  boolean carryForward(List<Step> all) {
    Path settings = root.resolve(FolderScan.SETTINGS);
    int before = format(settings, Disk.readInside(root, settings));
    int format = before;
    for (Step step : all) {
      if (step.from() == format) {
        take(step);
        format++;
      }
    }
    return format != before;
  }

  private void take(Step step) {
    for (String file : step.files(root)) {
      if (!file.equals(FolderScan.SETTINGS)) {
        byte[] bytes = Disk.readInside(root, root.resolve(file));
        replace(step.from(), file, bytes, step.altered(file, bytes));
      }
    }
    byte[] bytes = Disk.read(root.resolve(FolderScan.SETTINGS));
    byte[] altered = step.altered(FolderScan.SETTINGS, bytes);
    replace(step.from(), FolderScan.SETTINGS, bytes, withFormat(step.from() + 1, altered));
  }

  private void replace(int from, String file, byte[] was, byte[] is) {
    if (!Arrays.equals(was, is)) {
      Path target = root.resolve(file);
      Disk.requireReplaceable(target);
      Path copy = copyOf(from, file);
      step("copy a file", copy);
      Disk.replace(copy, was);
      Disk.forceFolder(root.resolve(HistoryFolder.FOLDER));
      Disk.forceFolder(root);
      step("alter a file", target);
      Disk.replace(target, is);
    }
  }

  private void step(String what, Path file) {
    try {
      steps.before(what);
    } catch (IOException e) {
      throw Disk.unwritable(file, e);
    }
  }

  private Path copyOf(int format, String file) {
    Path history = root.resolve(HistoryFolder.FOLDER);
    new HistoryFolder(root).numbers(); // refuses one that is a link, or no folder
    return history.resolve("format-" + format).resolve(file);
  }

  private static int format(Path file, byte[] bytes) {
    Source source = Source.of(file, bytes);
    Json.Obj json = JsonReader.read(source);
    SettingsCodec.requireKnownFormat(source, json);
    LibrarySettings settings = Reading.decode(source, json, SettingsCodec.SETTINGS);
    return settings.format();
  }

  /** The number alone is written anew. */
  private byte[] withFormat(int format, byte[] bytes) {
    Source source = Source.of(root.resolve(FolderScan.SETTINGS), bytes);
    Json number = JsonReader.read(source).get("format");
    String text = source.text();
    String now = text.substring(0, number.start()) + format + text.substring(number.end());
    return now.getBytes(StandardCharsets.UTF_8);
  }
}
