package merese.desk.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import merese.store.LibraryException;
import merese.store.LibraryFolder;

/** Shows the pictures of the library, and no other file. */
final class Pictures {
  private static final Map<String, String> TYPES =
      Map.of(
          "jpg", "image/jpeg",
          "jpeg", "image/jpeg",
          "png", "image/png",
          "gif", "image/gif",
          "webp", "image/webp");

  private final LibraryFolder library;

  Pictures(LibraryFolder library) {
    this.library = library;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pictures/<file>", this::send);
  }

  private void send(Context request) throws IOException {
    String name = request.pathParam("file");
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    String type = TYPES.get(ending);
    if (type == null) {
      throw new NotThereException("there is no such picture");
    }
    Path file;
    try {
      file = library.picture(name);
    } catch (LibraryException e) {
      throw new NotThereException("there is no such picture");
    }
    if (!Files.isRegularFile(file)) {
      throw new NotThereException("there is no such picture");
    }
    request.header("Cache-Control", "no-cache");
    request.contentType(type).result(Files.newInputStream(file));
  }
}
