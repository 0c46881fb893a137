package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.witnesses.Dependence;
import merese.answer.witnesses.Witnesses;
import merese.answer.witnesses.Witnesses.Folded;
import merese.answer.witnesses.Witnesses.Mention;
import merese.answer.witnesses.Witnesses.Printing;
import merese.answer.witnesses.Witnesses.Section;
import merese.answer.witnesses.Witnesses.SharedPicture;
import merese.answer.witnesses.Witnesses.Witness;

/** Lays out who speaks for themselves, and who after whom. */
final class WitnessesText {
  private static final String INDENT = "    ";
  private static final int WIDEST_REFERENCE = 26;

  private final Page page;
  private final EntryText entry;

  WitnessesText(Page page) {
    this.page = page;
    this.entry = new EntryText(page);
  }

  void print(Witnesses answer) {
    for (Section section : answer.sections()) {
      section(section);
    }
  }

  private void section(Section section) {
    page.blank();
    Heading heading = section.heading();
    page.heading(EntryText.label(heading));
    page.text(section.counted());
    page.blank();
    int wide = width(section);
    int digits = String.valueOf(section.witnesses().size()).length();
    for (int i = 0; i < section.witnesses().size(); i++) {
      String number = String.valueOf(i + 1);
      witness(
          " ".repeat(digits - number.length() + 1) + number + ". ",
          section.witnesses().get(i),
          wide);
    }
    page.blank();
    pictures(section.pictures());
    mentions("Takes a picture from", "takes a picture from", section.borrowings());
    mentions("Cites, and counts all the same", "cites", section.citations());
    if (!section.ownWorks().isEmpty()) {
      page.heading("Your own articles and films, which are no witnesses");
      section.ownWorks().forEach(e -> entry.print(INDENT, e, wide, Group.OWN_WORK));
      page.blank();
    }
  }

  private void witness(String lead, Witness witness, int wide) {
    entry.print(lead, witness.first(), wide, Group.COUNTED);
    String indent = " ".repeat(Wrap.columns(lead)) + "+ ";
    for (Folded folded : witness.folded()) {
      entry.print(indent, folded.source(), wide - 2, Group.COUNTED);
      page.hanging(" ".repeat(Wrap.columns(indent)) + "  ", why(folded.why()));
    }
  }

  /** The steps that lead from a source to its witness, as a sentence without a full stop. */
  static String why(List<Dependence> steps) {
    return Dependence.sentence(steps, Wrap::together, Labels::together);
  }

  private void pictures(List<SharedPicture> pictures) {
    if (pictures.isEmpty()) {
      return;
    }
    page.heading("The same picture in several sources");
    for (SharedPicture picture : pictures) {
      Map<String, List<String>> bySource = new LinkedHashMap<>();
      for (Printing printing : picture.printings()) {
        String reference = printing.source().reference() + (printing.mine() ? " (my own)" : "");
        bySource
            .computeIfAbsent(Wrap.together(reference), r -> new ArrayList<>())
            .add(
                Wrap.together(printing.locator().map(Object::toString).orElse("place not noted"))
                    + (printing.noted() ? "" : " (by its list of plates)"));
      }
      List<String> places = new ArrayList<>();
      bySource.forEach((r, l) -> places.add(r + ", " + String.join(" and ", l)));
      page.hanging(INDENT, picture.picture() + ": " + String.join("; ", places));
    }
    page.blank();
  }

  private void mentions(String heading, String verb, List<Mention> mentions) {
    if (mentions.isEmpty()) {
      return;
    }
    page.heading(heading);
    for (Mention mention : mentions) {
      page.hanging(
          INDENT,
          reference(mention.by())
              + " "
              + verb
              + " "
              + reference(mention.of())
              + Page.given(" (", mention.picture(), ")")
              + evidence(mention.evidence()));
    }
    page.blank();
  }

  private static String evidence(Optional<String> evidence) {
    return Page.given(": ", evidence.map(Labels::together), "");
  }

  private static String reference(SourceLine source) {
    return Wrap.together(source.reference());
  }

  private static int width(Section section) {
    int wide = 0;
    for (Witness witness : section.witnesses()) {
      wide = Math.max(wide, width(witness.first()));
      for (Folded folded : witness.folded()) {
        wide = Math.max(wide, width(folded.source()) + 2);
      }
    }
    return Math.min(wide, WIDEST_REFERENCE);
  }

  private static int width(Entry entry) {
    return Wrap.columns(entry.source().reference());
  }
}
