package merese.cli;

import java.nio.file.Path;
import merese.store.LibraryFolder;

/** Makes a library. */
final class NewCommand extends Command {
  private final Given<Path> folder =
      word(Path.class, "DIR", "The folder to make; it must not exist, or be empty.");

  private final Given<String> title =
      option(
          String.class,
          "TEXT",
          "What to call the library; without this, the folder's name.",
          "--title");

  NewCommand(Context context) {
    super(
        context,
        "Make an empty library with the starter vocabulary.",
        "merese new library --title \"My glass shelf\"");
  }

  @Override
  int run() throws Exception {
    Path made = context().resolve(folder.required());
    LibraryFolder.create(made, title.value().orElse(String.valueOf(made.getFileName())));
    context().out().println("Made the library " + made + ".");
    return ExitCode.DONE;
  }
}
