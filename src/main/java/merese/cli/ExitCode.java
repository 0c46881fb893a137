package merese.cli;

/** What the process tells the shell that started it. */
final class ExitCode {
  static final int DONE = 0;

  /** The words were right, but what they asked for could not be done. */
  static final int FAILED = 1;

  /** No such command or option, or a word that can't be read as what it stands for. */
  static final int WRONG_USE = 2;

  private ExitCode() {}
}
