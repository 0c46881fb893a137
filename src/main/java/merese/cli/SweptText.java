package merese.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import merese.answer.Coverage.ConceptLine;
import merese.answer.OnPages;
import merese.answer.Swept;
import merese.answer.Swept.Place;
import merese.answer.Swept.Searched;
import merese.model.Check;

/** Lays out the pages that name a feature, each with its sentence and with what would note it. */
final class SweptText {
  private static final int LOGGED = 20;

  private final PrintWriter out;
  private final Page page;
  private final MarkedText marked;
  private String source = "";

  SweptText(Context context) {
    this.out = context.out();
    this.page = new Page(out, context.screen());
    this.marked = new MarkedText(out, context.screen());
  }

  /** What was looked at, and what came of it. */
  void head(Swept swept) {
    page.heading(EntryText.label(swept.heading()));
    if (swept.texts() == 0) {
      page.text("No text of a book's pages is attached to a source; merese pages attaches one.");
      return;
    }
    page.text(
        "Looked at "
            + Page.many(swept.pages(), "page")
            + " of "
            + Page.many(swept.texts(), "attached text")
            + (swept.withoutText() == 0 ? "" : " (" + swept.withoutText() + " without text)")
            + ". "
            + standing(swept));
    if (swept.all() > 0) {
      out.println();
      page.heading(OnPages.TITLE);
    }
  }

  private static String standing(Swept swept) {
    if (swept.all() == 0) {
      return swept.noted() == 0
          ? "No name of it stands there."
          : "Wherever a name of it stands (" + swept.noted() + "), it is noted.";
    }
    return "A name of it stands in "
        + Page.many(swept.all(), "place")
        + (swept.all() == 1 ? " that is not noted" : " that are not noted")
        + (swept.noted() == 0 ? "" : ", and in " + swept.noted() + " noted already")
        + ".";
  }

  /** All places, each with the command that notes it. */
  void commands(Swept swept) {
    for (Place place : swept.places()) {
      place(place);
      remark(place);
      out.println("    " + command(swept.heading().id(), place));
    }
    more(swept);
  }

  void place(Place place) {
    if (!place.source().key().equals(source)) {
      source = place.source().key();
      page.text(Wrap.together(place.source().reference()) + " (" + source + ")");
    }
    String narrower =
        place.narrower()
            ? String.join(", ", place.concepts().stream().map(ConceptLine::label).toList())
            : "";
    marked.print(
        "  ",
        "    ",
        Wrap.together(place.cited())
            + OnPagesText.remarks(narrower, place.mayMeanElse(), place.loose())
            + ": “"
            + marked.text(place.passage())
            + "”");
  }

  private void remark(Place place) {
    List<String> remarks = new ArrayList<>();
    if (place.locator().isEmpty()) {
      remarks.add("put the place for LOCATOR, as a footnote has it");
    }
    if (place.locator().isPresent() && place.locator().get().count() > 1) {
      remarks.add("leave of the two pages the one it is on");
    }
    if (place.loose()) {
      remarks.add("put the term as it is printed");
    }
    if (!remarks.isEmpty()) {
      page.hanging("    ", "In the command " + String.join(", and ", remarks) + ":");
    }
  }

  void tail(Swept swept, int noted) {
    page.text(Page.many(noted, "note") + " taken.");
    more(swept);
  }

  /** What was written in the check logs. */
  void logged(Swept swept, OptionalInt change) {
    out.println();
    page.heading("Logged: " + Check.Method.WORD_SEARCH.words());
    int shown = Math.min(LOGGED, swept.searched().size());
    for (Searched each : swept.searched().subList(0, shown)) {
      page.hanging(
          "  ",
          each.source().reference()
              + each.extent().map(e -> ", " + e.printed()).orElse("")
              + Page.given(" (", each.besides(), ")")
              + ": "
              + (each.found() ? "found" : "nothing found"));
    }
    if (shown < swept.searched().size()) {
      page.hanging("  ", "and " + (swept.searched().size() - shown) + " more");
    }
    if (change.isPresent()) {
      page.text("merese undo takes it back.");
    }
  }

  private void more(Swept swept) {
    int more = swept.all() - swept.places().size();
    if (more > 0) {
      page.text("And " + Page.many(more, "more place") + "; --limit N gives more.");
    }
  }

  /** Words of several meanings are noted as what was asked for, by whoever runs the command. */
  private static String command(String asked, Place place) {
    String meant = place.concepts().size() == 1 ? place.concepts().get(0).id() : "";
    for (ConceptLine concept : place.concepts()) {
      meant = concept.id().equals(asked) ? asked : meant;
    }
    String as = place.mayMeanElse() && !meant.isEmpty() ? " --as " + meant : "";
    return "merese note "
        + quoted(place.source().key())
        + " "
        + place.locator().map(l -> quoted(l.printed())).orElse("LOCATOR")
        + " "
        + quoted(place.words())
        + as;
  }

  /** A word as a shell takes it unaltered. */
  static String quoted(String word) {
    boolean plain = !word.isEmpty();
    boolean literal = true;
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      plain &= Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '.';
      literal &= "\"$`\\!".indexOf(c) < 0 && !Character.isISOControl(c);
    }
    String clean = MarkedText.clean(word);
    return plain ? word : literal ? '"' + clean + '"' : '\'' + clean.replace("'", "'\\''") + '\'';
  }
}
