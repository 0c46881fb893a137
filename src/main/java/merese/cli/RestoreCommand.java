package merese.cli;

import java.nio.file.Path;
import merese.answer.json.AnswerJson;
import merese.store.Restore;

/** Makes a library of a backup. */
final class RestoreCommand extends Command {
  private final Given<Path> file = word(Path.class, "FILE.zip", "A backup.");

  private final Given<Path> folder =
      word(Path.class, "DIR", "Where the library shall be; it must not exist, or be empty.");

  private final Given<Boolean> json = flag("Print what was written as JSON.", "--json");

  RestoreCommand(Context context) {
    super(
        context,
        "Make the library of a backup again, in a new folder.\n"
            + "Each file is held to the sums in the backup; a damaged backup leaves nothing behind.",
        "merese restore shelf.zip shelf-again");
  }

  @Override
  int run() {
    Path dir = context().resolve(folder.required());
    Restore.Written written = Restore.to(dir, context().resolve(file.required()));
    if (json.isSet()) {
      AnswerJson.print(context().out(), written);
      return ExitCode.DONE;
    }
    new Page(context().out(), context().screen())
        .text(
            "Made the library "
                + context().fromHere(written.library())
                + ": "
                + Page.many(written.files(), "file")
                + ", "
                + Progress.grouped(written.bytes())
                + " bytes"
                + "; each is as the backup's sums say.");
    return ExitCode.DONE;
  }
}
