package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.shelf.Shelf;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which sources cover or picture a feature. */
@CommandLine.Command(
    description = "Say which sources cover or picture a feature, where, and by what name.",
    footer = {
      "  merese covers \"bladed ring\" --pictured",
      "  merese covers \"triple ring\" --concept ring-annulated",
      "  merese covers bladed --facet ring --year 1900..1960"
    })
final class CoversCommand extends Command {
  @Mixin private LibraryOption library;

  @Mixin private CoverageOptions options;

  @Option(names = "--why", order = 8, description = "Say why you prefer your own term.")
  private boolean why;

  @Option(
      names = "--limit",
      paramLabel = "N",
      order = 9,
      description = "Print at most N of the sources that count.")
  private Integer limit;

  @Option(names = "--json", order = 10, description = "Print the whole answer as JSON.")
  private boolean json;

  @Parameters(
      arity = "0..*",
      paramLabel = "TERM",
      description = "What to look for, in any book's words.")
  private List<String> words = new ArrayList<>();

  CoversCommand(Context context) {
    super(context);
  }

  @Override
  public Integer call() {
    if (limit != null && limit < 1) {
      throw new CommandException("--limit takes a number from 1 up, not " + limit);
    }
    CoverageQuestion question = options.question(words);
    try (Shelf shelf = library.open(context())) {
      Coverage answer = shelf.ask(s -> Covers.answer(s, question));
      if (json) {
        AnswerJson.print(context().out(), answer);
      } else {
        new CoverageText(
                context().out(),
                context().screen(),
                question.narrowing(),
                why,
                limit == null ? Integer.MAX_VALUE : limit)
            .print(answer);
      }
      boolean known = !answer.sections().isEmpty() || !answer.meaningNotStated().isEmpty();
      return known ? ExitCode.DONE : ExitCode.FAILED;
    }
  }
}
