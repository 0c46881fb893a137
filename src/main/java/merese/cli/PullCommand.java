package merese.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import merese.answer.Script;
import merese.answer.json.AnswerJson;
import merese.answer.pull.Pull;
import merese.answer.pull.PullQuestion;
import merese.answer.pull.Pulls;
import merese.answer.written.Harmless;
import merese.shelf.Shelf;

/** Which books and pieces to take out, and what to open each at. */
final class PullCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      optionalWords("TERM", "The features, each a term: words of one term in quotation marks.");

  private final Given<Path> script =
      option(
          Path.class,
          "FILE",
          "What a script shows, in its order, by marks such as [quenby-1949 pl. 31], [object d-17"
              + " photo p3] or [term ring-bladed].",
          "--script");
  private final Given<String> facet =
      option(String.class, "FACET", "What a word without its noun is of, as ring.", "--facet");
  private final Given<Boolean> html = flag("Make a page to print, in HTML.", "--html");
  private final Given<String> paper =
      option(String.class, "SIZE", "The paper of that page: A4 or Letter; else A4.", "--paper");
  private final Given<Path> file =
      option(Path.class, "FILE", "Write to a file that is not there yet.", "--out");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  PullCommand(Context context) {
    super(
        context,
        "List the books and pieces to take out, in the order of need and of the shelf.",
        "merese pull --script talk.txt",
        "merese pull \"bladed ring\" \"annulated ring\"",
        "merese pull --script talk.txt --html --paper Letter --out pull.html");
  }

  @Override
  int run() throws IOException {
    boolean letter = letter();
    List<String> words = terms.value().orElse(List.of());
    if (words.isEmpty() == script.value().isEmpty()) {
      throw CommandException.wrongUse(
          words.isEmpty()
              ? "name a feature, as merese pull \"bladed ring\", or a script with --script FILE"
              : "either features or --script, not both: a script names its own with [term …]");
    }
    if (script.value().isPresent() && facet.value().isPresent()) {
      throw CommandException.wrongUse("--facet goes with a TERM, not with --script");
    }
    try (Shelf shelf = openShelf()) {
      Optional<Script> read = Optional.empty();
      if (script.value().isPresent()) {
        read = Optional.of(ScriptFile.read(context(), script.value().get(), shelf));
      }
      Pull answer = Pulls.answer(shelf, new PullQuestion(words, facet.value(), read));
      StringWriter text = new StringWriter();
      try (PrintWriter out = new PrintWriter(text)) {
        if (json.isSet()) {
          AnswerJson.print(out, answer);
        } else if (html.isSet()) {
          out.print(PullHtml.page(answer, shelf.settings(), letter));
        } else {
          new PullText(out, screen()).print(answer);
        }
      }
      if (file.value().isPresent()) {
        write(text.toString(), file.value().get());
      } else {
        context().out().print(text);
      }
      if (html.isSet() || json.isSet()) {
        answer.remarks().forEach(r -> ErrorLines.print(context(), Harmless.words(r)));
      }
      return answer.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }

  /** A file carries no colour. */
  private Screen screen() {
    Screen screen = context().screen();
    return file.value().isPresent() ? new Screen(false, screen.width(), false) : screen;
  }

  private boolean letter() {
    if (json.isSet() && html.isSet()) {
      throw CommandException.wrongUse("either --json or --html");
    }
    if (paper.value().isPresent() && !html.isSet()) {
      throw CommandException.wrongUse("--paper is that of --html");
    }
    String size = paper.value().orElse("A4");
    if (!size.equalsIgnoreCase("A4") && !size.equalsIgnoreCase("Letter")) {
      throw CommandException.wrongUse("--paper: \"" + size + "\" is neither A4 nor Letter");
    }
    return size.equalsIgnoreCase("Letter");
  }

  private void write(String text, Path typed) throws IOException {
    Path target = context().resolve(typed);
    if (target.getParent() != null && !Files.isDirectory(target.getParent())) {
      throw new CommandException(
          "--out: there is no folder " + target.getParent() + " to write in; make it first");
    }
    try {
      Files.writeString(target, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw new CommandException(
          "--out: " + target + " is there already; name another file or remove it", e);
    }
    ErrorLines.print(context(), "Wrote " + target + ".");
  }
}
