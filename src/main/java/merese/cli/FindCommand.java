package merese.cli;

import java.util.List;
import merese.answer.Find;
import merese.answer.Found;
import merese.answer.json.AnswerJson;
import merese.search.FindQueryException;
import merese.shelf.Shelf;

/** Finds words wherever the library has them. */
final class FindCommand extends LibraryCommand {
  private static final int USUALLY = 20;

  private final Given<List<String>> words =
      words("TEXT", "Words to look for, with what limits them.");

  private final Given<Integer> limit =
      option(Integer.class, "N", "Print at most N; without this, " + USUALLY + ".", "--limit");
  private final Given<Boolean> json = flag("Print the answer as JSON.", "--json");

  FindCommand(Context context) {
    super(
        context,
        "Find words in notes, records, the vocabulary and your own pieces, best first.\n"
            + "\n"
            + "Plural, hyphen, accents and British or American spelling make no difference:"
            + " \"knife edged\" finds knife-edged, mould finds mold. What has all the words comes"
            + " first, then what has some.\n"
            + "\n"
            + "knife*            words that begin so\n"
            + "'\"wet hand\"'      the words side by side, as they stand in the text\n"
            + "a AND b, a OR b   brackets group; NOT b or -b leaves out; +b must be there\n"
            + "author: title: publisher: place: source: kind: year:1900..1950\n"
            + "                  said of a source, and so of all its notes\n"
            + "term: quote: claim: reading: definition:\n"
            + "                  where the word must stand\n"
            + "concept:ID        notes that mean it or something narrower\n"
            + "picture:yes       notes with a picture; is:note, is:source, is:concept, is:piece,"
            + " is:mine or is:page\n"
            + "\n"
            + "Pages of books whose text is attached come last, as words on the page, not yet"
            + " noted: they are no hits. There a word is found over the end of a line, with the long"
            + " s, and where letters were taken for others.\n"
            + "\n"
            + "Which sources cover a feature, by whatever name, is for merese covers to say.",
        "merese find wet hand",
        "merese find 'term:\"sharp ring\" year:1900..1950'",
        "merese find 'author:quenby (cork OR irish) NOT place:waterford'");
  }

  @Override
  int run() {
    int most = limit.value().orElse(USUALLY);
    if (most < 1) {
      throw CommandException.wrongUse("--limit takes a number from 1 up, not " + most);
    }
    String question = String.join(" ", words.required());
    try (Shelf shelf = openShelf()) {
      Found found = shelf.ask(s -> Find.answer(s, question, most));
      if (json.isSet()) {
        AnswerJson.print(context().out(), found);
      } else {
        new FoundText(context()).print(found);
      }
      return found.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    } catch (FindQueryException e) {
      throw CommandException.wrongUse(e.getMessage());
    }
  }
}
