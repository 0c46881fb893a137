package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.written.Harmless;
import merese.change.pages.AllAttached;
import merese.change.pages.Attached;
import merese.change.pages.Attached.Outcome;
import merese.change.pages.Attached.Sample;
import merese.change.pages.Attached.Stretch;
import merese.shelf.SourceAddress;
import merese.store.Problem;

/** Lays out what is attached to a source, so that its page map can be held against the book. */
final class PagesText {
  private static final String EXAMPLE = "\"7 = p. [1]; 15–62 = 1–48; plates after 62\"";
  private static final int LISTED = 8;

  private final Page page;

  PagesText(Page page) {
    this.page = page;
  }

  void done(Attached attached, boolean dryRun) {
    page.heading(
        begin(attached.outcome(), dryRun) + attached.reference() + " (" + attached.source() + ")");
    if (attached.outcome() == Outcome.REMOVED) {
      page.hanging("  ", what(attached));
    } else {
      whole(attached);
    }
    page.blank();
    if (dryRun) {
      page.text("Nothing is written: that is only what would be done.");
    } else if (attached.change().isPresent()) {
      page.text("merese undo takes it back.");
    } else {
      page.text("Nothing was written: it is as it was.");
    }
  }

  private static String begin(Outcome outcome, boolean dryRun) {
    String done =
        switch (outcome) {
          case NEW -> "Pages attached to ";
          case REPLACED -> "Pages attached anew, in place of those of the same name, to ";
          case MAPPED -> "New page map of the pages of ";
          case AS_IT_WAS -> "Pages as they were of ";
          case REMOVED -> "Pages taken off ";
        };
    return dryRun && outcome != Outcome.AS_IT_WAS
        ? "To be done: "
            + done.substring(0, 1).toLowerCase(java.util.Locale.ROOT)
            + done.substring(1)
        : done;
  }

  void shown(SourceAddress source, List<Attached> all) {
    page.heading("Pages of " + source.words());
    if (all.isEmpty()) {
      page.text(
          "No text of its pages is attached. Attach it with: merese pages "
              + source.key()
              + " FILE");
    }
    for (Attached each : all) {
      page.blank();
      whole(each);
    }
  }

  void all(AllAttached all, Context context) {
    if (all.attached().isEmpty() && all.problems().isEmpty()) {
      page.text("No pages are attached to any source. Attach them with: merese pages SOURCE FILE");
    }
    String last = "";
    for (Attached each : all.attached()) {
      if (!each.source().equals(last)) {
        boolean known = !each.reference().isEmpty();
        page.text(known ? each.reference() + " (" + each.source() + ")" : each.source());
        if (!known) {
          page.hanging("  ", "there is no such edition in the library; see merese check");
        }
      }
      last = each.source();
      page.hanging("  ", what(each) + (each.map().isEmpty() ? "; no page map" : ""));
    }
    int more = all.all() - all.attached().size() - all.problems().size();
    if (more > 0) {
      page.text("And " + Page.many(more, "more text") + "; --limit N gives more.");
    }
    for (Problem problem : all.problems()) {
      page.blank();
      page.text(context.fromHere(problem).toString());
    }
  }

  private void whole(Attached attached) {
    page.hanging("  ", what(attached));
    attached.remarks().forEach(remark -> page.hanging("  ", Harmless.words(remark)));
    page.blank();
    map(attached);
    page.blank();
    page.text("First words, to be held against the book:");
    for (Sample sample : attached.samples()) {
      String file = "file page " + sample.filePage();
      String cited =
          sample.cited().startsWith(file) ? sample.cited() : file + ", " + sample.cited();
      page.hanging("  ", cited + ": “" + Harmless.words(sample.words()) + "”");
    }
  }

  private static String what(Attached attached) {
    List<Integer> empty = attached.withoutText();
    String without = "";
    if (!empty.isEmpty()) {
      List<String> listed = new ArrayList<>();
      empty.subList(0, Math.min(LISTED, empty.size())).forEach(p -> listed.add("" + p));
      String more = empty.size() > LISTED ? " …" : "";
      without =
          ", "
              + empty.size()
              + " without text (file "
              + (empty.size() == 1 ? "page " : "pages ")
              + String.join(", ", listed)
              + more
              + ")";
    }
    return "“"
        + Harmless.words(attached.name())
        + "”: "
        + Page.many(attached.pages(), "page")
        + " from "
        + Harmless.words(attached.file())
        + " ("
        + attached.from()
        + ")"
        + without;
  }

  private void map(Attached attached) {
    if (attached.map().isEmpty()) {
      page.text(
          "There is no page map: a page is cited as “file page "
              + attached.pages()
              + "”. Say which printed page each is with: merese pages "
              + attached.source()
              + " --map "
              + EXAMPLE);
      return;
    }
    page.text("The page map reads:");
    for (Stretch each : attached.stretches()) {
      boolean one = each.from() == each.to();
      boolean same = one || each.first().equals(each.last());
      page.hanging(
          "  ",
          "file "
              + (one ? "page " + each.from() : "pages " + each.from() + "–" + each.to())
              + ": "
              + (same ? each.first() : each.first() + " to " + each.last()));
    }
    if (attached.unnamed() > 0) {
      boolean one = attached.unnamed() == 1;
      page.hanging(
          "  ",
          Page.many(attached.unnamed(), "page")
              + (one ? " is not in it, and is" : " are not in it, and are")
              + " cited as “file page …”");
    }
  }
}
