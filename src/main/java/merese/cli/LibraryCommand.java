package merese.cli;

import java.util.Optional;
import merese.shelf.Shelf;
import merese.store.LibraryFolder;

/** A command that reads or changes a library, and so takes {@code --library DIR}. */
abstract class LibraryCommand extends Command {
  private final Given<String> folder =
      option(
          String.class,
          "DIR",
          "The library to use; without this, MERESE_LIBRARY or the folder library here.",
          "--library");

  private Shelf shelf;

  LibraryCommand(Context context, String description, String... examples) {
    super(context, description, examples);
  }

  /** The library that the option, the environment or the folder that the user is in names. */
  final LibraryFolder library() {
    return LibraryFolder.open(
        LibraryFolder.find(folder.value(), context().environment(), context().workingDirectory()));
  }

  /** What the option says. */
  final Optional<String> named() {
    return folder.value();
  }

  /** The same with its index, brought up to date. */
  final Shelf openShelf() {
    shelf = Shelf.open(library(), new ShelfProgress(context()));
    return shelf;
  }

  /** Below the answer, where it is not scrolled away, and below an error that it may explain. */
  @Override
  final void afterwards() {
    if (shelf == null) {
      return;
    }
    if (!shelf.shortfalls().isEmpty()) {
      IncompleteText.print(context(), shelf.shortfalls());
    }
    context().err().flush();
    shelf.lookAtAll();
  }
}
