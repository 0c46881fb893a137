package merese.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.CoverageQuestion;
import merese.answer.FittedList;
import merese.answer.ReadingList;
import merese.answer.ReadingListQuestion;
import merese.answer.ReadingListQuestion.Arrangement;
import merese.answer.ReadingLists;
import merese.answer.Script;
import merese.answer.written.Breaking;
import merese.answer.written.Harmless;
import merese.answer.written.ListForm;
import merese.citation.Citations;
import merese.shelf.Shelf;

/** Cites the sources for one or several features. */
final class ReadingListCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      optionalWords("TERM", "The features, each a term: words of one term in quotation marks.");

  private final CoverageOptions options = new CoverageOptions(this);
  private final Given<String> by =
      option(
          String.class,
          "HOW",
          "feature: the sources of each; source: each source once. Without this, feature, or"
              + " source with a script.",
          "--by");
  private final Given<Path> script =
      option(
          Path.class,
          "FILE",
          "In the order of a script with marks such as [quenby-1949 pl. 31], [object d-17] or"
              + " [term ring-bladed].",
          "--script");
  private final Given<Integer> fit =
      option(
          Integer.class,
          "N",
          "Keep to N bytes, as for the description of a film: whole entries only.",
          "--fit");
  private final Given<Boolean> consulted =
      flag("Name the sources too that were checked without result.", "--consulted");
  private final CitationOptions citing = new CitationOptions(this);
  private final Given<Path> file =
      option(Path.class, "FILE", "Write the list to a file.", "--output", "-o");

  ReadingListCommand(Context context) {
    super(
        context,
        "Cite the sources for one or several features, with the pages and plates that count.",
        "merese reading-list \"bladed ring\" \"annulated ring\"",
        "merese reading-list \"air twist\" --pictured --style chicago-notes-bibliography",
        "merese reading-list \"folded foot\" --as html --output list.html",
        "merese reading-list --script talk.txt --fit 5000");
  }

  @Override
  int run() throws IOException {
    if (citing.asksForStyles()) {
      CitationOptions.printStyles(context());
      return ExitCode.DONE;
    }
    ListForm form = citing.form();
    if (fit.value().isPresent() && (form != ListForm.TEXT || consulted.isSet())) {
      throw CommandException.wrongUse("--fit prints text, without --as and --consulted");
    }
    List<CoverageQuestion> features = features();
    Arrangement arrangement = arrangement();
    try (Shelf shelf = openShelf()) {
      Citations citations = citing.citations(shelf);
      Optional<Script> read = readScript(shelf);
      ReadingListQuestion question =
          new ReadingListQuestion(features, arrangement, consulted.isSet(), read);
      ReadingList list = shelf.ask(s -> ReadingLists.answer(s, question, citations, form.output()));
      String text =
          fit.value().isPresent() ? fitted(list, fit.value().get()) : form.write(list, breaking());
      if (file.value().isPresent()) {
        write(text, context().resolve(file.value().get()));
      } else {
        context().out().print(text);
      }
      read.ifPresent(s -> s.remarks().forEach(r -> ErrorLines.print(context(), Harmless.words(r))));
      return list.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }

  /** A file is not wrapped. */
  private Breaking breaking() {
    return file.value().isPresent()
        ? Breaking.NONE
        : new ScreenBreaking(context().screen().width());
  }

  private String fitted(ReadingList list, int limit) {
    list.cautions().forEach(c -> ErrorLines.print(context(), Harmless.words(c)));
    return FittedList.of(list, limit)
        .orElseThrow(
            () -> new CommandException("--fit: not even one source fits in " + limit + " bytes"));
  }

  private Optional<Script> readScript(Shelf shelf) throws IOException {
    if (script.value().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(ScriptFile.read(context(), script.value().get(), shelf));
  }

  private void write(String text, Path target) throws IOException {
    Path folder = target.getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new CommandException(
          "--output: there is no folder " + folder + " to write " + target.getFileName() + " in");
    }
    if (Files.isDirectory(target)) {
      throw new CommandException(
          "--output: "
              + target
              + " is a folder; name a file, such as "
              + target.resolve("list.txt"));
    }
    Files.writeString(target, text, StandardCharsets.UTF_8);
    ErrorLines.print(context(), "Wrote " + target + ".");
  }

  private List<CoverageQuestion> features() {
    List<CoverageQuestion> features = new ArrayList<>();
    for (String term : terms.value().orElse(List.of())) {
      features.add(options.question(List.of(term)));
    }
    boolean none = features.isEmpty() && !(script.value().isPresent() && !options.namesConcept());
    return none ? List.of(options.question(List.of())) : features;
  }

  private Arrangement arrangement() {
    boolean once = script.value().isPresent() || fit.value().isPresent();
    return switch (by.value().orElse(once ? "source" : "feature")) {
      case "feature" -> Arrangement.BY_FEATURE;
      case "source" -> Arrangement.BY_SOURCE;
      default ->
          throw CommandException.wrongUse(
              "--by: \"" + by.value().get() + "\" is neither feature nor source");
    };
  }
}
