package merese.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.ConcordanceQuestion;
import merese.answer.concordance.Concording;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** Which source calls what by which word. */
final class ConcordanceCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      words("TERM", "The features: facets, or terms (words of one term in quotation marks).");

  private final Given<String> facet =
      option(String.class, "FACET", "The facet that the terms are of.", "--facet");
  private final Given<String> as =
      option(
          String.class,
          "FORM",
          "text, markdown, html or csv (the table alone). Without this, text.",
          "--as");
  private final Given<Path> file =
      option(Path.class, "FILE", "Write it to a file, which must not be there yet.", "--out");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  ConcordanceCommand(Context context) {
    super(
        context,
        "Say which source calls what by which word, and which words are safe to use.",
        "merese concordance ring",
        "merese concordance \"bladed ring\" \"annulated ring\" \"set of three rings\"",
        "merese concordance stopper --as html --out stoppers.html");
  }

  @Override
  int run() throws IOException {
    String named = as.value().orElse("text");
    ConcordanceForm form =
        ConcordanceForm.named(named)
            .orElseThrow(
                () ->
                    CommandException.wrongUse(
                        "--as: there is no form \""
                            + named
                            + "\"; the forms are text, markdown, html and csv"));
    if (json.isSet() && (as.value().isPresent() || file.value().isPresent())) {
      throw CommandException.wrongUse("--json goes without --as and --out");
    }
    ConcordanceQuestion question = new ConcordanceQuestion(terms.required(), facet.value());
    try (Shelf shelf = openShelf()) {
      Concordance answer = Concording.answer(shelf, question);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else if (file.value().isPresent()) {
        Screen plain = new Screen(false, context().screen().width(), false);
        OutFile.write(form.write(answer, plain), file.value().get(), context());
      } else {
        context().out().print(form.write(answer, context().screen()));
      }
      return answer.rows().isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }
}
