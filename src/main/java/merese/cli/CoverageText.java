package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.Checked;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.LeftOut;
import merese.answer.Coverage.NotChecked;
import merese.answer.Coverage.OtherUse;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.Section;
import merese.answer.Coverage.SourceLine;
import merese.answer.Coverage.WordUse;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Showing;
import merese.model.Mine.Untraced;

/** Lays out which sources cover a feature, for a screen of any width. */
final class CoverageText {
  private static final String INDENT = "    ";
  private static final int WIDEST_REFERENCE = 26;

  private final Page page;
  private final EntryText entry;
  private final Narrowing narrowing;
  private final boolean withReasons;
  private final Showing showing;

  /**
   * @param withReasons whether to say why the user prefers a label
   * @param showing how many sources of each group to print
   */
  CoverageText(Context context, Narrowing narrowing, boolean withReasons, Showing showing) {
    this.page = new Page(context.out(), context.screen());
    this.entry = new EntryText(page);
    this.narrowing = narrowing;
    this.withReasons = withReasons;
    this.showing = showing;
  }

  void print(Coverage answer) {
    if (answer.sections().isEmpty()) {
      nothing(answer);
      return;
    }
    if (answer.ask().isPresent()) {
      ask(answer, answer.ask().get());
    }
    for (Section section : answer.sections()) {
      section(section, answer.ask().isPresent());
    }
    if (!answer.meaningNotStated().isEmpty()) {
      group(meaningNotStated(answer));
    }
    checked(answer.checked(), answer.allChecked());
    notChecked(answer.notChecked(), answer.allNotChecked());
    for (LeftOut leftOut : answer.leftOut()) {
      leftOut(leftOut);
    }
    for (Section section : answer.sections()) {
      after(section);
    }
    met(answer.met());
    new OnPagesText(page).print(answer.onPages(), answer.allOnPages());
  }

  private static Grouped meaningNotStated(Coverage answer) {
    List<Entry> entries = answer.meaningNotStated();
    return new Grouped(Group.MEANING_NOT_STATED, entries, entries.size());
  }

  private void ask(Coverage answer, Coverage.Ask ask) {
    String remark = Page.given(" (", ask.remark(), ")");
    page.text("“" + answer.asked() + "”: " + ask.reason() + remark + ".");
    int wide = 0;
    for (Section section : answer.sections()) {
      wide = Math.max(wide, Wrap.columns(section.heading().label()));
    }
    for (Section section : answer.sections()) {
      String lead = "  " + section.letter().orElse("") + "  ";
      page.columns(lead, section.heading().label(), Math.min(wide, WIDEST_REFERENCE))
          .line(Wrap.together("--concept " + section.heading().id()));
    }
    page.blank();
  }

  private void section(Section section, boolean byWord) {
    Coverage.Heading heading = section.heading();
    String letter = Wrap.together(Page.given("", section.letter(), "  "));
    page.heading(letter + EntryText.label(heading));
    if (heading.myTerm() && !heading.label().equals(heading.preferred())) {
      page.text("The vocabulary prefers “" + heading.preferred() + "”.");
    }
    if (withReasons && heading.myTerm()) {
      page.text("Why my term: " + reason(heading.reason().orElse("no reason recorded")) + ".");
      if (!heading.setAside().isEmpty()) {
        page.text("Set aside: " + String.join("; ", heading.setAside()) + ".");
      }
    }
    page.text(heading.definition() + (heading.uncertain() ? " (Usage varies.)" : ""));
    page.blank();
    page.text(count(section, byWord));
    List<Entry> counted = section.group(Group.COUNTED);
    if (!counted.isEmpty()) {
      counted(counted, section.count());
    }
    page.blank();
    for (Grouped grouped : section.groups()) {
      if (grouped.group() != Group.COUNTED) {
        group(grouped);
      }
    }
  }

