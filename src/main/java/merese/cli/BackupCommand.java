package merese.cli;

import java.nio.file.Path;
import merese.answer.json.AnswerJson;
import merese.store.Backup;
import merese.store.LibraryFolder;
import merese.store.Problem.Severity;

/** Writes the library into one file. */
final class BackupCommand extends LibraryCommand {
  private final Given<Path> file = word(Path.class, "FILE.zip", "The file to write.");

  private final Given<Boolean> replace =
      flag("Replace a file of this name that is there already.", "--replace");
  private final Given<Boolean> json = flag("Print what was written as JSON.", "--json");

  BackupCommand(Context context) {
    super(
        context,
        "Write the whole library, with its history, into one zip.\n"
            + "The zip lists the SHA-256 of each file and is read back before it gets its name.",
        "merese backup shelf.zip",
        "merese backup /mnt/stick/shelf.zip --replace");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    Path zip = context().resolve(file.required());
    Backup.Written written = Backup.write(library, zip, replace.isSet());
    if (json.isSet()) {
      AnswerJson.print(context().out(), written);
    } else {
      print(library, zip, written);
    }
    return ExitCode.DONE;
  }

  private void print(LibraryFolder library, Path zip, Backup.Written written) {
    Page page = new Page(context().out(), context().screen());
    page.text(
        "Wrote "
            + context().fromHere(zip)
            + ": "
            + Page.many(written.files(), "file")
            + ", "
            + Progress.grouped(written.bytes())
            + " bytes"
            + ", in a zip of "
            + Progress.grouped(written.zipped())
            + " bytes"
            + ". It was read back and is whole.");
    if (!written.leftOut().isEmpty()) {
      page.text("Not in it, as links are not followed: " + String.join(", ", written.leftOut()));
    }
    int wrong = (int) library.check().stream().filter(p -> p.severity() == Severity.ERROR).count();
    if (wrong > 0) {
      page.text(
          "The library has "
              + Page.many(wrong, "error")
              + ", and is in the backup as it is; merese check says which.");
    }
  }
}
