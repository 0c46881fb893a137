package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.PieceLine;
import merese.answer.gaps.GapList;
import merese.answer.gaps.GapList.Gap;
import merese.answer.gaps.GapList.State;
import merese.answer.gaps.GapList.Use;
import merese.model.Locator;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;

/** Lays out what is not known: concept by concept, or many of them in brief. */
final class GapsText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 26;

  /** More concepts than this are summarised. */
  private static final int WHOLE = 6;

  private final Page page;

  GapsText(Context context) {
    this.page = new Page(context.out(), context.screen());
  }

  void print(GapList answer) {
    if (answer.gaps().isEmpty()) {
      page.text("The vocabulary is empty, so there is nothing to look for.");
    } else if (answer.whole() || answer.gaps().size() > WHOLE) {
      summary(answer);
    } else {
      for (Gap gap : answer.gaps()) {
        gap(gap);
      }
    }
    untraced(answer.untraced());
  }

  private void summary(GapList answer) {
    page.text(
        Page.many(answer.gaps().size(), "concept")
            + ", "
            + Page.many(answer.sources(), "source")
            + ". For one of them whole: merese gaps TERM.");
    page.blank();
    brief("No source names or pictures", answer, State.NOTHING);
    brief("Named, but pictured by none", answer, State.NAMED_ONLY);
    brief("Pictured or described, but named by none", answer, State.WITHOUT_A_NAME);
    brief("Named and pictured", answer, State.NAMED_AND_PICTURED);
    List<String> mine = new ArrayList<>();
    for (Gap gap : answer.gaps()) {
      mine.addAll(gap.myWording());
    }
    if (!mine.isEmpty()) {
      page.heading("My own terms");
      for (String wording : mine) {
        page.hanging(INDENT, wording);
      }
      page.blank();
    }
  }

  private void brief(String title, GapList answer, State state) {
    List<Gap> gaps = new ArrayList<>();
    int wide = 0;
    for (Gap gap : answer.gaps()) {
      if (gap.state() == state) {
        gaps.add(gap);
        wide = Math.max(wide, Wrap.columns(name(gap.heading())));
      }
    }
    if (gaps.isEmpty()) {
      return;
    }
    page.heading(title + " (" + gaps.size() + ")");
    for (Gap gap : gaps) {
      page.columns(INDENT, name(gap.heading()), Math.min(wide, WIDEST)).line(counts(gap));
    }
    page.blank();
  }

  private static String counts(Gap gap) {
    List<String> parts = new ArrayList<>();
    add(parts, gap.uses().size(), gap.uses().size() == 1 ? "source" : "sources");
    add(parts, gap.saysNotShown().size(), "says not shown");
    add(
        parts,
        gap.lookedThrough().size() + gap.notInList().size() + gap.noList().size(),
        "checked in vain");
    add(parts, gap.indexOnly().size(), "index only");
    add(parts, gap.wordSearchOnly().size(), "word search only");
    add(parts, gap.toNote().size(), "to note");
    add(parts, gap.outOfScope().size(), "out of scope");
    add(parts, gap.notChecked().size(), "not checked");
    return parts.isEmpty() ? "no source is left" : String.join("; ", parts);
  }

  private static void add(List<String> parts, int count, String what) {
    if (count > 0) {
      parts.add(Wrap.together(count + " " + what));
    }
  }

  private static String name(Heading heading) {
    return EntryText.label(heading);
  }

  private void gap(Gap gap) {
    Heading heading = gap.heading();
    page.heading(name(heading));
    page.text(heading.definition());
    page.blank();
    page.heading("To say");
    for (String sentence : gap.wording()) {
      page.hanging(INDENT, Labels.together(sentence));
    }
    for (String wording : gap.myWording()) {
      page.hanging(INDENT, wording);
    }
    page.blank();
    uses("Names or pictures it", gap.uses());
    if (gap.state() == State.NOTHING) {
      page.text(
          "The vocabulary's own label, “"
              + heading.preferred()
              + "”, is no evidence that any source uses it.");
      page.blank();
    }
    uses("Says not shown", gap.saysNotShown());
    uses("May mean it, meaning not stated", gap.mayMeanIt());
    uses("My own work", gap.ownWork());
    coinages(gap);
    pieces(gap.pieces());
  }

  private void uses(String title, List<Use> uses) {
    if (uses.isEmpty()) {
      return;
    }
    page.heading(title);
    int wide = 0;
    for (Use use : uses) {
      wide = Math.max(wide, Wrap.columns(use.source().reference()));
    }
    for (Use use : uses) {
      String printed =
          use.printed().isEmpty() ? "not named" : "“" + String.join("”, “", use.printed()) + "”";
      page.columns(INDENT, use.source().reference(), Math.min(wide, WIDEST))
          .line(places(use), printed);
    }
    page.blank();
  }

  private static String places(Use use) {
    String words = locators(use.inWords());
    if (use.pictured().isEmpty()) {
      return words + " " + Wrap.together("(text only)");
    }
    String pictured = locators(use.pictured());
    return words.isEmpty() ? pictured : pictured + " " + Wrap.together("(text ") + words + ")";
  }

  private static String locators(List<Locator> locators) {
    StringBuilder text = new StringBuilder();
    for (Locator locator : locators) {
      text.append(text.isEmpty() ? "" : "; ").append(Wrap.together(locator.toString()));
    }
    return text.toString();
  }

  private void coinages(Gap gap) {
    if (gap.coinages().isEmpty()) {
      return;
    }
    page.heading("My own terms");
    for (Coinage coinage : gap.coinages()) {
      page.hanging(
          INDENT,
          "“"
              + coinage.label()
              + "”: coined"
              + Page.given(" by ", coinage.coiner(), "")
              + Page.given(coinage.coiner().isPresent() ? ", " : " ", coinage.on(), "")
              + Page.given(", from ", coinage.evidence(), ""));
    }
    page.blank();
  }

  private void pieces(List<PieceLine> pieces) {
    if (pieces.isEmpty()) {
      return;
    }
    page.heading("My own pieces");
    int wide = 0;
    for (PieceLine piece : pieces) {
      wide = Math.max(wide, Wrap.columns(piece.ref()));
    }
    for (PieceLine piece : pieces) {
      page.columns(INDENT, piece.ref(), Math.min(wide, WIDEST))
          .line(
              piece.title()
                  + " ("
                  + piece.kind().words()
                  + Page.given(", photo ", piece.photo(), "")
                  + ")"
                  + Page.given(": ", piece.words(), ""));
    }
    page.blank();
  }

  private void untraced(List<Untraced> untraced) {
    if (untraced.isEmpty()) {
      return;
    }
    page.heading("Met somewhere, the source forgotten; not to be cited");
    for (Untraced word : untraced) {
      page.hanging(INDENT, "“" + word.word() + "”" + Page.given(", ", word.words(), ""));
    }
    page.blank();
  }
}
