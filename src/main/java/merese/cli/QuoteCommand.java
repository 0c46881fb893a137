package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.answer.quote.Quotations;
import merese.answer.quote.QuoteQuestion;
import merese.answer.quote.Quoting;
import merese.citation.Citations;
import merese.citation.Output;
import merese.shelf.Shelf;

/** What sources say, word for word. */
final class QuoteCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      optionalWords("TERM", "The features, each a term: words of one term in quotation marks.");

  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<List<String>> sources =
      options("KEY", "Only from this source; without a term, all that is noted of it.", "--source");
  private final Given<String> words =
      option(
          String.class, "WORDS", "Only quotations in which these words stand together.", "--words");
  private final CitationOptions citing = new CitationOptions(this);
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  QuoteCommand(Context context) {
    super(
        context,
        "Quote sources word for word, with the page, its breaks and what corrects it.\n"
            + "Spelling, ellipses and [sic] are as they were noted; nothing is mended.",
        "merese quote \"bladed ring\"",
        "merese quote --source kessock-1999",
        "merese quote \"neck ring\" --words \"three rings\" --as markdown");
  }

  @Override
  int run() {
    if (citing.asksForStyles()) {
      CitationOptions.printStyles(context());
      return ExitCode.DONE;
    }
    List<String> named = terms.value().orElse(List.of());
    List<String> from = sources.value().orElse(List.of());
    if (named.isEmpty() && from.isEmpty()) {
      throw CommandException.wrongUse(
          "name a term, or a source with --source KEY; merese find looks for words everywhere");
    }
    QuoteQuestion question = new QuoteQuestion(named, facet.value(), from, words.value());
    Output output = citing.form().output();
    try (Shelf shelf = openShelf()) {
      Citations citations = citing.citations(shelf);
      Quotations answer = Quoting.answer(shelf, question, citations, output);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else if (output == Output.TEXT) {
        new QuoteText(new Page(context().out(), context().screen())).print(answer);
      } else {
        context().out().print(new QuoteDocument(output).of(answer));
      }
      return answer.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }
}
