package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a file of a library holds, the program says what is wrong in it, in words, and the other
 * files answer. Damage at random is from fixed seeds.
 */
@TestInstance(Lifecycle.PER_CLASS)
class FuzzedLibraryTest {
  private static final String WORK = "works/tressick-1954.json";
  private static final List<String> FILES =
      List.of(
          WORK,
          "vocabulary/ring.json",
          "vocabulary/homonyms.json",
          "vocabulary/characters.json",
          "objects/d-1.json",
          "mine.json",
          "library.json");

  private static final String[] VALUES = {
    "null",
    "7",
    "-1",
    "1e999",
    "true",
    "\"\"",
    "\"x\"",
    "{}",
    "[]",
    "[null]",
    "[[]]",
    "{\"a\":1}",
    "99999999999999999999"
  };

  private Path home;

  @BeforeAll
  void makeALibrary(@TempDir Path folder) {
    home = new Shelves(folder).of("rings");
  }

  private Ran ask(String... args) {
    return Ran.in(home, Map.of("COLUMNS", "200"), args);
  }

  private Path path(String file) {
    return home.resolve("library").resolve(file);
  }

  /** Asks three questions of the library as it is now. */
  private void stands(String what, String file, boolean named) {
    Ran covers = ask("covers", "bladed ring");
    Ran find = ask("find", "knife");
    Ran check = ask("check");
    for (Ran ran : List.of(covers, find, check)) {
      String said = what + " in " + file + ": " + cut(ran.out()) + "\n" + cut(ran.err());
      assertFalse(ran.err().contains("fault in merese"), said);
      assertFalse(ran.err().contains("memory is full"), said);
      assertFalse(ran.err().contains("\tat ") || ran.out().contains("\tat "), said);
      assertTrue(ran.code() == 0 || ran.code() == 1, said);
    }
    assertEquals(0, covers.code(), what + " in " + file + ": " + cut(covers.err()));
    assertEquals(0, find.code(), what + " in " + file + ": " + cut(find.err()));
    assertTrue(covers.out().contains("Haskeld 1983"), what + ": " + cut(covers.out()));
    assertTrue(find.out().contains("Quenby"), what + ": " + cut(find.out()));
    if (named) {
      assertTrue(covers.err().contains(file), what + ": " + cut(covers.err()));
      assertTrue(find.err().contains(file), what + ": " + cut(find.err()));
      assertTrue(check.out().contains(file), what + ": " + cut(check.out()));
      assertEquals(1, check.code());
    }
    assertTrue(covers.err().length() < 4000, what + ": " + cut(covers.err()));
  }

  private static String cut(String text) {
    return text.length() < 1500 ? text : text.substring(0, 1500) + "…";
  }

  private void with(String what, String file, byte[] bytes, boolean named) throws IOException {
    byte[] whole = Files.readAllBytes(path(file));
    Files.write(path(file), bytes);
    try {
      stands(what, file, named);
    } finally {
      Files.write(path(file), whole);
    }
  }

  private void with(String what, String file, String text, boolean named) throws IOException {
    with(what, file, text.getBytes(StandardCharsets.UTF_8), named);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void filesCutShort(long seed) throws IOException {
    Random random = new Random(seed);
    for (String file : FILES) {
      byte[] whole = Files.readAllBytes(path(file));
      with("cut", file, Arrays.copyOf(whole, random.nextInt(whole.length - 2)), true);
    }
    with("empty", WORK, "", true);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void bitsTurned(long seed) throws IOException {
    Random random = new Random(seed);
    for (String file : FILES) {
      byte[] bytes = Files.readAllBytes(path(file));
      for (int i = 0; i < 3; i++) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
      with("bits", file, bytes, false);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void valuesOfOtherTypes(long seed) throws IOException {
    Random random = new Random(seed);
    for (String file : FILES) {
      String whole = Files.readString(path(file));
      List<Integer> colons = new ArrayList<>();
      for (int i = whole.indexOf("\": "); i >= 0; i = whole.indexOf("\": ", i + 1)) {
        colons.add(i + 3);
      }
      int at = colons.get(random.nextInt(colons.size()));
      int end = end(whole, at);
      String value = VALUES[random.nextInt(VALUES.length)];
      with(value + " at " + at, file, whole.substring(0, at) + value + whole.substring(end), false);
    }
  }

  /** Where a value ends that stands on one line; for others, their first character. */
  private static int end(String text, int at) {
    char first = text.charAt(at);
    if (first == '{' || first == '[') {
      return at + 1;
    }
    int end = at;
    while (text.charAt(end) != '\n' && (text.charAt(end) != ',' || first == '"')) {
      end++;
    }
    return text.charAt(end - 1) == ',' ? end - 1 : end;
  }

  @Test
  void nestedDeeply() throws IOException {
    for (String file : FILES) {
      with("nested", file, "[".repeat(100_000), true);
    }
    with("nested", WORK, "{\"id\":".repeat(100_000), true);
  }

  @Test
  void oddCharacters() throws IOException {
    String whole = Files.readString(path(WORK));
    for (String odd :
        List.of(
            "\\ud800",
            "\\udfff\\ud800",
            "\u202eגביע\u202c",
            "e\u0301\u0301\u0301\u0301".repeat(50),
            "\\u0000\\u001b[31m\\u0007",
            "\uFFFF\uFEFF\u2028",
            "𝄞👨‍👩‍👧")) {
      for (String key : List.of("title", "printed", "key", "locator", "words")) {
        int at = whole.indexOf("\"" + key + "\": \"") + key.length() + 5;
        with(odd + " in " + key, WORK, whole.substring(0, at) + odd + whole.substring(at), false);
      }
    }
    with("a zero byte", WORK, whole.replace("triangular", "tri\0angular"), true);
    with("half a character", WORK, new byte[] {'{', '"', (byte) 0xC3, '"', '}'}, true);
  }

  @Test
  void filesBeyondTheLimit() throws IOException {
    byte[] whole = Files.readAllBytes(path(WORK));
    try (RandomAccessFile file = new RandomAccessFile(path(WORK).toFile(), "rw")) {
      file.setLength(100L << 20);
    }
    try {
      stands("100 MB", WORK, true);
      Ran again = ask("covers", "bladed ring");
      assertTrue(again.err().contains("the file is 100 MB large"), again.err());
    } finally {
      Files.write(path(WORK), whole);
    }
  }

  @Test
  void oneHugeText() throws IOException {
    String whole = Files.readString(path(WORK));
    String letters = "x".repeat(999_999);
    String words = "ring ".repeat(59_999);
    for (String key : List.of("title", "printed", "key", "locator", "words", "id")) {
      int at = whole.indexOf("\"" + key + "\": \"") + key.length() + 5;
      for (String huge : List.of(letters, words)) {
        with(key, WORK, whole.substring(0, at) + huge + whole.substring(at), false);
      }
    }
    byte[] justBelow = new byte[(64 << 20) - 1];
    Arrays.fill(justBelow, (byte) 'x');
    byte[] start =
        whole.substring(0, whole.indexOf("\"title\": \"") + 10).getBytes(StandardCharsets.UTF_8);
    System.arraycopy(start, 0, justBelow, 0, start.length);
    byte[] close = "\"}".getBytes(StandardCharsets.UTF_8);
    System.arraycopy(close, 0, justBelow, justBelow.length - 2, 2);
    with("64 MB", WORK, justBelow, true);
  }
}
