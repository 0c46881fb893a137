package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.claims.ClaimTitles;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsAnswer.Contradiction;
import merese.answer.claims.ClaimsAnswer.Contradictions;
import merese.answer.claims.ClaimsAnswer.Denial;
import merese.answer.claims.ClaimsAnswer.Group;
import merese.answer.claims.ClaimsAnswer.OfKind;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Section;
import merese.answer.claims.ClaimsQuestion;
import merese.model.Claim;

/** Lays out who claims what, one row a claim. */
final class ClaimsText {
  private static final String INDENT = "    ";
  private static final int WIDEST_REFERENCE = 26;

  private final Page page;
  private final ClaimTitles titles;

  ClaimsText(Page page, ClaimsQuestion question) {
    this.page = page;
    this.titles = new ClaimTitles(question);
  }

  void print(ClaimsAnswer answer) {
    boolean dated = false;
    for (Section section : answer.sections()) {
      section(section);
      dated |= section.kind(Claim.Kind.DATE).isPresent();
    }
    if (dated && !answer.isEmpty()) {
      page.blank();
      page.text(
          "Computed years are by the date profile “"
              + answer.profile().name()
              + "” ("
              + Wrap.together("circa ±" + answer.profile().circa().years())
              + "); see "
              + Wrap.together("merese claims --profile.")
              + " Nothing is averaged.");
    }
  }

  private void section(Section section) {
    heading(section.heading());
    page.text(count(section));
    page.blank();
    for (OfKind kind : section.kinds()) {
      kind(kind);
    }
    rows("About one object, not the feature", section.objects(), true);
    if (!section.copies().isEmpty()) {
      rows("Caution: copies", section.copies(), true);
    }
    contradictions(section.contradictions());
    denials(section.saysNotShown());
    rows("Your own articles and films, no witnesses", section.ownWork(), true);
    experience(section);
  }

  private void heading(Heading heading) {
    page.blank();
    page.heading(EntryText.label(heading));
    if (heading.myTerm() && !heading.label().equals(heading.preferred())) {
      page.text("The vocabulary prefers “" + heading.preferred() + "”.");
    }
    page.text(heading.definition() + (heading.uncertain() ? " (Usage varies.)" : ""));
    page.blank();
  }

  private static String count(Section section) {
    if (section.sources() == 0) {
      return "No source in this library covers it.";
    }
    String works =
        section.works() < section.sources()
            ? " " + Wrap.together("(editions of " + Page.many(section.works(), "work") + ")")
            : "";
    return Page.many(section.sources(), "source")
        + (section.sources() == 1 ? " covers it" : " cover it")
        + works
        + ".";
  }

  private void kind(OfKind kind) {
    for (Group group : kind.groups()) {
      rows(titles.of(kind.kind(), group.standing()), group.rows(), false);
    }
    boolean asked = kind.kind() == Claim.Kind.DATE || kind.kind() == Claim.Kind.PLACE;
    if (!kind.silent().isEmpty() && (asked || kind.kind() == Claim.Kind.METHOD)) {
      page.heading("Silent: " + ClaimTitles.silence(kind.kind()));
      page.hanging(INDENT, references(kind.silent()));
      page.blank();
    }
  }

  private void rows(String title, List<Row> rows, boolean withKinds) {
    if (rows.isEmpty()) {
      return;
    }
    page.heading(title);
    int wide = 0;
    for (Row row : rows) {
      wide = Math.max(wide, Wrap.columns(row.source().reference()));
    }
    for (Row row : rows) {
      String kind =
          withKinds && row.kind() != Claim.Kind.COPY_WARNING ? row.kind().code() + ": " : "";
      Page.Columns columns =
          page.columns(INDENT, row.source().reference(), Math.min(wide, WIDEST_REFERENCE));
      columns.line(ClaimRows.places(row), kind + "“" + row.words() + "”");
      for (String remark : ClaimRows.remarks(row)) {
        columns.line(remark);
      }
    }
    page.blank();
  }

  private void contradictions(Contradictions found) {
    if (found.listed().isEmpty()) {
      return;
    }
    page.heading("Contradictions: " + Page.many(found.count(), "pair"));
    int named = 0;
    for (Contradiction each : found.listed()) {
      List<String> against = new ArrayList<>();
      for (Row row : each.against()) {
        against.add(ClaimRows.brief(row));
      }
      named += against.size();
      page.hanging(
          INDENT,
          each.kind().code()
              + ": "
              + ClaimRows.brief(each.one())
              + " against "
              + String.join("; ", against)
              + (each.sameWork() ? " (editions of one work)" : ""));
    }
    if (named < found.count()) {
      page.hanging(INDENT, "and " + (found.count() - named) + " more");
    }
    page.blank();
  }

  private void denials(List<Denial> denials) {
    if (denials.isEmpty()) {
      return;
    }
    page.heading("Says not shown, so not counted");
    for (Denial denial : denials) {
      List<String> said = new ArrayList<>();
      for (String words : denial.words()) {
        said.add("“" + words + "”");
      }
      page.hanging(
          INDENT,
          denial.source().reference()
              + ", "
              + ClaimRows.locators(denial.where())
              + (said.isEmpty() ? "" : ": " + String.join(", ", said)));
    }
    page.blank();
  }

  private void experience(Section section) {
    if (section.experience().isEmpty()) {
      return;
    }
    page.heading("My experience");
    for (ExperienceLine line : section.experience()) {
      List<String> from = new ArrayList<>();
      if (line.pieces().isPresent()) {
        from.add(Page.many(line.pieces().getAsInt(), "piece") + " handled");
      }
      if (line.until().isPresent()) {
        from.add("until " + line.until().getAsInt());
      }
      String what =
          line.concept().id().equals(section.heading().id()) ? "" : line.concept().label() + ", ";
      page.hanging(
          INDENT,
          what
              + line.kind().code()
              + ": "
              + line.words()
              + (from.isEmpty() ? "" : " (" + String.join(", ", from) + ")"));
    }
    page.blank();
  }

  private static String references(List<SourceLine> sources) {
    List<String> names = new ArrayList<>();
    for (SourceLine source : sources) {
      names.add(Wrap.together(source.reference()));
    }
    return String.join("; ", names);
  }
}
