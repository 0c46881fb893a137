package merese.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import merese.model.OwnObject;
import merese.model.Work;

/** Names of works, facets and objects as names of files that every system can hold. */
final class FileNames {
  private static final String FORBIDDEN = "/\\:*?\"<>|";
  private static final int LONGEST = 200;

  /** What Windows keeps for devices; a digit from 0 to 9 follows the last two. */
  private static final List<String> DEVICES = List.of("con", "prn", "aux", "nul", "com", "lpt");

  private FileNames() {}

  static boolean isUsable(String name) {
    if (name.isBlank()
        || name.startsWith(".")
        || name.endsWith(".")
        || !name.equals(name.strip())
        || name.getBytes(StandardCharsets.UTF_8).length > LONGEST
        || isDevice(name)) {
      return false;
    }
    for (int i = 0; i < name.length(); i += Character.charCount(name.codePointAt(i))) {
      int c = name.codePointAt(i);
      if (Character.isISOControl(c)
          || FORBIDDEN.indexOf(c) >= 0
          || Character.getType(c) == Character.SURROGATE) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether Windows would not open a file of the name, whatever its ending. From "Naming Files,
   * Paths, and Namespaces" in Microsoft's documentation, from memory.
   */
  private static boolean isDevice(String name) {
    int dot = name.indexOf('.');
    String first = (dot < 0 ? name : name.substring(0, dot)).strip().toLowerCase(Locale.ROOT);
    if (first.length() == 3) {
      return DEVICES.indexOf(first) >= 0 && DEVICES.indexOf(first) < 4;
    }
    return first.length() == 4
        && DEVICES.indexOf(first.substring(0, 3)) >= 4
        && "0123456789¹²³".indexOf(first.charAt(3)) >= 0;
  }

  /** The name itself, or one like it that a file can have. */
  static String mended(String name, String standIn) {
    if (isUsable(name)) {
      return name;
    }
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      String letter = name.substring(i, i + 1);
      letters.append(isUsable("x" + letter + "x") ? letter : "-");
    }
    String text = letters.toString().strip();
    while (text.startsWith(".")) {
      text = text.substring(1);
    }
    if (text.length() > 60) {
      text = text.substring(text.length() - 60);
    }
    return isUsable(text) ? text : standIn + (isUsable("x-" + text) ? "-" + text : "");
  }

  /** The same for all names that some system takes for one: capitals and composed accents. */
  static String folded(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }

  static void requireUsable(Path folder, String name) {
    if (!isUsable(name)) {
      throw new LibraryException(
          folder,
          Quote.of(name) + " cannot be the name of a file",
          "use letters, digits and hyphens, as in \"quenby-1949\"");
    }
  }

  /** The name that a value's file must have; null where it does not depend on the value. */
  private static String nameOf(Object value) {
    if (value instanceof Work work) {
      return work.id();
    }
    if (value instanceof OwnObject object) {
      return object.ref();
    }
    return value instanceof VocabularyFile file ? file.facet().id() : null;
  }

  static void requireNameOf(Object value, Path file) {
    String name = nameOf(value);
    if (name != null && !name.equals(LibraryFile.nameOf(file))) {
      throw new LibraryException(
          file,
          "what is to be saved here is called " + Quote.of(name),
          "its name must be that of its file: add it under the new name and delete the old");
    }
  }

  /** The sub-folder of a large library that a work belongs in: the first two letters of its id. */
  static Path shard(Path works, String id) {
    int end = id.offsetByCodePoints(0, Math.min(2, id.codePointCount(0, id.length())));
    String letters = id.substring(0, end).toLowerCase(Locale.ROOT).strip();
    return works.resolve(letters.endsWith(".") ? letters.substring(0, 1) : letters);
  }
}