  private String count(Section section, boolean byWord) {
    boolean chosen =
        narrowing.owned() || !narrowing.kinds().isEmpty() || narrowing.years().isPresent();
    String among = chosen ? " of those asked for" : "";
    boolean one = section.count() < 2;
    String what =
        (narrowing.pictured() ? " picture" : " cover")
            + (one ? "s" : "")
            + (byWord ? " it by this word" : " it")
            + Page.given(
                (one ? " and gives" : " and give") + " the place as “", narrowing.place(), "”");
    if (section.count() == 0) {
      return (chosen ? "None of the sources asked for" : "No source in this library") + what + ".";
    }
    String works =
        section.works() < section.count()
            ? " " + Wrap.together("(editions of " + Page.many(section.works(), "work") + ")")
            : "";
    return Page.many(section.count(), "source") + among + what + works + ".";
  }

  private void counted(List<Entry> entries, int all) {
    int shown = Math.min(showing.of(entries.size()), entries.size());
    int digits = String.valueOf(shown).length();
    int wide = referenceWidth(entries.subList(0, shown));
    for (int i = 0; i < shown; i++) {
      String number = String.valueOf(i + 1);
      String lead = " ".repeat(digits - number.length() + 1) + number + ". ";
      entry.print(lead, entries.get(i), wide, Group.COUNTED);
    }
    more(all - shown);
  }

  private void more(int number) {
    if (number > 0) {
      page.hanging(INDENT, "and " + number + " more");
    }
  }

  private void group(Grouped grouped) {
    page.heading(grouped.group().title());
    int all = grouped.entries().size();
    List<Entry> shown = grouped.entries().subList(0, Math.min(showing.of(all), all));
    int wide = referenceWidth(shown);
    for (Entry each : shown) {
      entry.print(INDENT, each, wide, grouped.group());
    }
    more(grouped.all() - shown.size());
    page.blank();
  }

  private void checked(List<Checked> checked, int all) {
    if (checked.isEmpty()) {
      return;
    }
    page.heading("Checked, without a note");
    int wide = 0;
    for (Checked source : checked) {
      wide = Math.max(wide, Wrap.columns(source.source().reference()));
    }
    for (Checked source : checked) {
      Page.Columns columns =
          page.columns(INDENT, source.source().reference(), Math.min(wide, WIDEST_REFERENCE));
      for (CheckLine check : source.checks()) {
        columns.line(
            Page.given("", check.extent(), " ")
                + "("
                + check.method()
                + "): "
                + check.result()
                + Page.given("; ", check.scope(), ""));
      }
    }
    more(all - checked.size());
    page.blank();
  }

  private void notChecked(List<NotChecked> notChecked, int all) {
    if (notChecked.isEmpty()) {
      return;
    }
    page.heading("Not checked");
    List<String> plain = new ArrayList<>();
    for (NotChecked source : notChecked) {
      if (source.remark().isEmpty()) {
        plain.add(Wrap.together(source.source().reference()));
      } else {
        page.hanging(INDENT, source.source().reference() + ": " + source.remark().get());
      }
    }
    if (!plain.isEmpty()) {
      page.hanging(INDENT, String.join("; ", plain));
    }
    more(all - notChecked.size());
    page.blank();
  }

  private void leftOut(LeftOut leftOut) {
    List<String> names = new ArrayList<>();
    for (SourceLine source : leftOut.sources()) {
      names.add(Wrap.together(source.reference()));
    }
    page.heading("Left out: " + leftOut.because());
    page.hanging(INDENT, String.join("; ", names));
    page.blank();
  }

  /** What always follows: words to watch, how to tell look-alikes, the user's own evidence. */
  private void after(Section section) {
    if (!section.words().isEmpty()) {
      page.heading("Words to watch");
      for (WordUse word : section.words()) {
        word(word);
      }
      page.blank();
    }
    if (!section.howToTell().isEmpty()) {
      page.heading("How to tell look-alikes");
      for (HowToTell pair : section.howToTell()) {
        howToTell(section, pair);
      }
      page.blank();
    }
    if (!section.ownPieces().isEmpty()) {
      page.heading("My own pieces");
      pieces(section);
      page.blank();
    }
    if (!section.experience().isEmpty()) {
      page.heading("My experience");
      for (ExperienceLine line : section.experience()) {
        experience(section, line);
      }
      page.blank();
    }
  }

