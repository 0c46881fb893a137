package merese.cli;

import java.util.List;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * One command: what it may be given, and what it does. A subclass declares each option and word as
 * a field, in the order of the help:
 *
 * <pre>
 * private final Given&lt;String&gt; title = option(String.class, "TEXT", "What to call it.", "--title");
 * </pre>
 *
 * <p>The declarations stand in plain code because picocli's annotations cost each start some 50 ms,
 * as much as a whole Java hello-world.
 */
abstract class Command {
  /** Above every other; picocli subtracts one order from another, so not the highest there is. */
  private static final int LAST = 1_000_000;

  private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Context context;
  private int words;

  /**
   * @param description one sentence, which the list of commands shows as well; more sentences may
   *     follow after a line break
   * @param examples whole command lines
   */
  Command(Context context, String description, String... examples) {
    this.context = context;
    spec.usageMessage()
        .description(description.split("\n", -1))
        .sortOptions(false)
        .synopsisHeading("Usage: ")
        .descriptionHeading("%n")
        .parameterListHeading("%n")
        .optionListHeading("%nOptions:%n")
        .footerHeading(examples.length == 1 ? "%nExample:%n" : "%nExamples:%n")
        .footer(indented(examples));
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .type(boolean.class)
            .usageHelp(true)
            .order(LAST)
            .description("Show this help.")
            .build());
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

  final CommandSpec spec() {
    return spec;
  }

  /** An option without a value, such as {@code --json}. */
  final Given<Boolean> flag(String description, String... names) {
    return add(OptionSpec.builder(names).type(boolean.class).description(description).build());
  }

  /** An option with a value of a type that picocli can read. */
  final <T> Given<T> option(Class<T> type, String label, String description, String... names) {
    return add(
        OptionSpec.builder(names).type(type).paramLabel(label).description(description).build());
  }

  /** An option that may be given several times. */
  final Given<List<String>> options(String label, String description, String... names) {
    return add(
        OptionSpec.builder(names)
            .type(List.class)
            .auxiliaryTypes(String.class)
            .paramLabel(label)
            .description(description)
            .build());
  }

  /** The next word, which must be given. */
  final <T> Given<T> word(Class<T> type, String label, String description) {
    return add(positional(label, description).arity("1").required(true).type(type).build());
  }

  /** The next word, which may be left out. */
  final <T> Given<T> optionalWord(Class<T> type, String label, String description) {
    return add(positional(label, description).arity("0..1").type(type).build());
  }

  /** All further words, of which there must be one. */
  final Given<List<String>> words(String label, String description) {
    PositionalParamSpec.Builder all =
        PositionalParamSpec.builder()
            .index(words + "..*")
            .paramLabel(label)
            .arity("1..*")
            .required(true);
    return add(all.description(description).type(List.class).auxiliaryTypes(String.class).build());
  }

  /** All further words, which may be none. */
  final Given<List<String>> optionalWords(String label, String description) {
    return add(
        PositionalParamSpec.builder()
            .index(words + "..*")
            .paramLabel(label)
            .arity("0..*")
            .description(description)
            .type(List.class)
            .auxiliaryTypes(String.class)
            .build());
  }

  private PositionalParamSpec.Builder positional(String label, String description) {
    return PositionalParamSpec.builder()
        .index(Integer.toString(words++))
        .paramLabel(label)
        .description(description);
  }

  private <T> Given<T> add(ArgSpec arg) {
    spec.add(arg);
    return new Given<>(arg);
  }

  private static String[] indented(String... examples) {
    String[] lines = new String[examples.length];
    for (int i = 0; i < examples.length; i++) {
      lines[i] = "  " + examples[i];
    }
    return lines;
  }
}
