package merese.cli;

import merese.model.ForTheUser;

/**
 * A command can't do what it was asked, for a reason that the user can act on. The message says
 * which file or word, what is wrong with it and what to do; it is printed as it stands.
 */
final class CommandException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1;

  private final int exitCode;

  CommandException(String message) {
    super(message);
    exitCode = ExitCode.FAILED;
  }

  CommandException(String message, Throwable cause) {
    super(message, cause);
    exitCode = ExitCode.FAILED;
  }

  private CommandException(String message, int exitCode) {
    super(message);
    this.exitCode = exitCode;
  }

  /** That what was typed cannot be meant, as a wrong option is. */
  static CommandException wrongUse(String message) {
    return new CommandException(message, ExitCode.WRONG_USE);
  }

  int exitCode() {
    return exitCode;
  }
}
