package merese.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.answer.Correction;
import merese.answer.literature.Literature;
import merese.answer.literature.Literature.Clause;
import merese.answer.literature.Literature.Mention;
import merese.answer.literature.Literature.OfType;
import merese.answer.literature.Literature.Piece;
import merese.answer.literature.Literature.Saying;
import merese.answer.literature.Literature.Section;
import merese.answer.literature.Literature.Sentence;

/** Lays out the literature of a piece. */
final class LiteratureText {
  private static final String INDENT = "    ";

  private final Page page;
  private final boolean full;
  private final Set<Correction> told = new HashSet<>();

  LiteratureText(Page page, boolean full) {
    this.page = page;
    this.full = full;
  }

  void print(Literature answer) {
    for (Section section : answer.sections()) {
      page.blank();
      section.piece().ifPresent(piece -> piece(piece, section));
      String lead = section.piece().isPresent() ? "Cf., same type only: " : "Cf.: ";
      section.types().forEach(type -> type(type, lead));
    }
    page.blank();
    if (full) {
      answer.remarks().forEach(page::text);
    }
    answer.cautions().forEach(page::text);
  }

  private void piece(Piece piece, Section section) {
    page.heading(piece.ref() + ", " + piece.title());
    linked("Lit.: ", section.same(), "the same piece: ");
    linked("Cf.: ", section.similar(), "similar: ");
    if (!section.ownWork().isEmpty()) {
      linked("My own: ", section.ownWork(), "");
    }
    section.ofThePiece().ifPresent(this::sentence);
    page.blank();
  }

  /** Each with its evidence below. */
  private void linked(String lead, List<Mention> mentions, String why) {
    if (mentions.isEmpty()) {
      page.text(lead + "none noted.");
    }
    for (Mention mention : mentions) {
      page.hanging(lead, cited(mention) + (full ? "" : "."));
      mention.evidence().ifPresent(evidence -> page.hanging(INDENT, why + evidence));
      corrections(mention.corrected(), "");
    }
  }

  private void type(OfType type, String lead) {
    told.clear();
    page.heading(EntryText.label(type.heading()));
    ofType(lead, type.pictured());
    ofType("My own, same type only: ", type.ownWork());
    if (type.pictured().isEmpty() && type.ownWork().isEmpty()) {
      page.text(lead + "no source pictures it.");
    }
    if (!type.saysNotShown().isEmpty()) {
      List<String> sources = new ArrayList<>();
      type.saysNotShown().forEach(source -> sources.add(Wrap.together(source.reference())));
      page.hanging("", "Says that it is not shown: " + String.join("; ", sources) + ".");
    }
    type.claimed().ifPresent(this::sentence);
    if (type.claimed().isEmpty()) {
      page.text("No source dates, places or names a maker of it.");
    }
    for (Sentence sentence : type.narrower()) {
      sentence(sentence);
    }
    for (Saying copy : type.copies()) {
      page.hanging("Copies: ", "“" + copy.words() + "” (" + place(copy) + limits(copy) + ")");
    }
    page.blank();
  }

  private void ofType(String lead, List<Mention> mentions) {
    if (mentions.isEmpty()) {
      return;
    }
    if (full) {
      page.text(lead.strip());
      for (Mention mention : mentions) {
        page.hanging(INDENT, cited(mention));
        corrections(mention.corrected(), "");
      }
      return;
    }
    List<String> all = new ArrayList<>();
    mentions.forEach(mention -> all.add(cited(mention)));
    page.text(lead + String.join("; ", all) + ".");
    for (Mention mention : mentions) {
      corrections(mention.corrected(), mention.source().reference() + ": ");
    }
  }

  private String cited(Mention mention) {
    String narrower = mention.narrower().map(c -> " (narrower: " + c.label() + ")").orElse("");
    return full
        ? Labels.together(mention.citation()) + narrower
        : Wrap.together(mention.source().reference())
            + ", "
            + ClaimRows.locators(mention.places()).replace("; ", ", ")
            + narrower;
  }

  private void sentence(Sentence sentence) {
    page.text(
        Labels.together(sentence.words()) + sentence.disagreement().map(d -> " " + d).orElse(""));
    for (Clause clause : sentence.clauses()) {
      for (Saying saying : clause.sayings()) {
        corrections(saying.corrected(), saying.source().reference() + ": ");
      }
    }
  }

  /** Each once under a feature. */
  private void corrections(List<Correction> corrections, String of) {
    for (Correction correction : corrections) {
      if (told.add(correction)) {
        page.hanging(INDENT, Wrap.together(of) + QuoteWords.correction(correction));
      }
    }
  }

  private static String place(Saying saying) {
    return Wrap.together(saying.source().reference())
        + ", "
        + ClaimRows.locators(saying.places()).replace("; ", ", ");
  }

  private static String limits(Saying saying) {
    return saying.limits().isEmpty() ? "" : "; " + String.join("; ", saying.limits());
  }
}
