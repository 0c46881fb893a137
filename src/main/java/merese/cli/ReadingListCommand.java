package merese.cli;

/** A stub: fails. */
final class ReadingListCommand extends LibraryCommand {
  ReadingListCommand(Context context) {
    super(context, "Cite the sources of an answer as a list.", "merese reading-list");
  }

  @Override
  int run() {
    throw new CommandException("no list can be made of " + library() + " yet");
  }
}
