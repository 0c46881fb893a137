package merese.cli;

/**
 * A command can't do what it was asked, for a reason that the user can act on. The message says
 * which file or word, what is wrong with it and what to do; it is printed as it stands.
 */
final class CommandException extends RuntimeException {
  private static final long serialVersionUID = 1;

  CommandException(String message) {
    super(message);
  }

  CommandException(String message, Throwable cause) {
    super(message, cause);
  }
}
