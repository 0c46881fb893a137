package merese.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Questions to the person at the terminal, and their answers, a line each. The questions go to the
 * error stream, so that what is piped on is the answer alone. One for a command: it reads ahead.
 */
final class Asking {
  private final Context context;
  private final Answers answers;

  /** Where the answers come from. */
  interface Answers {
    /** The line that is typed after a question; null where there is no more. */
    String after(String question) throws IOException;
  }

  private Asking(Context context, Answers answers) {
    this.context = context;
    this.answers = answers;
  }

  /** The same where somebody else reads the lines that are typed. */
  static Asking by(Context context, Answers answers) {
    return new Asking(context, answers);
  }

  private static Answers typed(Context context) {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(context.in(), StandardCharsets.UTF_8), 256);
    return question -> {
      context.err().print(question);
      context.err().flush();
      return lines.readLine();
    };
  }

  /** Empty where nobody is there who could answer, as in a script. */
  static Optional<Asking> of(Context context) {
    boolean somebody =
        context.environment().getOrDefault(Screen.TERMINALS, "").contains("in")
            && context.errorScreen().terminal();
    return somebody ? Optional.of(new Asking(context, typed(context))) : Optional.empty();
  }

  /** Says something to whoever is asked. */
  void say(String text) {
    Page page = new Page(context.err(), context.errorScreen());
    page.text(text);
  }

  /**
   * What is typed after a question, without the blanks around it; "" for just Return.
   *
   * @throws CommandException where the input ends, as by Ctrl-D
   */
  String line(String question) {
    try {
      String typed = answers.after(question + " ");
      if (typed == null) {
        context.err().println();
        throw new CommandException("the input ended before all was answered; nothing was written");
      }
      return typed.strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the answer is yes; asked again until it is y or n. */
  boolean yes(String question) {
    while (true) {
      String typed = line(question + " [y/n]").toLowerCase(java.util.Locale.ROOT);
      if (typed.equals("y") || typed.equals("yes")) {
        return true;
      } else if (typed.equals("n") || typed.equals("no")) {
        return false;
      }
    }
  }

  /**
   * The one that is chosen by its number.
   *
   * @return its place in the list, from 0
   */
  int choice(String question, List<String> choices) {
    say(question);
    Page page = new Page(context.err(), context.errorScreen());
    for (int i = 0; i < choices.size(); i++) {
      page.hanging("  " + (i + 1) + "  ", choices.get(i));
    }
    while (true) {
      String typed = line("Which [1-" + choices.size() + "]?");
      for (int i = 0; i < choices.size(); i++) {
        if (typed.equals(Integer.toString(i + 1))) {
          return i;
        }
      }
    }
  }
}
