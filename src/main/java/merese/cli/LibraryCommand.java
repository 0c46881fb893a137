package merese.cli;

import java.nio.file.Path;

/** A command that reads or changes a library, and so takes {@code --library DIR}. */
abstract class LibraryCommand extends Command {
  /** The folder that is used when the option is not given. */
  static final String USUAL = "library";

  private final Given<Path> folder =
      option(
          Path.class,
          "DIR",
          "The library to use; without this, the folder 'library' here.",
          "--library");

  LibraryCommand(Context context, String description, String... examples) {
    super(context, description, examples);
  }

  /** The absolute path of the library's folder; it need not exist. */
  final Path library() {
    return context().resolve(folder.value().orElse(Path.of(USUAL)));
  }
}
