package merese.cli;

import java.util.List;
import merese.answer.identify.Identification;
import merese.answer.identify.Identify;
import merese.answer.identify.IdentifyException;
import merese.answer.identify.IdentifyQuestion;
import merese.answer.json.AnswerJson;
import merese.shelf.Shelf;

/** The key to look-alikes. */
final class IdentifyCommand extends LibraryCommand {
  private final Given<List<String>> words =
      optionalWords(
          "WORD",
          "What was seen or felt, as CHARACTER=VALUE (join=felt, ridges=3, seam=not-found; several"
              + " values with commas), and terms, to compare these alone.");

  private final Given<String> object =
      option(String.class, "REF", "Take the observations of a piece of my own.", "--object");
  private final Given<String> part =
      option(String.class, "PART", "Only those of this part of the piece.", "--part");
  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<Boolean> list =
      flag("List what can be looked at, with the values to type.", "--list");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  IdentifyCommand(Context context) {
    super(
        context,
        "Say which look-alikes fit what was seen and felt, and what is left to look at.\n"
            + "Where the key is silent it rules nothing out; what was looked for and not found"
            + " rules nothing out either. It compares with the literature, and does not say what a"
            + " piece is.",
        "merese identify join=felt bore=smooth ridges=3",
        "merese identify --object d-9",
        "merese identify \"bladed ring\" \"step-cut neck\"",
        "merese identify --list");
  }

  @Override
  int run() {
    List<String> typed = words.value().orElse(List.of());
    if (list.isSet() && (!typed.isEmpty() || object.value().isPresent())) {
      throw CommandException.wrongUse("--list stands alone");
    } else if (part.value().isPresent() && object.value().isEmpty()) {
      throw CommandException.wrongUse("--part goes with --object");
    }
    try (Shelf shelf = openShelf()) {
      return list.isSet() ? list(shelf) : identify(shelf, typed);
    } catch (IdentifyException e) {
      throw CommandException.wrongUse(e.getMessage());
    }
  }

  private int list(Shelf shelf) {
    if (json.isSet()) {
      AnswerJson.print(context().out(), Identify.characters(shelf));
    } else {
      new CharacterListText(page()).print(Identify.characters(shelf));
    }
    return ExitCode.DONE;
  }

  private int identify(Shelf shelf, List<String> typed) {
    Identification answer =
        Identify.answer(
            shelf, IdentifyQuestion.of(typed, facet.value(), object.value(), part.value()));
    if (json.isSet()) {
      AnswerJson.print(context().out(), answer);
    } else {
      new IdentificationText(page()).print(answer);
    }
    return answer.leavesNoKind() ? ExitCode.FAILED : ExitCode.DONE;
  }

  private Page page() {
    return new Page(context().out(), context().screen());
  }
}
