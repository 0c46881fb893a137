package merese.cli;

import java.util.List;
import merese.answer.first.FirstQuestion;
import merese.answer.first.FirstUse;
import merese.answer.first.FirstUses;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** Who prints a word first, in this library. */
final class FirstCommand extends LibraryCommand {
  private final Given<List<String>> words =
      words("TERM", "A word, or several between quotation marks; each is asked by itself.");

  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  FirstCommand(Context context) {
    super(
        context,
        "Say which source of this library prints a word first.\n"
            + "A reprint does not date a word, and the first here need not be the first ever.",
        "merese first \"bladed ring\"",
        "merese first \"triple ring\" merese");
  }

  @Override
  int run() {
    try (Shelf shelf = openShelf()) {
      FirstUse answer = FirstUses.answer(shelf, new FirstQuestion(words.required()));
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new FirstText(context()).print(answer);
      }
      boolean found = answer.terms().stream().anyMatch(FirstUse.Term::isFound);
      return found ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
