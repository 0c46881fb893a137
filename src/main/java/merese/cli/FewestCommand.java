package merese.cli;

import java.util.List;
import merese.answer.fewest.Fewest;
import merese.answer.fewest.FewestQuestion;
import merese.answer.fewest.FewestSources;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** The fewest sources that have all features between them. */
final class FewestCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      words(
          "TERM",
          "Features: a term, the id of a concept, or a facet for all its concepts; quote terms of"
              + " several words.");
  private final Given<Boolean> pictured = flag("Each feature has to be pictured.", "--pictured");
  private final Given<Boolean> owned = flag("Only sources of which you have a copy.", "--owned");
  private final Given<List<String>> must =
      options("KEY", "Take this source in any case; may be repeated.", "--must");
  private final Given<List<String>> without =
      options("KEY", "Do not take this source; may be repeated.", "--without");
  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<Integer> seconds =
      option(Integer.class, "N", "Search for at most N seconds (usually 30).", "--seconds");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  FewestCommand(Context context) {
    super(
        context,
        "Say which are the fewest sources to take down for several features.",
        "merese fewest \"bladed ring\" \"target stopper\" \"folded foot\" --pictured");
  }

  @Override
  int run() {
    int limit = seconds.value().orElse(FewestQuestion.USUAL_SECONDS);
    if (limit < 1) {
      throw CommandException.wrongUse("--seconds takes a number from 1 up, not " + limit);
    }
    FewestQuestion question =
        new FewestQuestion(
            terms.value().orElse(List.of()),
            facet.value(),
            pictured.isSet(),
            owned.isSet(),
            must.value().orElse(List.of()),
            without.value().orElse(List.of()),
            limit);
    try (Shelf shelf = openShelf()) {
      FewestSources answer = Fewest.answer(shelf, question);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new FewestText(new Page(context().out(), context().screen())).print(answer);
      }
      return answer.best().isPresent() ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
