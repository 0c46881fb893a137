package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.change.Split;
import merese.change.SplitPreview;
import merese.change.SplitRequest;
import merese.store.LibraryFolder;

/** Makes editions of a work a work of their own. */
final class SplitCommand extends LibraryCommand {
  private final Given<List<String>> keys =
      words("KEY", "The editions that leave their work, all of one work.");

  private final Given<String> title =
      option(String.class, "TEXT", "The new work's title; without this, the old one's.", "--title");
  private final Given<String> id =
      option(String.class, "NAME", "The new work's name; without this, the first KEY.", "--id");
  private final Given<Boolean> apply = flag("Do it; without this, only show it.", "--apply");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  SplitCommand(Context context) {
    super(
        context,
        "Make editions of a work a work of their own, and keep every note.\n"
            + "Contributors, language and kind are copied; links stay with the old work.",
        "merese split varnell-1939 --title \"Moulded and Free-Blown Tableware\"",
        "merese split quenby-1968 quenby-1977 --id quenby-later --apply");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    SplitRequest request = new SplitRequest(keys.required(), title.value(), id.value());
    boolean done = apply.isSet();
    SplitPreview split = done ? Split.apply(library, request) : Split.preview(library, request);
    if (json.isSet()) {
      AnswerJson.print(context().out(), split);
    } else {
      print(split, done);
    }
    return ExitCode.DONE;
  }

  private void print(SplitPreview split, boolean done) {
    Page page = new Page(context().out(), context().screen());
    page.heading(split.work() + ": " + split.title());
    page.blank();
    EffectText text = new EffectText(page);
    text.rows("Editions", line -> split.moved().forEach(line));
    page.blank();
    page.heading(split.from());
    page.blank();
    text.rows("Editions", line -> split.staying().forEach(line));
    text.print(split.effects());
    page.blank();
    page.text(
        done ? "Done: 2 files written." : "Nothing is changed yet; --apply does it (2 files).");
  }
}
