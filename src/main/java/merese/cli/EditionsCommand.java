package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.answer.editions.EditionGrid;
import merese.answer.editions.Editions;
import merese.answer.editions.EditionsQuestion;
import merese.answer.json.AnswerJson;
import merese.model.Locator;
import merese.shelf.Shelf;

/** Which edition of a work has which plate, and what may be cited. */
final class EditionsCommand extends LibraryCommand {
  private final Given<List<String>> work =
      words("WORK", "The work: its id, the key of an edition, or words of author and title.");

  private final Given<String> from =
      option(
          String.class,
          "PLACE",
          "Where somebody else cites a picture, such as \"pl. XXIV\": what is it elsewhere?",
          "--from");
  private final Given<String> edition =
      option(String.class, "KEY", "The edition that --from is a place in.", "--edition");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  EditionsCommand(Context context) {
    super(
        context,
        "Say which edition of a work has which plate, and what may be cited.",
        "merese editions quenby-1926",
        "merese editions quenby neck --from \"pl. XXIV\" --edition quenby-1926");
  }

  @Override
  int run() {
    Optional<Locator> cited = from.value().map(Locator::parse);
    if (cited.isEmpty() && edition.value().isPresent()) {
      throw CommandException.wrongUse("--edition says what --from is a place in; give --from too");
    }
    EditionsQuestion question =
        new EditionsQuestion(String.join(" ", work.required()), cited, edition.value());
    try (Shelf shelf = openShelf()) {
      EditionGrid answer = Editions.answer(shelf, question);
      if (json.isSet()) {
        AnswerJson.print(context().out(), answer);
      } else {
        new EditionsText(context()).print(answer);
      }
      boolean found = answer.from().isEmpty() || !answer.from().get().pictures().isEmpty();
      return found ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
