package merese.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assertions;

/**
 * A small library in which every key of every file stands at least once. Its files were laid out by
 * another program, Python's json.dumps(indent=2, ensure_ascii=False), so they check our layout.
 */
final class Fixture {
  static final String WORK = "works/tarnbrook.json";
  static final String RINGS = "vocabulary/ring.json";

  static final Map<String, Codec<?>> FILES =
      Map.of(
          "library.json",
          SettingsCodec.SETTINGS,
          WORK,
          WorkCodec.WORK,
          RINGS,
          VocabularyCodec.VOCABULARY,
          "vocabulary/homonyms.json",
          VocabularyCodec.REGISTER,
          "objects/d-17.json",
          OwnObjectCodec.OBJECT,
          "mine.json",
          MineCodec.MINE);

  private Fixture() {}

  static byte[] bytes(String relative) {
    try (var in = Fixture.class.getResourceAsStream("library/" + relative)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(String relative) {
    return new String(bytes(relative), StandardCharsets.UTF_8);
  }

  /** A copy of the library in {@code dir/library}. */
  static LibraryFolder in(Path dir) {
    Path root = dir.resolve("library");
    FILES.keySet().forEach(name -> write(root.resolve(name), text(name)));
    return LibraryFolder.open(root);
  }

  static void write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A folder with all that is in it. */
  static void delete(Path folder) {
    try (var all = Files.walk(folder)) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Json.Obj parse(String text) {
    return parse(text.getBytes(StandardCharsets.UTF_8));
  }

  static Json.Obj parse(byte[] bytes) {
    return JsonReader.read(Source.of(Path.of("f.json"), bytes));
  }

  static <T> T decode(String text, Codec<T> codec) {
    return Stored.of(Path.of("f.json"), text.getBytes(StandardCharsets.UTF_8), codec).value();
  }

  static <T> String encode(T value, Codec<T> codec) {
    byte[] lines = JsonPrinter.lines(ObjectBuilder.object(value, codec));
    return new String(lines, StandardCharsets.UTF_8);
  }

  /** What is wrong, as a person reads it. */
  static String refusal(Supplier<?> action) {
    return Assertions.assertThrows(LibraryException.class, action::get).getMessage();
  }

  static List<String> strings(List<Problem> problems) {
    return problems.stream().map(Problem::toString).toList();
  }
}
