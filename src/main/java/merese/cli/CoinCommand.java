package merese.cli;

import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.vocabulary.Coining;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.VocabularyChange;
import merese.store.LibraryFolder;

/** Records a label of the user's own. */
final class CoinCommand extends LibraryCommand {
  private final Given<String> label = word(String.class, "LABEL", "The label of your own.");
  private final Given<String> concept =
      option(String.class, "CONCEPT", "What it is for, by its id or a label.", "--for");
  private final Given<String> evidence =
      option(String.class, "TEXT", "What it rests on.", "--evidence");
  private final Given<String> object =
      option(String.class, "REF", "The piece of yours that the evidence is of.", "--object");
  private final Given<String> by =
      option(String.class, "NAME", "Who coined it; else MERESE_BY.", "--by");
  private final Given<String> on =
      option(String.class, "DATE", "When; without this, today.", "--on");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  CoinCommand(Context context) {
    super(
        context,
        "Coin a label of your own for what no source names, with its evidence.\n"
            + "It becomes a label by which the concept is found; what sources print stays.",
        "merese coin \"spiral neck trail\" --for ring-spiral-trail --object d-17 --evidence"
            + " \"photo 3: open ends\"");
  }

  @Override
  int run() {
    if (label.required().isBlank()) {
      throw CommandException.wrongUse("the label is empty");
    }
    LibraryFolder library = library();
    Asked asked = new Asked(context());
    ConceptNames names = ConceptNames.of(library);
    String of = asked.concept(names, asked.text(concept, "--for", "For which concept?"));
    Optional<String> piece = Asked.given(object, "--object");
    String rests =
        piece.isPresent()
            ? Asked.given(evidence, "--evidence").orElse("")
            : asked.text(evidence, "--evidence", "What does it rest on?");
    VocabularyChange change =
        Coining.apply(
            library,
            new Coining.Request(
                label.required().strip(),
                of,
                rests,
                piece,
                Asked.given(by, "--by")
                    .or(() -> Optional.ofNullable(context().environment().get("MERESE_BY"))),
                Optional.of(Asked.day(on, "--on"))));
    if (json.isSet()) {
      AnswerJson.print(context().out(), change);
    } else {
      new VocabularyChangeText(new Page(context().out(), context().screen())).print(change, true);
    }
    return ExitCode.DONE;
  }
}
