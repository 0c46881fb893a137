package merese.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * The folder {@code pictures} of a library. A name that comes from data never leads out of it:
 * neither by its words nor by a symbolic link, since a library may come from anybody.
 */
final class PictureFiles {
  static final String FOLDER = "pictures";

  private static final String REMEDY =
      "name a file below the library's folder pictures, as in \"d-1/front.jpg\"";

  private final Path folder;

  PictureFiles(Path root) {
    this.folder = root.resolve(FOLDER);
  }

  /**
   * Where a picture is, or belongs.
   *
   * @param relative below the folder, with "/"
   * @throws LibraryException where that is not in the folder, or no place for a file
   */
  Path place(String relative) {
    String fault = fault(relative);
    if (!fault.isEmpty()) {
      throw new LibraryException(folder, Quote.of(relative) + fault, REMEDY);
    }
    return folder.resolve(relative);
  }

  /** What is wrong with a name, as the rest of a sentence; "" where nothing is. */
  String fault(String relative) {
    for (String name : relative.split("/", -1)) {
      if (!isName(name)) {
        return " is not the name of a file in the folder " + FOLDER;
      }
    }
    Path place;
    try {
      place = folder.resolve(relative);
    } catch (InvalidPathException e) {
      return " is not the name of a file in the folder " + FOLDER;
    }
    if (!place.normalize().startsWith(folder.normalize())) {
      return " leads out of the folder " + FOLDER;
    }
    for (Path at = place; ; at = at.getParent()) {
      if (Files.isSymbolicLink(at)) {
        return at.equals(place)
            ? " is a symbolic link, which is not followed"
            : " stands behind a symbolic link, which is not followed";
      }
      if (at.equals(folder)) {
        break;
      }
    }
    return Files.exists(place) ? faultOfWhatIsThere(place) : "";
  }

  /** Wider than what we would call a file, since pictures are called what a camera calls them. */
  private static boolean isName(String name) {
    boolean drive = name.length() == 2 && name.charAt(1) == ':';
    if (name.isBlank() || name.startsWith(".") || name.indexOf('\\') >= 0 || drive) {
      return false;
    }
    for (int i = 0; i < name.length(); i++) {
      if (Character.isISOControl(name.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private String faultOfWhatIsThere(Path place) {
    if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)) {
      return " is no file";
    }
    try {
      return place.toRealPath().startsWith(folder.toRealPath())
          ? ""
          : " leads out of the folder " + FOLDER;
    } catch (IOException e) {
      return " cannot be read" + Disk.reason(e);
    }
  }

  /**
   * Reports a photograph whose file is not in the folder. A library without the folder keeps its
   * photographs elsewhere, and calls them what it likes.
   */
  void check(Spot photograph, Reading reading) {
    Spot file = photograph.at("file");
    String relative = file == null ? null : file.text();
    if (relative == null
        || relative.isBlank()
        || !Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    String fault = fault(relative);
    if (!fault.isEmpty()) {
      reading.error(file.value().start(), file.where(), Quote.of(relative) + fault, REMEDY);
    }
  }
}
