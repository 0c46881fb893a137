package merese.cli;

import java.util.List;

/** A stub: says what it was asked. */
final class CoversCommand extends LibraryCommand {
  private final Given<List<String>> words = words("WORD", "What to look for, in any book's words.");

  CoversCommand(Context context) {
    super(
        context,
        "Say which sources name or picture something, and where.",
        "merese covers bladed ring");
  }

  @Override
  int run() {
    context().out().println(String.join(" ", words.required()) + " in " + library());
    return ExitCode.DONE;
  }
}
