package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.Preferring;
import merese.change.vocabulary.VocabularyChange;
import merese.model.Mine.SetAside;
import merese.store.LibraryFolder;

/** Records the label that the user prefers for a concept. */
final class PreferCommand extends LibraryCommand {
  private final Given<String> label =
      optionalWord(String.class, "LABEL", "The label that is to head every answer.");
  private final Given<String> concept =
      option(String.class, "CONCEPT", "What it is for, by its id or a label.", "--for");
  private final Given<String> because =
      option(
          String.class,
          "REASON",
          "ambiguous, describes-better, usage, first-learnt, or words of your own.",
          "--because");
  private final Given<List<String>> setAside =
      options("LABEL=REASON", "A label that you do not use, and why.", "--set-aside");
  private final Given<String> on =
      option(String.class, "DATE", "When; without this, today.", "--on");
  private final Given<Boolean> none = flag("Prefer no label any more.", "--none");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  PreferCommand(Context context) {
    super(
        context,
        "Prefer a label for a concept: it heads every answer as my term.\n"
            + "It is a label of the concept, coined for it, or printed by a note on it.",
        "merese prefer \"knife-edged ring\" --for ring-bladed --because usage"
            + " --set-aside \"sharp ring=some are not sharp\"",
        "merese prefer --for ring-bladed --none");
  }

  @Override
  int run() {
    Optional<String> wanted = label.value().map(String::strip);
    if (none.isSet()
        && (wanted.isPresent() || because.value().isPresent() || setAside.value().isPresent())) {
      throw CommandException.wrongUse("--none stands without a label, --because and --set-aside");
    } else if (!none.isSet() && wanted.filter(w -> !w.isEmpty()).isEmpty()) {
      throw CommandException.wrongUse("write the label, or --none for no preference any more");
    }
    LibraryFolder library = library();
    Asked asked = new Asked(context());
    String of =
        asked.concept(ConceptNames.of(library), asked.text(concept, "--for", "For which concept?"));
    VocabularyChange change =
        Preferring.apply(
            library,
            new Preferring.Request(
                wanted,
                of,
                Asked.given(because, "--because"),
                setAside(),
                Optional.of(Asked.day(on, "--on"))));
    if (json.isSet()) {
      AnswerJson.print(context().out(), change);
    } else {
      new VocabularyChangeText(new Page(context().out(), context().screen())).print(change, true);
    }
    return ExitCode.DONE;
  }

  private List<SetAside> setAside() {
    List<SetAside> aside = new ArrayList<>();
    for (String typed : Asked.all(setAside, "--set-aside")) {
      int equals = typed.indexOf('=');
      String word = (equals < 0 ? typed : typed.substring(0, equals)).strip();
      String reason = equals < 0 ? "" : typed.substring(equals + 1).strip();
      if (word.isEmpty()) {
        throw CommandException.wrongUse("--set-aside needs a label before the =");
      }
      aside.add(new SetAside(word, reason.isEmpty() ? Optional.empty() : Optional.of(reason)));
    }
    return aside;
  }
}
