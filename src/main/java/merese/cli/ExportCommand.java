package merese.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Exported;
import merese.answer.Exported.Format;
import merese.answer.SourceChoice;
import merese.shelf.Shelf;

/** Writes sources, or the vocabulary, for other programs. */
final class ExportCommand extends LibraryCommand {
  private static final String SKOS = "skos";

  private final Given<List<String>> sources =
      optionalWords("SOURCE", "Keys of editions, or key#part. Without any, all sources.");

  private final Given<String> as =
      option(
          String.class,
          "FORMAT",
          "What to write: " + String.join(", ", codes()) + ". Without this, bibtex.",
          "--as");
  private final Given<Path> file =
      option(Path.class, "FILE", "Write it to a file.", "--output", "-o");
  private final Given<String> covering =
      option(String.class, "TERM", "Only sources that cover a feature.", "--covering");
  private final CoverageOptions options = new CoverageOptions(this);

  ExportCommand(Context context) {
    super(
        context,
        "Write sources, with the places noted from them, for other programs.\n"
            + "skos writes the vocabulary.",
        "merese export --as bibtex --output glass.bib",
        "merese export --as biblatex quenby-1949 osmere-1988#feet",
        "merese export --as csv --covering \"bladed ring\" --pictured",
        "merese export --as skos --output terms.ttl");
  }

  @Override
  int run() throws IOException {
    String code = as.value().orElse(Format.BIBTEX.code());
    Optional<Format> format = named(code);
    if (format.isEmpty() && !code.equals(SKOS)) {
      throw CommandException.wrongUse(
          "--as: there is no format \""
              + code
              + "\"; the formats are "
              + String.join(", ", codes()));
    }
    SourceChoice choice = choice();
    if (format.isEmpty() && !choice.equals(SourceChoice.ALL)) {
      throw CommandException.wrongUse("--as skos writes the whole vocabulary; name no sources");
    }
    if (file.value().isEmpty()) {
      write(choice, format, context().out());
      return ExitCode.DONE;
    }
    Path target = context().resolve(file.value().get());
    String written = toFile(choice, format, target);
    ErrorLines.print(context(), "Wrote " + written + " to " + target + ".");
    return ExitCode.DONE;
  }

  /** Through a file beside it, so that a failure leaves what was there. */
  private String toFile(SourceChoice choice, Optional<Format> format, Path target)
      throws IOException {
    Path draft = target.resolveSibling("." + target.getFileName() + ".tmp");
    try {
      String written;
      try (BufferedWriter out = Files.newBufferedWriter(draft, StandardCharsets.UTF_8)) {
        written = write(choice, format, out);
      }
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
      return written;
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private String write(SourceChoice choice, Optional<Format> format, Writer out)
      throws IOException {
    try (Shelf shelf = openShelf()) {
      return format.isPresent()
          ? Page.many(Exported.write(shelf, choice, format.get(), out), "record")
          : VocabularyExport.write(shelf, out);
    }
  }

  private SourceChoice choice() {
    List<String> named = sources.value().orElse(List.of());
    boolean asks = covering.value().isPresent() || options.namesConcept();
    Narrowing narrowing = options.narrowing();
    if (!asks && (narrowing.pictured() || narrowing.place().isPresent())) {
      throw CommandException.wrongUse("--pictured and --place go with --covering TERM");
    }
    return new SourceChoice(
        named,
        asks
            ? Optional.of(options.question(covering.value().map(List::of).orElse(List.of())))
            : Optional.empty(),
        asks ? Narrowing.NONE : narrowing);
  }

  private static Optional<Format> named(String code) {
    for (Format format : Format.values()) {
      if (format.code().equals(code)) {
        return Optional.of(format);
      }
    }
    return Optional.empty();
  }

  private static List<String> codes() {
    List<String> codes = new ArrayList<>();
    for (Format format : Format.values()) {
      codes.add(format.code());
    }
    codes.add(SKOS);
    return codes;
  }
}
