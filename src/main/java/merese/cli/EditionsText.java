package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.editions.EditionGrid;
import merese.answer.editions.EditionGrid.Cell;
import merese.answer.editions.EditionGrid.CiteLine;
import merese.answer.editions.EditionGrid.EditionLine;
import merese.answer.editions.EditionGrid.From;
import merese.answer.editions.EditionGrid.OtherObject;
import merese.answer.editions.EditionGrid.Picture;
import merese.answer.editions.EditionGrid.Side;
import merese.model.Locator;

/** Lays out which edition has which plate. */
final class EditionsText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 26;

  private final Page page;
  private final int width;

  EditionsText(Context context) {
    this.page = new Page(context.out(), context.screen());
    this.width = context.screen().width();
  }

  void print(EditionGrid answer) {
    page.heading(answer.author() + ", " + answer.title());
    if (!answer.otherTitles().isEmpty()) {
      page.text("Also as “" + String.join("”, “", answer.otherTitles()) + "”.");
    }
    page.text(
        Page.many(answer.editions().size(), "edition")
            + " in this library, "
            + (answer.pictures().isEmpty()
                ? "no picture followed through them: no note or plate list of theirs has a"
                    + " picture's id."
                : Page.many(answer.pictures().size(), "picture") + " followed through them."));
    page.blank();
    if (answer.from().isPresent()) {
      from(answer, answer.from().get());
      return;
    }
    editions(answer.editions());
    if (!answer.pictures().isEmpty()) {
      grid(answer);
      for (Picture picture : answer.pictures()) {
        picture(answer, picture);
      }
    }
  }

  private void editions(List<EditionLine> editions) {
    page.heading("Editions");
    int wide = 0;
    for (EditionLine edition : editions) {
      wide = Math.max(wide, Wrap.columns(edition.source().reference()));
    }
    for (EditionLine edition : editions) {
      Page.Columns columns =
          page.columns(INDENT, edition.source().reference(), Math.min(wide, WIDEST));
      columns.line(descent(edition));
      if (edition.title().isPresent()) {
        columns.line("titled “" + edition.title().get() + "”");
      }
      if (edition.newMatter().isPresent()) {
        String added = edition.newMatter().get();
        columns.line(added.startsWith("new ") ? added : "new: " + added);
      }
      if (edition.platesAs().isPresent()) {
        columns.line("plates as " + Wrap.together(edition.platesAs().get()));
      } else if (!edition.platesRecorded()) {
        columns.line("no plate is followed from edition to edition");
      }
      String where = edition.source().whereabouts().orElse("");
      columns.line(
          !where.isEmpty()
              ? "[" + (edition.source().owned() ? "mine, " : "") + where + "]"
              : edition.source().owned() ? "mine, on the shelf" : "no copy recorded");
    }
    page.blank();
  }

  private static String descent(EditionLine edition) {
    List<String> parts = new ArrayList<>();
    edition.statement().ifPresent(parts::add);
    String form = edition.form().orElse("");
    String of =
        Page.given(
            form.equals("revised") ? " from " : " of ", edition.parent().map(Wrap::together), "");
    boolean said = edition.statement().isPresent() && edition.statement().get().contains(form);
    if (!form.isEmpty() && !(said && (form.equals("facsimile") || of.isEmpty()))) {
      parts.add(form + of + (edition.parentMissing() ? " (not in this library)" : ""));
    }
    return parts.isEmpty() ? "no edition statement" : String.join("; ", parts);
  }

  /** As many pictures beside each other as there is room for; the rest below. */
  private void grid(EditionGrid answer) {
    int rowHead = 0;
    for (EditionLine edition : answer.editions()) {
      rowHead = Math.max(rowHead, Wrap.columns(edition.year()));
    }
    int at = 0;
    while (at < answer.pictures().size()) {
      int used = INDENT.length() + rowHead;
      int end = at;
      List<Integer> widths = new ArrayList<>();
      while (end < answer.pictures().size()) {
        int wide = columnWidth(answer.pictures().get(end));
        if (used + 2 + wide > width && end > at) {
          break;
        }
        used += 2 + wide;
        widths.add(wide);
        end++;
      }
      if (used > width) {
        return; // not one column fits; the blocks below say the same
      }
      page.heading(at == 0 ? "Which edition has which picture" : "and further");
      rows(answer, rowHead, at, widths);
      at = end;
    }
  }

  private void rows(EditionGrid answer, int rowHead, int at, List<Integer> widths) {
    StringBuilder head = new StringBuilder(" ".repeat(rowHead));
    for (int i = 0; i < widths.size(); i++) {
      head.append("  ").append(padded(answer.pictures().get(at + i).id(), widths.get(i)));
    }
    page.hanging(INDENT, Wrap.together(head.toString().stripTrailing()));
    for (int row = 0; row < answer.editions().size(); row++) {
      StringBuilder line = new StringBuilder(padded(answer.editions().get(row).year(), rowHead));
      for (int i = 0; i < widths.size(); i++) {
        Cell cell = answer.pictures().get(at + i).cells().get(row);
        line.append("  ").append(padded(brief(cell), widths.get(i)));
      }
      page.hanging(INDENT, Wrap.together(line.toString().stripTrailing()));
    }
    page.blank();
  }

  private static int columnWidth(Picture picture) {
    int wide = Wrap.columns(picture.id());
    for (Cell cell : picture.cells()) {
      wide = Math.max(wide, Wrap.columns(brief(cell)));
    }
    return wide;
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - Wrap.columns(text)));
  }

  private static String brief(Cell cell) {
    return switch (cell.state()) {
      case FIRST, KEPT, RENUMBERED -> locators(cell.locators());
      case DROPPED -> "dropped";
      case OTHER_OBJECT -> "other object";
      case NOT_RECORDED -> "–";
    };
  }

  private void picture(EditionGrid answer, Picture picture) {
    page.heading(picture.id());
    int wide = 0;
    for (EditionLine edition : answer.editions()) {
      wide = Math.max(wide, Wrap.columns(edition.year()));
    }
    for (int i = 0; i < picture.cells().size(); i++) {
      Cell cell = picture.cells().get(i);
      Page.Columns columns = page.columns(INDENT, answer.editions().get(i).year(), wide);
      columns.line(state(cell));
      for (OtherObject other : cell.others()) {
        columns.line(
            Wrap.together(other.locator().toString())
                + " is a different object"
                + Page.given(": ", other.words(), ""));
      }
    }
    concordance(picture);
    cite(picture);
    page.blank();
  }

  private static String state(Cell cell) {
    String places = Wrap.together(locators(cell.locators()));
    String fate =
        switch (cell.state()) {
          case FIRST -> places;
          case KEPT -> places + (cell.as().isPresent() ? "" : " (kept)");
          case RENUMBERED -> places + " (renumbered)";
          case DROPPED -> "dropped";
          case OTHER_OBJECT -> "not this picture";
          case NOT_RECORDED -> "no equivalent recorded";
        };
    String as = cell.as().isPresent() ? " " + Wrap.together("(as " + cell.as().get() + ")") : "";
    String printed =
        cell.printed().isEmpty() ? "" : " “" + String.join("”, “", cell.printed()) + "”";
    return fate + as + printed + Page.given("; ", cell.words(), "");
  }

  private void concordance(Picture picture) {
    if (picture.concordance().size() > 1) {
      page.hanging(INDENT, equation(picture.concordance()));
    }
  }

  private static String equation(List<Side> sides) {
    StringBuilder text = new StringBuilder();
    for (Side side : sides) {
      text.append(text.isEmpty() ? "" : " = ")
          .append(
              Wrap.together(
                  locators(side.locators()) + " (" + String.join(", ", side.years()) + ")"));
    }
    return text.toString();
  }

  private void cite(Picture picture) {
    if (!picture.cite().isEmpty()) {
      page.hanging(INDENT, "Cite " + citations(picture.cite(), ", or ") + ".");
    }
    if (!picture.away().isEmpty()) {
      page.hanging(INDENT, "My copy is away: " + citations(picture.away(), "; ") + ".");
    }
    if (!picture.elsewhere().isEmpty()) {
      page.hanging(INDENT, "Not mine: " + citations(picture.elsewhere(), "; ") + ".");
    }
  }

  private static String citations(List<CiteLine> lines, String between) {
    StringBuilder text = new StringBuilder();
    for (CiteLine line : lines) {
      text.append(text.isEmpty() ? "" : between)
          .append(Wrap.together(line.reference()))
          .append(", ")
          .append(Wrap.together(locators(line.locators())))
          .append(Page.given(" [", line.whereabouts(), "]"));
    }
    return text.toString();
  }

  private void from(EditionGrid answer, From from) {
    String cited = from.edition().map(e -> e + ", ").orElse("") + from.locator();
    if (from.pictures().isEmpty()) {
      page.text(cited + ": no equivalent recorded.");
    }
    for (Picture picture : answer.pictures()) {
      if (from.pictures().contains(picture.id())) {
        page.text(cited + " is the picture " + picture.id() + ".");
        page.blank();
        picture(answer, picture);
      } else if (from.otherObjects().contains(picture.id())) {
        page.text(cited + " is a different object in the place of " + picture.id() + ":");
        page.blank();
        picture(answer, picture);
      }
    }
  }

  private static String locators(List<Locator> locators) {
    StringBuilder text = new StringBuilder();
    for (Locator locator : locators) {
      text.append(text.isEmpty() ? "" : "; ").append(locator);
    }
    return text.toString();
  }
}
