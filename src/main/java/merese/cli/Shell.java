package merese.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import merese.model.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.Style;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Finds the command that the first word names, builds that one alone and runs it. */
final class Shell {
  /** picocli refuses to lay out help in fewer columns. */
  private static final int NARROWEST_HELP = 55;

  /** Lines that are longer are hard to read, however wide the window is. */
  private static final int WIDEST_HELP = 100;

  private static final int MOST_NEAR = 3;

  private Shell() {}

  /** Runs one command line; the result is an {@link ExitCode}. */
  static int run(Context context, String... args) {
    Errors errors = new Errors(context);
    if (args.length == 0) {
      return errors.noCommand(tree(context));
    }
    String first = args[0];
    if (first.startsWith("-")) {
      return parse(tree(context), errors, context, args);
    }
    Commands.Entry entry = Commands.find(first);
    if (entry == null) {
      return errors.unknownCommand(first, Nearest.to(first, Commands.names(), MOST_NEAR));
    }
    Command command = entry.make(context);
    String name = "merese " + entry.name();
    String[] words = Arrays.copyOfRange(args, 1, args.length);
    return PlainWords.read(command.declared(), words)
        ? run(command, name, errors, context)
        : parse(line(command).setCommandName(name), errors, context, words);
  }

  /** Every command under one root; slow to build, so only for what has to know them all. */
  static CommandLine tree(Context context) {
    CommandLine root = line(new RootCommand(context));
    for (Commands.Entry entry : Commands.ALL) {
      root.addSubcommand(entry.name(), line(entry.make(context)));
    }
    return root;
  }

  /** Prints the help of a command. */
  static void help(CommandLine command, PrintWriter to, Screen screen) {
    command.setUsageHelpWidth(Math.min(WIDEST_HELP, Math.max(NARROWEST_HELP, screen.width())));
    command.usage(to, scheme(screen));
  }

  private static CommandLine line(Command command) {
    return new CommandLine(command.spec()).setExpandAtFiles(false);
  }

  /**
   * Does what {@link CommandLine#execute} does, without its handlers and strategies: picocli keeps
   * those in interfaces too old for the class-data archive.
   */
  private static int parse(CommandLine command, Errors errors, Context context, String... args) {
    Command asked;
    try {
      ParseResult words = command.parseArgs(args);
      while (words.hasSubcommand()) {
        words = words.subcommand();
      }
      if (words.isUsageHelpRequested()) {
        help(words.commandSpec().commandLine(), context.out(), context.screen());
        return ExitCode.DONE;
      }
      asked = (Command) words.commandSpec().userObject();
    } catch (ParameterException e) {
      return errors.wrongUse(e);
    } catch (Exception e) {
      return errors.failed(e, command.getCommandName());
    }
    return run(asked, command.getCommandName(), errors, context);
  }

  private static int run(Command asked, String name, Errors errors, Context context) {
    try {
      return asked.run();
    } catch (Exception e) {
      return errors.failed(e, name);
    } catch (OutOfMemoryError e) {
      return errors.outOfMemory(name);
    } finally {
      context.out().flush();
      asked.afterwards();
    }
  }

  /** Bold for what is typed as it stands, italic for what is replaced. */
  private static Help.ColorScheme scheme(Screen screen) {
    return new Help.ColorScheme.Builder(screen.colour() ? Ansi.ON : Ansi.OFF)
        .commands(Style.bold)
        .options(Style.bold)
        .parameters(Style.italic)
        .optionParams(Style.italic)
        .build();
  }
}
