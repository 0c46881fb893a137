package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.answer.witnesses.Witnesses;
import merese.answer.witnesses.WitnessesQuestion;
import merese.answer.witnesses.Witnessing;
import merese.shelf.Shelf;

/** Who repeats whom. */
final class WitnessesCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      words("TERM", "The features, each a term: words of one term in quotation marks.");

  private final Given<String> facet =
      option(String.class, "FACET", "The facet that the terms are of.", "--facet");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  WitnessesCommand(Context context) {
    super(
        context,
        "Say who repeats whom on a feature, and how many sources speak for themselves.",
        "merese witnesses \"folded foot\"",
        "merese witnesses bladed annulated --facet ring");
  }

  @Override
  int run() {
    WitnessesQuestion question = new WitnessesQuestion(terms.required(), facet.value());
    try (Shelf shelf = openShelf()) {
      Witnesses answer = Witnessing.answer(shelf, question);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new WitnessesText(new Page(context().out(), context().screen())).print(answer);
      }
      boolean found = answer.sections().stream().anyMatch(s -> s.sources() > 0);
      return found ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
