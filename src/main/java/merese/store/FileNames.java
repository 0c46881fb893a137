package merese.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import merese.model.OwnObject;
import merese.model.Work;

/** Names of works, facets and objects as names of files that every system can hold. */
final class FileNames {
  private static final String FORBIDDEN = "/\\:*?\"<>|";
  private static final int LONGEST = 200;
  private static final List<String> DEVICES = List.of("con", "prn", "aux", "nul");

  private FileNames() {}

  static boolean isUsable(String name) {
    if (name.isBlank()
        || name.startsWith(".")
        || name.endsWith(".")
        || !name.equals(name.strip())
        || name.getBytes(StandardCharsets.UTF_8).length > LONGEST
        || DEVICES.contains(name.toLowerCase(Locale.ROOT))) {
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
    return works.resolve(id.substring(0, end).toLowerCase(Locale.ROOT));
  }

  static boolean isShard(LibraryFolder.Folder folder) {
    return folder.relative().startsWith(FolderScan.WORKS + '/');
  }
}
