package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a file holds, reading it gives a value or a {@link LibraryException}. */
class FuzzTest {
  private static final String[] TOKENS = {
    "null",
    "\"\"",
    "{}",
    "[]",
    "-1",
    "1e999",
    "true",
    "\"x\"",
    ",",
    ":",
    "\"",
    "{",
    "]",
    "\\",
    "/",
    "\u0000",
    "\"\\ud800\"",
    "99999999999999999999",
    "[[[[[[",
    "\"?\""
  };

  static List<String> files() {
    return CodecTest.files();
  }

  private static boolean reads(byte[] bytes, String file) {
    try {
      Stored.of(Path.of("f.json"), bytes, Fixture.FILES.get(file));
      return true;
    } catch (LibraryException e) {
      for (Problem problem : e.problems()) {
        assertTrue(problem.line() == 0 || problem.column() > 0, problem.toString());
        assertTrue(!problem.what().isBlank(), problem.toString());
        assertEquals(1, problem.toString().lines().count(), problem.toString());
      }
      return false;
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void cutAnywhere(String file) {
    byte[] whole = Fixture.bytes(file);
    for (int length = 0; length < whole.length - 2; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertEquals(false, reads(cut, file), new String(cut, StandardCharsets.UTF_8));
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void bytesChangedAnywhere(String file) {
    byte[] whole = Fixture.bytes(file);
    Random random = new Random(4711);
    for (int i = 0; i < 3000; i++) {
      byte[] changed = whole.clone();
      for (int n = random.nextInt(3); n >= 0; n--) {
        changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
      }
      reads(changed, file);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void tokensInsertedOrPutInPlaceOfAnything(String file) {
    String whole = Fixture.text(file);
    Random random = new Random(42);
    for (int i = 0; i < 3000; i++) {
      int from = random.nextInt(whole.length());
      int to = Math.min(whole.length(), from + random.nextInt(12));
      String token = TOKENS[random.nextInt(TOKENS.length)];
      String changed = whole.substring(0, from) + token + whole.substring(to);
      reads(changed.getBytes(StandardCharsets.UTF_8), file);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyValueReplacedByEveryOtherKind(String file) {
    String whole = Fixture.text(file);
    for (Json value : values(Fixture.parse(whole), new ArrayList<>())) {
      for (String other : List.of("null", "7", "\"x\"", "\"\"", "{}", "[]", "[null]", "true")) {
        String changed = whole.substring(0, value.start()) + other + whole.substring(value.end());
        reads(changed.getBytes(StandardCharsets.UTF_8), file);
      }
    }
  }

  private static List<Json> values(Json value, List<Json> into) {
    into.add(value);
    if (value instanceof Json.Obj object) {
      object.members().forEach(member -> values(member.value(), into));
    } else if (value instanceof Json.Arr array) {
      array.items().forEach(item -> values(item, into));
    }
    return into;
  }

  @Test
  void theCheckOfALibraryStandsItToo(@TempDir Path dir) {
    LibraryFolder library = Fixture.in(dir);
    Random random = new Random(99);
    for (String file : files()) {
      String whole = Fixture.text(file);
      for (Json value : values(Fixture.parse(whole), new ArrayList<>())) {
        String other = TOKENS[random.nextInt(8)];
        Fixture.write(
            library.resolve(file),
            whole.substring(0, value.start()) + other + whole.substring(value.end()));
        library.check();
      }
      Fixture.write(library.resolve(file), whole);
    }
    assertEquals(List.of(), library.check());
  }
}