  private void pieces(Section section) {
    int wide = 0;
    for (PieceLine piece : section.ownPieces()) {
      wide = Math.max(wide, Wrap.columns(name(piece)));
    }
    for (PieceLine piece : section.ownPieces()) {
      String what = isAsked(section, piece.concept()) ? "" : " (" + piece.concept().label() + ")";
      page.columns(INDENT, name(piece), Math.min(wide, WIDEST_REFERENCE))
          .line(
              piece.title()
                  + ": "
                  + piece.kind().words()
                  + what
                  + Page.given("; ", piece.words(), ""));
    }
  }

  private static String name(PieceLine piece) {
    return piece.ref() + Page.given(", photo ", piece.photo(), "");
  }

  private void experience(Section section, ExperienceLine line) {
    List<String> from = new ArrayList<>();
    if (line.pieces().isPresent()) {
      from.add(Page.many(line.pieces().getAsInt(), "piece") + " handled");
    }
    if (line.until().isPresent()) {
      from.add("until " + line.until().getAsInt());
    }
    String what = isAsked(section, line.concept()) ? "" : line.concept().label() + ": ";
    String handled = from.isEmpty() ? "" : " (" + String.join(", ", from) + ")";
    page.hanging(INDENT, what + line.words() + handled);
  }

  private static boolean isAsked(Section section, ConceptLine concept) {
    return concept.id().equals(section.heading().id());
  }

  /** A reason that is one of the recorded ones in words; others as they were written. */
  private static String reason(String recorded) {
    return switch (recorded) {
      case "ambiguous" -> "the other words are ambiguous";
      case "describes-better" -> "it describes the thing better";
      case "usage" -> "it is in common use";
      case "first-learnt" -> "it was the first one learnt";
      default -> recorded;
    };
  }

  private void word(WordUse use) {
    List<String> others = new ArrayList<>();
    for (OtherUse other : use.others()) {
      List<String> references = new ArrayList<>();
      for (String reference : other.references()) {
        references.add(Wrap.together(reference));
      }
      int more = other.all() - references.size();
      if (more > 0) {
        references.add("and " + more + " more");
      }
      String by = references.isEmpty() ? "by the vocabulary" : String.join("; ", references);
      others.add(other.concept().label() + " (" + by + ")");
    }
    int more = use.all() - others.size();
    if (more > 0) {
      others.add("and " + more + (more == 1 ? " other thing" : " other things"));
    }
    page.hanging(
        INDENT, "“" + use.word() + "”: others use this word for " + String.join(", ", others));
  }

  /** A test that stands under the other concept describes this one. */
  private void howToTell(Section section, HowToTell pair) {
    boolean asked = pair.concept().id().equals(section.heading().id());
    boolean ours = pair.statedUnder().id().equals(pair.concept().id());
    String between =
        asked ? pair.other().label() : pair.concept().label() + " and " + pair.other().label();
    String test =
        ours
            ? Page.given(": ", pair.test(), "")
            : Page.given(" (" + pair.concept().label() + ": ", pair.test(), ")");
    page.hanging(INDENT, between + test);
  }

  private void nothing(Coverage answer) {
    if (!answer.meaningNotStated().isEmpty()) {
      page.text("No note says what “" + answer.asked() + "” means.");
      page.blank();
      group(meaningNotStated(answer));
    } else {
      page.text("“" + answer.asked() + "” is no word of the vocabulary, and no note prints it.");
    }
    met(answer.met());
    if (!answer.nearTerms().isEmpty()) {
      page.text("Near it: " + String.join("; ", answer.nearTerms()) + ".");
    }
  }

  private void met(List<Untraced> met) {
    for (Untraced untraced : met) {
      page.text(
          "“"
              + untraced.word()
              + "” was met somewhere; its source is forgotten"
              + Page.given(": ", untraced.words(), "")
              + ".");
    }
  }

  private static int referenceWidth(List<Entry> entries) {
    int wide = 0;
    for (Entry entry : entries) {
      wide = Math.max(wide, Wrap.columns(entry.source().reference()));
    }
    return Math.min(wide, WIDEST_REFERENCE);
  }
}
