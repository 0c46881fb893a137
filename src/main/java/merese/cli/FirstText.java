package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.first.FirstUse;
import merese.answer.first.FirstUse.Meaning;
import merese.answer.first.FirstUse.Printed;
import merese.answer.first.FirstUse.Term;
import merese.answer.first.FirstUse.Use;
import merese.answer.first.FirstUse.Uses;
import merese.model.Locator;
import merese.model.Mine.Coinage;
import merese.model.Mine.Untraced;

/** Lays out who prints a word first. */
final class FirstText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 26;

  private final Page page;

  FirstText(Context context) {
    this.page = new Page(context.out(), context.screen());
  }

  void print(FirstUse answer) {
    for (Term term : answer.terms()) {
      term(term);
      page.blank();
    }
  }

  private void term(Term term) {
    page.heading("“" + term.asked() + "”");
    page.text(summary(term));
    page.blank();
    for (Meaning meaning : term.meanings()) {
      page.heading(
          term.meanings().size() > 1 || term.meaningNotStated().isPresent()
              ? "Meaning: " + meaning.concept().label()
              : meaning.concept().label());
      uses(meaning.uses(), meaning.before());
    }
    if (term.meaningNotStated().isPresent()) {
      page.heading("Meaning not stated");
      uses(term.meaningNotStated().get(), List.of());
    }
    for (Coinage coinage : term.mine()) {
      page.text("“" + coinage.label() + "” is my term" + coined(coinage) + ".");
    }
    for (Untraced untraced : term.met()) {
      page.text(
          "Met somewhere, the source forgotten: “"
              + untraced.word()
              + "”"
              + Page.given(", ", untraced.words(), "")
              + ". Not to be cited.");
    }
  }

  private static String summary(Term term) {
    if (!term.meanings().isEmpty() || term.meaningNotStated().isPresent()) {
      if (!term.isFound()) {
        return "No source in this library prints it but what stands below.";
      }
      int meanings = term.meanings().size();
      return meanings > 1
          ? "The word has " + meanings + " meanings in this library; each has its own first use."
          : "The earliest in this library; others may have it before.";
    }
    StringBuilder text = new StringBuilder("No note in this library prints it.");
    if (!term.inVocabulary().isEmpty()) {
      List<String> labels = new ArrayList<>();
      for (ConceptLine concept : term.inVocabulary()) {
        labels.add(concept.label());
      }
      text.append(" The vocabulary has it for “")
          .append(String.join("”, “", labels))
          .append("”, which is no evidence that any source does.");
    }
    if (!term.nearTerms().isEmpty()) {
      text.append(" Near it: ").append(String.join("; ", term.nearTerms())).append('.');
    }
    return text.toString();
  }

  private static String coined(Coinage coinage) {
    return Page.given(", coined by ", coinage.coiner(), "")
        + Page.given(coinage.coiner().isPresent() ? ", " : ", coined ", coinage.on(), "")
        + Page.given(", from ", coinage.evidence(), "");
  }

  private void uses(Uses uses, List<Use> before) {
    group("First in this library", uses.earliest(), true);
    group("Before that, in other words", before, true);
    group("Perhaps earlier", uses.unsettled(), true);
    group("Later", uses.later(), true);
    group("Undated", uses.undated(), false);
    group("Repeats, which date nothing", uses.repeats(), false);
    group("Printed only to say that it is not shown", uses.onlyDenied(), false);
    group("My own work", uses.ownWork(), false);
    page.blank();
  }

  private void group(String title, List<Use> uses, boolean withYears) {
    if (uses.isEmpty()) {
      return;
    }
    page.text(title + ":");
    int wide = 0;
    for (Use use : uses) {
      wide = Math.max(wide, Wrap.columns(use.source().reference()));
    }
    for (Use use : uses) {
      Page.Columns columns = page.columns(INDENT, use.source().reference(), Math.min(wide, WIDEST));
      for (Printed printed : use.terms()) {
        columns.line(locators(printed.locators()), "“" + printed.term() + "”");
      }
      if (use.remark().isPresent()) {
        String year = withYears && use.year().isPresent() ? use.year().getAsInt() + " " : "";
        columns.line(year + use.remark().get());
      }
    }
  }

  private static String locators(List<Locator> locators) {
    StringBuilder text = new StringBuilder();
    for (Locator locator : locators) {
      text.append(text.isEmpty() ? "" : "; ").append(Wrap.together(locator.toString()));
    }
    return text.toString();
  }
}
