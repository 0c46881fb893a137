package merese.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.pages.AllAttached;
import merese.change.pages.Attached;
import merese.change.pages.Attaching;
import merese.exchange.pages.Limits;
import merese.exchange.pages.PageReader;
import merese.exchange.pages.PagesRead;
import merese.model.PageMap;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;

/** Attaches the text of a book's own pages, and shows what is attached. */
final class PagesCommand extends WritingCommand {
  private static final int USUALLY = 100;

  private final Given<String> source =
      optionalWord(String.class, "SOURCE", "The source: its key, or words that single it out.");

  private final Given<Path> file =
      optionalWord(
          Path.class,
          "FILE",
          "A PDF, a plain text with a form feed at the end of each page, hOCR, or a folder with a"
              + " text for each page.");

  private final Given<String> map =
      option(
          String.class,
          "MAP",
          "Which printed page each page of the file is, as in \"7 = p. [1]; 8–14 = unnumbered;"
              + " 15–62 = 1–48; plates after 62\"; where each shows an open book, two printed pages,"
              + " \"8–31 = openings 2–49\"; \"\" for none.",
          "--map");

  private final Given<String> name =
      option(
          String.class,
          "NAME",
          "What to call the text, or which is meant; without this, what its file is called.",
          "--name");

  private final Given<Boolean> remove = flag("Take the text off the source again.", "--remove");

  private final Given<Boolean> dryRun =
      flag("Only say what would be done; nothing is written.", "--dry-run");

  private final Given<Integer> limit =
      option(
          Integer.class,
          "N",
          "Of all texts show at most N; without this, " + USUALLY + ".",
          "--limit");

  private final Given<Boolean> json = flag("Print what is attached as JSON.", "--json");

  PagesCommand(Context context) {
    super(
        context,
        "Attach the text of a book's own pages, so that its words can be found by printed page.\n"
            + "The words are kept as they stand, and are no notes. Without FILE, show what is"
            + " attached, or give it another map. merese undo takes each back.",
        "merese pages quenby-1949 scan.pdf --map \"15–62 = 1–48; plates after 62\"",
        "merese pages quenby-1949 --map \"15–62 = 1–48\"",
        "merese pages quenby-1949",
        "merese pages",
        "merese pages --limit 500");
  }

  @Override
  int run() {
    requireSense();
    Optional<PageMap> read = map.value().map(PageMap::parse);
    try (WritingShelf shelf = writingShelf()) {
      if (source.value().isEmpty()) {
        return all(AllAttached.in(shelf, limit.value().orElse(USUALLY)));
      }
      SourceAddress where = source(shelf, source.required());
      Attaching attaching = new Attaching(shelf.folder(), dryRun.isSet());
      if (file.value().isPresent()) {
        PagesRead pages = new PageReader(Limits.USUAL).read(fromHere(file.value().get()));
        done(attaching.attach(where, pages, read, name.value()));
      } else if (read.isPresent()) {
        done(attaching.map(where, read.get(), name.value()));
      } else if (remove.isSet()) {
        done(attaching.remove(where, name.value()));
      } else {
        shown(where, attaching.of(where));
      }
      return ExitCode.DONE;
    }
  }

  private void requireSense() {
    boolean changes = file.value().isPresent() || map.value().isPresent() || remove.isSet();
    if (source.value().isEmpty() && (changes || name.value().isPresent())) {
      throw CommandException.wrongUse("of which source? Name it first, by its key or by words");
    }
    if (limit.value().isPresent() && source.value().isPresent()) {
      throw CommandException.wrongUse(
          "--limit is for the list of all texts, and not for one source");
    }
    if (limit.value().orElse(USUALLY) < 1) {
      throw CommandException.wrongUse(
          "--limit takes a number from 1 up, not " + limit.value().get());
    }
    if (remove.isSet() && (file.value().isPresent() || map.value().isPresent())) {
      throw CommandException.wrongUse("--remove goes with neither a file nor --map");
    }
    if (dryRun.isSet() && !changes) {
      throw CommandException.wrongUse("--dry-run needs a file, --map or --remove");
    }
  }

  /** As the user would type it, so that a message names it so. */
  private Path fromHere(Path typed) {
    return context().resolve(typed);
  }

  private void done(Attached attached) {
    if (json.isSet()) {
      AnswerJson.print(context().out(), attached);
    } else {
      new PagesText(page()).done(attached, dryRun.isSet());
    }
  }

  private void shown(SourceAddress where, List<Attached> attached) {
    if (json.isSet()) {
      AnswerJson.print(context().out(), attached);
    } else {
      new PagesText(page()).shown(where, attached);
    }
  }

  private int all(AllAttached all) {
    if (json.isSet()) {
      AnswerJson.print(context().out(), all);
    } else {
      new PagesText(page()).all(all, context());
    }
    return all.problems().isEmpty() ? ExitCode.DONE : ExitCode.FAILED;
  }

  private Page page() {
    return new Page(context().out(), context().screen());
  }
}
