package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.cli.Given.Shape;
import picocli.CommandLine.Model.CommandSpec;

/**
 * One command: what it may be given, and what it does. A subclass declares each option and word as
 * a field, in the order of the help:
 *
 * <pre>
 * private final Given&lt;String&gt; title = option(String.class, "TEXT", "What to call it.", "--title");
 * </pre>
 *
 * <p>The declarations stand in plain code because picocli's annotations cost each start some 50 ms,
 * as much as a whole Java hello-world; and picocli is told of them only where it is needed.
 */
abstract class Command {
  private final Context context;
  private final String description;
  private final String[] examples;
  private final List<Given<?>> declared = new ArrayList<>();
  private CommandSpec spec;

  /**
   * @param description one sentence, which the list of commands shows as well; more sentences may
   *     follow after a line break
   * @param examples whole command lines
   */
  Command(Context context, String description, String... examples) {
    this.context = context;
    this.description = description;
    this.examples = examples;
  }

  /**
   * Does what was asked, once the words have been read.
   *
   * @return an {@link ExitCode}
   * @throws Exception whatever {@link Errors} can put into words
   */
  abstract int run() throws Exception;

  /** What is to be said once {@link #run} has ended, however it did. */
  void afterwards() {}

  final Context context() {
    return context;
  }

  /** What it takes, in the order of the help. */
  final List<Given<?>> declared() {
    return declared;
  }

  /** What picocli has to know of it. */
  final CommandSpec spec() {
    if (spec == null) {
      spec = Spelling.of(this, description, examples);
      layOut(spec);
    }
    return spec;
  }

  /** Changes how the help is laid out. */
  void layOut(CommandSpec help) {}

  /** An option without a value, such as {@code --json}. */
  final Given<Boolean> flag(String says, String... names) {
    return add(new Given<>(Shape.FLAG, Boolean.class, List.of(names), "", says));
  }

  /** An option with a value: String, Integer or Path. */
  final <T> Given<T> option(Class<T> type, String label, String says, String... names) {
    return add(new Given<>(Shape.OPTION, type, List.of(names), label, says));
  }

  /** An option that may be given several times. */
  final Given<List<String>> options(String label, String says, String... names) {
    return add(new Given<>(Shape.OPTIONS, String.class, List.of(names), label, says));
  }

  /** The next word, which must be given. */
  final <T> Given<T> word(Class<T> type, String label, String says) {
    return add(new Given<>(Shape.WORD, type, List.of(), label, says));
  }

  /** The next word, which may be left out. */
  final <T> Given<T> optionalWord(Class<T> type, String label, String says) {
    return add(new Given<>(Shape.OPTIONAL_WORD, type, List.of(), label, says));
  }

  /** All further words, of which there must be one. */
  final Given<List<String>> words(String label, String says) {
    return add(new Given<>(Shape.WORDS, String.class, List.of(), label, says));
  }

  /** All further words, which may be none. */
  final Given<List<String>> optionalWords(String label, String says) {
    return add(new Given<>(Shape.OPTIONAL_WORDS, String.class, List.of(), label, says));
  }

  private <T> Given<T> add(Given<T> given) {
    declared.add(given);
    return given;
  }
}
