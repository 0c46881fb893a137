package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsAnswer.Bar;
import merese.answer.claims.ClaimsAnswer.Group;
import merese.answer.claims.ClaimsAnswer.OfKind;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Section;
import merese.model.Claim;

/** Draws dates as bars of characters: one bar a claim, below its words. */
final class TimelineText {
  private static final char CORE = '█';
  private static final char OUTER = '░';
  private static final int TICK = 7;

  private final Page page;
  private final int width;

  TimelineText(Page page, int screen) {
    this.page = page;
    this.width = Math.min(screen, 100);
  }

  void print(ClaimsAnswer answer) {
    for (Section section : answer.sections()) {
      section(section);
    }
  }

  private void section(Section section) {
    page.blank();
    page.heading("Timeline: " + section.heading().label());
    if (section.timeline().isEmpty()) {
      page.text("No claim about it has a date that can be drawn.");
    } else {
      bars(section.timeline());
    }
    page.blank();
    left(section);
  }

  private void bars(List<Bar> bars) {
    TimelineScale scale = TimelineScale.of(bars);
    page.text(CORE + " plain reading, " + OUTER + " outer years, ◄ ► no end, ? end unknown");
    page.blank();
    for (Bar bar : bars) {
      page.text(label(bar.row()));
      page.text(Wrap.together(line(bar, scale)));
    }
    page.text(Wrap.together(axis(scale)));
  }

  static String label(Row row) {
    return ClaimRows.brief(row)
        + (row.about() == Claim.About.OBJECT ? " (one object)" : "")
        + (row.narrower() ? " (narrower: " + row.concept().label() + ")" : "");
  }

  private String line(Bar bar, TimelineScale scale) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < width; column++) {
      double start = scale.from() + (double) column * (scale.to() - scale.from()) / width;
      double end = scale.from() + (column + 1.0) * (scale.to() - scale.from()) / width;
      boolean core = meets(bar.core().from(), bar.core().to(), start, end);
      boolean outer = meets(bar.outer().from(), bar.outer().to(), start, end);
      line.append(core ? CORE : outer ? OUTER : ' ');
    }
    if (bar.outer().from().isEmpty()) {
      line.setCharAt(0, bar.outer().openStart() ? '◄' : '?');
    }
    if (bar.outer().to().isEmpty()) {
      line.setCharAt(width - 1, bar.outer().openEnd() ? '►' : '?');
    }
    return line.toString().stripTrailing();
  }

  private static boolean meets(OptionalInt from, OptionalInt to, double start, double end) {
    return (from.isEmpty() || from.getAsInt() < end) && (to.isEmpty() || to.getAsInt() + 1 > start);
  }

  private String axis(TimelineScale scale) {
    StringBuilder axis = new StringBuilder();
    for (int year : scale.ticks(width / TICK)) {
      int column = (int) scale.at(year, width);
      String mark = "|" + year;
      if (column >= axis.length() && column + mark.length() <= width) {
        axis.append(" ".repeat(column - axis.length())).append(mark);
      }
    }
    return axis.toString();
  }

  /** What is not drawn, and why. */
  private void left(Section section) {
    List<String> unread = new ArrayList<>();
    for (OfKind kind : section.kinds()) {
      for (Group group : kind.groups()) {
        for (Row row : group.rows()) {
          if (row.date().isPresent() && !row.date().get().isRead()) {
            unread.add(ClaimRows.brief(row));
          }
        }
      }
    }
    if (!unread.isEmpty()) {
      page.hanging("", "Not read, so not drawn: " + String.join("; ", unread));
    }
    if (!section.copies().isEmpty()) {
      List<String> copies = new ArrayList<>();
      for (Row row : section.copies()) {
        copies.add(ClaimRows.brief(row));
      }
      page.hanging("", "Copies are not drawn: " + String.join("; ", copies));
    }
  }
}
