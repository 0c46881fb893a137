package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.answer.rights.Clearing;
import merese.answer.rights.Rights;
import merese.answer.rights.RightsQuestion;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.shelf.Shelf;

/** What is noted of the rights in pictures. */
final class RightsCommand extends LibraryCommand {
  private final Given<List<String>> words =
      optionalWords(
          "TERM",
          "The features pictured, each a term: words of one term in quotation marks. With --source"
              + " the place in it instead, such as \"pl. 9\".");

  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<String> source =
      option(String.class, "KEY", "The pictures of this source.", "--source");
  private final CitationOptions citing = new CitationOptions(this);
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  RightsCommand(Context context) {
    super(
        context,
        "Say what is noted of the rights in each picture: book, photograph, owner of the piece.\n"
            + "With a credit line. It is not legal advice; what is not noted is not known.",
        "merese rights \"bladed ring\"",
        "merese rights --source norrish-1971 \"pl. 9\"");
  }

  @Override
  int run() {
    if (citing.asksForStyles()) {
      CitationOptions.printStyles(context());
      return ExitCode.DONE;
    }
    if (citing.form().output() != Output.TEXT) {
      throw CommandException.wrongUse("--as: rights are told as text, or as JSON with --json");
    }
    RightsQuestion question = question();
    try (Shelf shelf = openShelf()) {
      Citations citations = citing.citations(shelf);
      Rights answer = Clearing.answer(shelf, question, citations);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new RightsText(new Page(context().out(), context().screen())).print(answer);
      }
      return answer.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }

  private RightsQuestion question() {
    List<String> given = words.value().orElse(List.of());
    if (source.value().isEmpty()) {
      if (given.isEmpty()) {
        throw CommandException.wrongUse("name a term, or a source with --source KEY");
      }
      return new RightsQuestion(given, facet.value(), Optional.empty(), Optional.empty());
    }
    try {
      Optional<Locator> at =
          given.isEmpty() ? Optional.empty() : Optional.of(Locator.parse(String.join(" ", given)));
      return RightsQuestion.ofSource(source.value().get(), at);
    } catch (LocatorException e) {
      throw CommandException.wrongUse(e.getMessage());
    }
  }
}
