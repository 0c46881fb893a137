package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.PieceLine;
import merese.answer.identify.Identification;
import merese.answer.identify.Identification.Agreement;
import merese.answer.identify.Identification.Fitting;
import merese.answer.identify.Identification.KeyLine;
import merese.answer.identify.Identification.Piece;

/** Lays out which kinds fit what was observed; what is left to do is {@link StillToLookText}'s. */
final class IdentificationText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 26;

  /** More pictures than this are counted, and `covers` has them all. */
  private static final int PICTURES = 2;

  private final Page page;
  private final EntryText entry;

  IdentificationText(Page page) {
    this.page = page;
    this.entry = new EntryText(page);
  }

  void print(Identification answer) {
    page.text(answer.caution());
    page.blank();
    if (answer.piece().isPresent()) {
      piece(answer.piece().get());
    }
    new ObservedText(page).print(answer);
    if (!answer.notInKey().isEmpty()) {
      page.text("The key has no kind for " + names(answer.notInKey()) + ".");
      page.blank();
    }
    kinds(answer);
    new StillToLookText(page).print(answer);
    page.blank();
    key(page, answer.key());
  }

  private void piece(Piece piece) {
    page.heading(piece.ref() + ": " + piece.title());
    if (piece.part().isPresent()) {
      page.text("Only: " + piece.part().get());
    }
    for (PieceLine of : piece.evidence()) {
      page.hanging(
          INDENT,
          "recorded by you as "
              + of.kind().words()
              + ": "
              + of.concept().label()
              + Page.given(" (", of.words(), ")")
              + Page.given(", photo ", of.photo(), ""));
    }
    page.blank();
  }

  private void kinds(Identification answer) {
    if (answer.leavesNoKind() && answer.kinds() > 0) {
      page.text(
          "Nothing fits all of it: of "
              + Page.many(answer.kinds(), "kind")
              + " each is ruled out by something below. It may be a kind that is not among them,"
              + " or two things taken for one; look again at what rules most of them out.");
      page.blank();
    }
    if (!answer.fits().isEmpty()) {
      page.heading("Fits, as far as the key goes" + of(answer.fits(), answer));
      int digits = String.valueOf(answer.fits().size()).length();
      for (int i = 0; i < answer.fits().size(); i++) {
        String number = String.valueOf(i + 1);
        whole(" ".repeat(digits - number.length() + 1) + number + ". ", answer.fits().get(i));
      }
      page.blank();
    }
    if (answer.open().isEmpty()) {
      return;
    }
    boolean compares = !answer.tells();
    page.heading(
        (compares ? "To compare" : "Not ruled out: the key says nothing here of them")
            + of(answer.open(), answer));
    if (compares) {
      answer.open().forEach(f -> whole("  ", f));
    } else {
      brief(answer.open());
    }
    page.blank();
  }

  private static String of(List<Fitting> some, Identification answer) {
    return " (" + some.size() + " of " + Page.many(answer.kinds(), "kind") + ")";
  }

  private void whole(String lead, Fitting kind) {
    page.hanging(lead, kind.concept().label() + agreeing(kind.agreements()));
    String indent = " ".repeat(Wrap.columns(lead));
    page.hanging(indent, kind.definition() + (kind.uncertain() ? " (Usage varies.)" : ""));
    for (Agreement agreement : kind.agreements()) {
      if (!agreement.not().isEmpty()) {
        page.hanging(
            indent,
            "in part: "
                + agreement.character()
                + " "
                + String.join(", ", agreement.fits())
                + "; not "
                + String.join(", ", agreement.not()));
      }
    }
    if (kind.remark().isPresent()) {
      page.hanging(indent, kind.remark().get());
    }
    pictures(indent, kind);
  }

  private static String agreeing(List<Agreement> agreements) {
    List<String> characters = new ArrayList<>();
    agreements.forEach(a -> characters.add(a.character()));
    return characters.isEmpty() ? "" : ": " + String.join(", ", characters);
  }

  private void pictures(String indent, Fitting kind) {
    List<Entry> pictured = kind.pictured();
    if (pictured.isEmpty()) {
      page.hanging(indent, "No note in this library pictures it.");
      return;
    }
    List<Entry> first = pictured.subList(0, Math.min(PICTURES, pictured.size()));
    int wide = 0;
    for (Entry each : first) {
      wide = Math.max(wide, Wrap.columns(each.source().reference()));
    }
    for (Entry each : first) {
      entry.print(indent + "- ", each, Math.min(wide, WIDEST), Group.COUNTED);
    }
    if (pictured.size() > first.size()) {
      page.hanging(
          indent + "  ",
          "+ "
              + (pictured.size() - first.size())
              + " more: "
              + Wrap.together("merese covers --concept " + kind.concept().id() + " --pictured"));
    }
  }

  /** One line a kind, with the first picture. */
  private void brief(List<Fitting> kinds) {
    int wide = 0;
    for (Fitting kind : kinds) {
      wide = Math.max(wide, Wrap.columns(kind.concept().label()));
    }
    for (Fitting kind : kinds) {
      page.columns(INDENT, kind.concept().label(), Math.min(wide, WIDEST))
          .line(firstPicture(kind.pictured()));
    }
  }

  private static String firstPicture(List<Entry> pictured) {
    if (pictured.isEmpty()) {
      return "pictured by no note";
    }
    Entry first = pictured.get(0);
    return Wrap.together(first.source().reference())
        + ", "
        + Wrap.together(first.passages().get(0).pictured().get(0).toString())
        + (pictured.size() > 1 ? "; + " + (pictured.size() - 1) + " more" : "");
  }

  static String names(List<ConceptLine> concepts) {
    List<String> names = new ArrayList<>();
    concepts.forEach(c -> names.add(c.label()));
    return String.join(", ", names);
  }

  /** What the key is made from. */
  static void key(Page page, KeyLine key) {
    page.text(
        (key.ofLibrary()
                ? "The key: "
                : "The key, which is the program's own since this library has none: ")
            + key.basis()
            + " Definitions and tests are the vocabulary's; pictures are where the sources have"
            + " them.");
    if (!key.notInVocabulary().isEmpty()) {
      page.text(
          "Left out, as the vocabulary has no such concept: "
              + String.join(", ", key.notInVocabulary())
              + ".");
    }
  }
}
