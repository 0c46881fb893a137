package merese.cli;

import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.Removal;
import merese.change.RemovalPreview;
import merese.change.RemovalRequest;
import merese.store.LibraryFolder;

/** Takes a note, a check, a copy, an edition, a work or an object out of the library. */
final class RemoveCommand extends LibraryCommand {
  private final Given<String> what =
      word(
          String.class,
          "WHAT",
          "The key of a source, the name of a work, or the reference of an object.");

  private final Given<String> note =
      optionalWord(
          String.class,
          "NOTE",
          "A note of that source: its number, a place of it such as \"pl. 31\", or its term.");

  private final Given<String> check =
      option(String.class, "CONCEPT", "A check of that source, by its concept.", "--check");

  private final Given<String> extent =
      option(String.class, "LOCATOR", "Which check, where there are several.", "--extent");

  private final Given<String> copy = option(String.class, "ID", "A copy of that source.", "--copy");

  private final Given<Boolean> clearing =
      flag(
          "Take away as well what refers to it: links, lineages, corrections, links to the piece.",
          "--clear-references");

  private final Given<Boolean> apply =
      flag("Do it; without this it is only shown, or asked.", "--apply");

  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  RemoveCommand(Context context) {
    super(
        context,
        "Take a note, a check, a copy, an edition, a work or an object out.\n"
            + "What refers to it is named first, and no reference is left that leads nowhere."
            + " merese undo brings it back.",
        "merese remove quenby-1949 n3",
        "merese remove quenby-1949 \"pl. 31\" --apply",
        "merese remove quenby-1949 --check ring-annulated",
        "merese remove d-17 --clear-references");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    library.requireKnownFormat();
    RemovalRequest request =
        new RemovalRequest(
            what.required(),
            note.value(),
            check.value(),
            extent.value(),
            copy.value(),
            clearing.isSet());
    RemovalPreview preview =
        apply.isSet() ? Removal.apply(library, request) : Removal.preview(library, request);
    if (json.isSet()) {
      AnswerJson.print(context().out(), preview);
      return ExitCode.DONE;
    }
    Page page = new Page(context().out(), context().screen());
    print(page, preview);
    boolean done = apply.isSet() || asked(library, request, preview);
    page.blank();
    page.text(end(preview, done));
    return ExitCode.DONE;
  }

  private boolean asked(LibraryFolder library, RemovalRequest request, RemovalPreview preview) {
    Optional<Asking> asking = preview.isRefused() ? Optional.empty() : Asking.of(context());
    context().out().flush();
    boolean yes = asking.isPresent() && asking.get().yes("Remove it?");
    if (yes) {
      Removal.apply(library, request);
    }
    return yes;
  }

  private static void print(Page page, RemovalPreview preview) {
    page.heading("Remove: " + preview.what());
    page.blank();
    EffectText text = new EffectText(page);
    text.print(preview.effects());
    if (!preview.neededBy().isEmpty()) {
      text.rows(preview.cleared() ? "Cleared" : "Needed", line -> preview.neededBy().forEach(line));
    }
  }

  private static String end(RemovalPreview preview, boolean done) {
    String files = Page.many(preview.files(), "file");
    if (done) {
      return "Done: " + files + " written or deleted.";
    }
    return preview.isRefused()
        ? "Nothing is changed: it is needed. --clear-references takes these references away as well."
        : "Nothing is changed yet; --apply does it (" + files + ").";
  }
}
