package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.notes.Looking;
import merese.change.notes.Looking.Line;
import merese.change.notes.Looking.Logged;
import merese.change.notes.Looking.Looked;
import merese.model.Check.Method;
import merese.model.Check.Result;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Writes down what was looked through. */
final class LookedCommand extends WritingCommand {
  private final Given<List<String>> words =
      words(
          "SOURCE",
          "The sources that were looked through, each by its key or by words; last, which pages,"
              + " as in \"pp. 38–60\", where not the whole.");

  private final Given<List<String>> terms =
      options("TERM", "What was looked for: a word or a concept's id.", "--for");

  private final Given<Boolean> read = flag("It was read.", "--read");
  private final Given<Boolean> leafed = flag("It was leafed through.", "--leafed");
  private final Given<Boolean> index = flag("Only its index was looked at.", "--index");

  private final Given<String> scope =
      option(String.class, "TEXT", "What the looking was limited to.", "--scope");

  private final Given<Boolean> noList =
      flag("The source has no list of its own of such kinds.", "--no-list");

  private final Given<Boolean> notInList =
      flag("It has one, and this is not in it.", "--not-in-list");

  private final Given<String> copy =
      option(String.class, "ID", "Which copy was in hand.", "--copy");

  private final Given<String> by =
      option(String.class, "NAME", "Who looked; else MERESE_BY, else me.", "--by");

  private final Given<Boolean> json = flag("Print the lines as JSON.", "--json");

  LookedCommand(Context context) {
    super(
        context,
        "Log what was looked through, and for what, so that silence can be told from not looking.",
        "merese looked quenby-1926 \"pp. 38–60\" --for \"spiral neck trail\" --read",
        "merese looked haskeld-1983 tressick-1954 --for neck-ring --index");
  }

  @Override
  int run() {
    Method method = method();
    if (noList.isSet() && notInList.isSet()) {
      throw CommandException.wrongUse("give one of --no-list and --not-in-list");
    }
    if (terms.value().isEmpty()) {
      throw CommandException.wrongUse("what was looked for? Say it with --for");
    }
    try (WritingShelf shelf = writingShelf()) {
      List<String> named = new ArrayList<>(words.required());
      Optional<Locator> extent = extent(shelf, named);
      List<SourceAddress> sources = new ArrayList<>();
      for (String each : named) {
        sources.add(source(shelf, each));
      }
      List<String> concepts = new ArrayList<>();
      for (String term : terms.required()) {
        concepts.add(concept(shelf, term, "--for"));
      }
      Optional<Result> list =
          noList.isSet()
              ? Optional.of(Result.NO_LIST)
              : notInList.isSet() ? Optional.of(Result.NOT_IN_LIST) : Optional.empty();
      Looked looked =
          new Looked(sources, extent, concepts, method, scope.value(), list, by(by), copy.value());
      Logged logged = new Looking(shelf, clock()).log(looked);
      if (json.isSet()) {
        AnswerJson.print(context().out(), logged);
      } else {
        print(context(), shelf, logged);
      }
      return ExitCode.DONE;
    }
  }

  private Method method() {
    int said = (read.isSet() ? 1 : 0) + (leafed.isSet() ? 1 : 0) + (index.isSet() ? 1 : 0);
    if (said != 1) {
      throw CommandException.wrongUse(
          "how was it looked through? Give one of --read, --leafed and --index");
    }
    return read.isSet() ? Method.READ : leafed.isSet() ? Method.LEAFED : Method.INDEX_ONLY;
  }

  /**
   * Takes the last word away where it is a place: what begins as a place does always is one, though
   * the numbers in it may be words of a source, and anything else where it names no source.
   *
   * @throws LocatorException where it is a place, but none that can be read
   */
  private static Optional<Locator> extent(WritingShelf shelf, List<String> words) {
    if (words.size() < 2) {
      return Optional.empty();
    }
    String last = words.get(words.size() - 1).strip();
    boolean begun = Locator.isBegunIn(last) && !isKey(shelf, last);
    try {
      Locator extent = Locator.parse(last);
      if (begun || shelf.find(last).isEmpty()) {
        words.remove(words.size() - 1);
        return Optional.of(extent);
      }
    } catch (LocatorException e) {
      if (begun) {
        throw e;
      }
    }
    return Optional.empty();
  }

  private static boolean isKey(WritingShelf shelf, String typed) {
    return shelf.find(typed).stream().anyMatch(source -> source.key().equals(typed));
  }

  static void print(Context context, WritingShelf shelf, Logged logged) {
    Page page = new Page(context.out(), context.screen());
    page.text("Logged:");
    for (Line line : logged.lines()) {
      String where = line.check().extent().map(e -> ", " + e.printed()).orElse("");
      String result =
          switch (line.check().result()) {
            case FOUND -> Page.many(line.notes(), "note") + " there";
            case NONE -> "none noted there";
            case NOT_IN_LIST -> "not in its list";
            case NO_LIST -> "it has no list";
          };
      page.hanging(
          "  ",
          line.source().reference()
              + where
              + ", "
              + line.check().method().words()
              + " for "
              + shelf.thesaurus().label(line.check().concept())
              + line.check().scope().map(s -> " (" + s.words() + ")").orElse("")
              + ": "
              + result
              + ".");
    }
    page.text("merese undo takes it back.");
  }
}
