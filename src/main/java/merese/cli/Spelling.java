package merese.cli;

import java.util.List;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Tells picocli what a command takes and how its help is laid out. */
final class Spelling {
  /** Above every other; picocli subtracts one order from another, so not the highest there is. */
  private static final int LAST = 1_000_000;

  private Spelling() {}

  static CommandSpec of(Command command, String description, String... examples) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(command);
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
    int words = 0;
    for (Given<?> given : command.declared()) {
      ArgSpec arg = given.shape().isWord() ? word(given, words++) : option(given);
      spec.add(arg);
      given.leaveTo(arg);
    }
    return spec;
  }

  private static ArgSpec option(Given<?> given) {
    OptionSpec.Builder option =
        OptionSpec.builder(given.names().toArray(String[]::new)).description(given.description());
    return switch (given.shape()) {
      case FLAG -> option.type(boolean.class).build();
      case OPTIONS ->
          option.type(List.class).auxiliaryTypes(given.type()).paramLabel(given.label()).build();
      default -> option.type(given.type()).paramLabel(given.label()).build();
    };
  }

  /**
   * @param before how many are declared before it
   */
  private static ArgSpec word(Given<?> given, int before) {
    PositionalParamSpec.Builder word =
        PositionalParamSpec.builder().paramLabel(given.label()).description(given.description());
    if (given.shape().isRequired()) {
      word.required(true);
    }
    String least = given.shape().isRequired() ? "1" : "0";
    if (given.shape().isMany()) {
      return word.index(before + "..*")
          .arity(least + "..*")
          .type(List.class)
          .auxiliaryTypes(given.type())
          .build();
    }
    return word.index(Integer.toString(before)).arity(least + "..1").type(given.type()).build();
  }

  private static String[] indented(String... examples) {
    String[] lines = new String[examples.length];
    for (int i = 0; i < examples.length; i++) {
      lines[i] = "  " + examples[i];
    }
    return lines;
  }
}
