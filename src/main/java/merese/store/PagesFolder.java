package merese.store;

import java.nio.file.Path;
import java.util.List;

/**
 * Where page texts are: a file for each attached file, in a folder for each edition. The folder is
 * called like the edition; of a key that no folder can be called, what can't stand there becomes a
 * hyphen. Which edition it is says the file itself.
 */
final class PagesFolder {
  private PagesFolder() {}

  /** The name of an edition's folder. */
  static String nameFor(String edition) {
    return FileNames.mended(edition, "source");
  }

  static Path of(Path root, String edition) {
    return root.resolve(FolderScan.PAGES).resolve(nameFor(edition));
  }

  /** Says where a file stands in the folder of another edition, which nobody would find. */
  static void check(LibraryFile file, Spot source, Reading reading) {
    if (source == null || source.text() == null) {
      return;
    }
    String wanted = FolderScan.PAGES + '/' + nameFor(source.text()) + '/';
    int slash = file.relative().lastIndexOf('/') + 1;
    if (!file.relative().substring(0, slash).equals(wanted)) {
      reading.error(
          source.value().start(),
          source.where(),
          "the pages of " + Quote.of(source.text()) + " stand in another folder than its own",
          "move the file to " + wanted + " in the library");
    }
  }

  static List<LibraryFile> files(Path root, String edition) {
    return new FolderScan(root).pages(nameFor(edition));
  }
}
