package merese.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import merese.answer.written.Harmless;
import merese.model.ForTheUser;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The one place that turns what went wrong into words on standard error and an exit code. */
final class Errors {
  /** Print the stack trace as well, when this variable holds anything. */
  static final String DEBUG = "MERESE_DEBUG";

  private final Context context;

  Errors(Context context) {
    this.context = context;
  }

  /** Words that no option or parameter takes, or a value that can't be read. */
  int wrongUse(ParameterException e) {
    CommandLine command = e.getCommandLine();
    say(command.getCommandName(), uncapitalised(e.getMessage()));
    if (e instanceof UnmatchedArgumentException unmatched) {
      suggest(unmatched.getSuggestions());
    }
    help(command.getCommandName() + " --help");
    trace(e);
    return ExitCode.WRONG_USE;
  }

  int noCommand(CommandLine all) {
    Shell.help(all, context.err(), context.errorScreen());
    return ExitCode.WRONG_USE;
  }

  int unknownCommand(String typed, List<String> suggestions) {
    say("merese", "there is no command '" + typed + "'");
    suggest(suggestions);
    help("merese --help");
    return ExitCode.WRONG_USE;
  }

  /** A command that was understood and failed. */
  int failed(Exception e, String name) {
    if (e instanceof AnswerStream.Lost lost) {
      throw lost;
    }
    String message = messageForTheUser(e);
    if (message != null) {
      say(name, message);
    } else {
      say(name, "this is a fault in merese, not in what you typed: " + e);
      if (!debugging()) {
        ErrorLines.print(
            context, "Run it again with " + DEBUG + "=1 before it to see where it arose.");
      }
    }
    trace(e);
    return e instanceof CommandException known ? known.exitCode() : ExitCode.FAILED;
  }

  /** What was being done is lost with its memory; files are written all or nothing. */
  int outOfMemory(String name) {
    say(
        name,
        "the memory is full, and this was broken off; give it more, as with"
            + " MERESE_JAVA_OPTS=-Xmx4g before it, or do it in parts");
    return ExitCode.FAILED;
  }

  /** What went wrong, in words for the user; null for a fault of the program. */
  static String messageForTheUser(Exception e) {
    if (e instanceof ForTheUser known) {
      return known.getMessage();
    }
    if (e instanceof UncheckedIOException unchecked) {
      return inputOrOutput(unchecked.getCause());
    }
    return e instanceof IOException failure ? inputOrOutput(failure) : null;
  }

  /** The message of most file exceptions is the path and no more. */
  private static String inputOrOutput(IOException e) {
    if (!(e instanceof FileSystemException failure)) {
      return "reading or writing failed: " + e.getMessage();
    }
    String file = failure.getFile();
    if (e instanceof NoSuchFileException) {
      return "there is no file or folder " + file;
    }
    if (e instanceof AccessDeniedException) {
      return "no permission to read or write " + file + "; its owner can change that";
    }
    if (e instanceof FileAlreadyExistsException) {
      return file + " is there already";
    }
    String reason = failure.getReason();
    return "could not read or write " + file + (reason == null ? "" : ": " + reason);
  }

  static String uncapitalised(String said) {
    String message = said.replace("is not an int", "is not a whole number"); // picocli's word
    return message.isEmpty()
        ? message
        : Character.toLowerCase(message.charAt(0)) + message.substring(1);
  }

  private void say(String command, String message) {
    ErrorLines.print(context, command + ":", Harmless.words(message));
  }

  private void suggest(List<String> suggestions) {
    if (!suggestions.isEmpty()) {
      ErrorLines.print(
          context, "Did you mean " + Harmless.words(String.join(" or ", suggestions)) + "?");
    }
  }

  private void help(String words) {
    context.err().println("See '" + words + "'.");
  }

  private void trace(Exception e) {
    if (debugging()) {
      e.printStackTrace(context.err());
    }
  }

  private boolean debugging() {
    return !context.environment().getOrDefault(DEBUG, "").isEmpty();
  }
}
