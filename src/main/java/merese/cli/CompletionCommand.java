package merese.cli;

import picocli.AutoComplete;

/** Prints what teaches a shell the commands and options. */
final class CompletionCommand extends Command {
  CompletionCommand(Context context) {
    super(
        context,
        "Print a script that lets bash and zsh complete words.\n"
            + "To have it in every new shell, add the example to .bashrc or .zshrc.",
        "source <(merese completion)");
  }

  @Override
  int run() {
    context().out().print(AutoComplete.bash("merese", Shell.tree(context())));
    return ExitCode.DONE;
  }
}
