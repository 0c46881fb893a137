package merese.cli;

/** The same help as {@code --help}, for those who type the word. */
final class HelpCommand extends Command {
  private final Given<String> command =
      optionalWord(String.class, "COMMAND", "The command to explain.");

  HelpCommand(Context context) {
    super(context, "Show the help of a command, or the list of commands.", "merese help covers");
  }

  @Override
  int run() {
    String name = command.value().orElse("--help");
    return name.equals("--help")
        ? Shell.run(context(), name)
        : Shell.run(context(), name, "--help");
  }
}
