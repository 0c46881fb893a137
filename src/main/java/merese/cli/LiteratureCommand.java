package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.answer.literature.Literature;
import merese.answer.literature.LiteratureQuestion;
import merese.answer.literature.Referring;
import merese.citation.Citations;
import merese.citation.Output;
import merese.shelf.Shelf;

/** The Lit. and Cf. lines of a piece, and the sentence that describes it. */
final class LiteratureCommand extends LibraryCommand {
  private final Given<List<String>> asked =
      optionalWords(
          "OBJECT",
          "References of your own pieces, such as D-17; a term is a type without a piece.");

  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<Boolean> full =
      flag("Cite in full, one source a line, not by author and year.", "--full");
  private final CitationOptions citing = new CitationOptions(this);
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  LiteratureCommand(Context context) {
    super(
        context,
        "Write the Lit. and Cf. lines of a piece of yours, and a hedged sentence on its type.\n"
            + "Lit. is of the very piece, with evidence; Cf. is of others. Each claim has its source.",
        "merese literature d-3",
        "merese literature \"bladed ring\" --full");
  }

  @Override
  int run() {
    if (citing.asksForStyles()) {
      CitationOptions.printStyles(context());
      return ExitCode.DONE;
    }
    List<String> named = asked.value().orElse(List.of());
    if (named.isEmpty()) {
      throw CommandException.wrongUse("name one of your pieces, such as D-17, or a term");
    }
    if (citing.form().output() != Output.TEXT) {
      throw CommandException.wrongUse("--as: the lines are text, or JSON with --json");
    }
    LiteratureQuestion question = new LiteratureQuestion(named, facet.value());
    try (Shelf shelf = openShelf()) {
      Citations citations = citing.citations(shelf);
      Literature answer = Referring.answer(shelf, question, citations);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new LiteratureText(new Page(context().out(), context().screen()), full.isSet())
            .print(answer);
      }
      return answer.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }
}
