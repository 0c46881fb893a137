package merese.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import merese.exchange.picture.PictureCopy;

/** The option that brings a photograph of the user's into the library. */
final class PhotoOption {
  /** Said wherever one was kept. */
  static final String CAUTION =
      "A picture in a book is usually in copyright: check before showing it.";

  private final Command command;
  private final Given<String> file;

  PhotoOption(Command command) {
    this.command = command;
    this.file =
        command.option(
            String.class,
            "FILE",
            "Your photograph of it, of which a copy is kept: upright, and without metadata.",
            "--photo");
  }

  Optional<PictureCopy> picture() {
    return file.value().map(typed -> PictureCopy.of(file(command.context(), typed)));
  }

  /** A file as it was typed; a shell leaves the "~" where the name stands in quotes. */
  static Path file(Context context, String typed) {
    String home = context.environment().getOrDefault("HOME", "");
    String path = typed.startsWith("~/") && !home.isEmpty() ? home + typed.substring(1) : typed;
    try {
      return context.resolve(Path.of(path));
    } catch (InvalidPathException e) {
      throw CommandException.wrongUse("\"" + typed + "\" cannot be the name of a file");
    }
  }
}
