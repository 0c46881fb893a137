package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.change.Merge;
import merese.change.MergePreview;
import merese.change.MergePreview.MovedEdition;
import merese.change.MergeRequest;
import merese.store.LibraryFolder;

/** Makes works that are one and the same one work, or editions one edition. */
final class MergeCommand extends LibraryCommand {
  private final Given<String> keep =
      word(String.class, "KEEP", "What stays: the key of an edition, or the name of a work.");

  private final Given<List<String>> others =
      words("OTHER", "What becomes part of it, named likewise.");

  private final Given<Boolean> oneEdition =
      flag(
          "The editions named are the same thing: their notes, copies and checks come together"
              + " under the key of KEEP.",
          "--one-edition");
  private final Given<Boolean> apply = flag("Do it; without this, only show it.", "--apply");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  MergeCommand(Context context) {
    super(
        context,
        "Make works one work that are one, and keep every note.\n"
            + "Where the works differ, what KEEP says stays; what it lacks is added.",
        "merese merge quenby-1949 quenby-1977",
        "merese merge quenby-1949 quenby-1949b --one-edition --apply");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    MergeRequest request = new MergeRequest(keep.required(), others.required(), oneEdition.isSet());
    boolean done = apply.isSet();
    MergePreview merge = done ? Merge.apply(library, request) : Merge.preview(library, request);
    if (json.isSet()) {
      AnswerJson.print(context().out(), merge);
    } else {
      print(merge, done);
    }
    return ExitCode.DONE;
  }

  private void print(MergePreview merge, boolean done) {
    Page page = new Page(context().out(), context().screen());
    page.heading(merge.work() + ": " + merge.title());
    page.blank();
    EffectText text = new EffectText(page);
    text.rows(
        "Editions",
        line -> {
          for (MovedEdition edition : merge.editions()) {
            line.accept(words(edition, merge));
          }
        });
    text.print(merge.effects());
    if (!gone(merge).isEmpty()) {
      text.rows("No more", line -> line.accept(String.join(", ", gone(merge))));
    }
    page.blank();
    page.text(
        done
            ? "Done: " + Page.many(merge.files(), "file") + " written or deleted."
            : "Nothing is changed yet; --apply does it ("
                + Page.many(merge.files(), "file")
                + ").");
  }

  private static List<String> gone(MergePreview merge) {
    List<String> gone = new java.util.ArrayList<>();
    merge.gone().forEach(work -> gone.add("the work " + work));
    merge.goneKeys().forEach(key -> gone.add("the key " + key));
    return gone;
  }

  private static String words(MovedEdition edition, MergePreview merge) {
    StringBuilder words = new StringBuilder(edition.key());
    words.append(" (").append(Page.many(edition.notes(), "note")).append(")");
    if (merge.key().filter(edition.key()::equals).isPresent()) {
      words.append(", with all of ").append(String.join(", ", merge.goneKeys()));
    }
    edition.from().ifPresent(work -> words.append(", from ").append(work));
    return words.toString();
  }
}
