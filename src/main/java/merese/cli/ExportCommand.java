package merese.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import merese.answer.Exported;
import merese.shelf.Shelf;

/** Writes sources for other programs. */
final class ExportCommand extends LibraryCommand {
  private static final String BIBTEX = "bibtex";

  private final Given<List<String>> sources =
      optionalWords("SOURCE", "Keys of editions, or key#part. Without any, all sources.");

  private final Given<String> as =
      option(String.class, "FORM", "What to write: bibtex. Without this, bibtex.", "--as");
  private final Given<Path> file =
      option(Path.class, "FILE", "Write it to a file.", "--output", "-o");

  ExportCommand(Context context) {
    super(
        context,
        "Write sources, with the places noted from them, for other programs.",
        "merese export --as bibtex --output glass.bib",
        "merese export --as bibtex quenby-1949 osmere-1988#feet");
  }

  @Override
  int run() throws IOException {
    if (!as.value().orElse(BIBTEX).equals(BIBTEX)) {
      throw CommandException.wrongUse(
          "--as: there is no form \"" + as.value().get() + "\"; the form is bibtex");
    }
    try (Shelf shelf = openShelf()) {
      List<String> typed = sources.value().orElse(List.of());
      String text = shelf.ask(s -> Exported.bibtex(s, typed));
      if (file.value().isPresent()) {
        Path target = context().resolve(file.value().get());
        Files.writeString(target, text, StandardCharsets.UTF_8);
        context().err().println("Wrote " + target + ".");
      } else {
        context().out().print(text);
      }
    }
    return ExitCode.DONE;
  }
}
