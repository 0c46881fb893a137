package merese.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Stands in until the store is there. */
public final class LibraryFolder {
  private LibraryFolder() {}

  public static void create(Path folder, String title) throws IOException {
    Files.createDirectory(folder);
    Files.writeString(
        folder.resolve("library.json"), "{\"format\":1, \"title\":\"" + title + "\"}\n");
  }
}
