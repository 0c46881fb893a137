package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsAnswer.Bar;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Section;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.model.Claim;

/**
 * Draws dates as a picture in SVG 1.1 that loads nothing from elsewhere: one bar a claim, the plain
 * reading solid, the outer years light, an open end as an arrow.
 */
final class TimelineSvg {
  private static final int WIDTH = 960;
  private static final int LABELS = 350;
  private static final int MARGIN = 24;
  private static final int LINE = 17;
  private static final int LETTERS = 48;
  private static final int ARROW = 9;
  private static final String DARK = "#1f3d5c";
  private static final String LIGHT = "#a9bfd6";
  private static final String OBJECT = "#6b5b2e";
  private static final String OBJECT_LIGHT = "#d9cfae";

  private final StringBuilder body = new StringBuilder();
  private int y = MARGIN;

  private TimelineSvg() {}

  static String of(ClaimsAnswer answer) {
    TimelineSvg drawing = new TimelineSvg();
    List<String> labels = new ArrayList<>();
    for (Section section : answer.sections()) {
      drawing.section(section);
      labels.add(section.heading().label());
    }
    return drawing.whole("Dates claimed for " + String.join(", ", labels));
  }

  private String whole(String title) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + WIDTH
        + "\" height=\""
        + y
        + "\" viewBox=\"0 0 "
        + WIDTH
        + " "
        + y
        + "\" role=\"img\" aria-labelledby=\"title description\" font-family=\"sans-serif\""
        + " font-size=\"13\">\n<title id=\"title\">"
        + escape(title)
        + "</title>\n<desc id=\"description\">One bar a claim: solid for the plain reading, light"
        + " for the outer years, an arrow where there is no end. Nothing is averaged.</desc>\n"
        + "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n"
        + body
        + "</svg>\n";
  }

  private void section(Section section) {
    y += 10;
    text(MARGIN, y, "Dates claimed: " + section.heading().label(), " font-size=\"18\"");
    y += 24;
    if (section.timeline().isEmpty()) {
      text(MARGIN, y, "No claim about it has a date that can be drawn.", "");
      y += MARGIN;
      return;
    }
    legend(section);
    TimelineScale scale = TimelineScale.of(section.timeline());
    int top = y;
    int marks = body.length();
    for (Bar bar : section.timeline()) {
      bar(bar, scale);
    }
    StringBuilder grid = new StringBuilder();
    for (int year : scale.ticks(8)) {
      int x = x(scale.at(year, length()));
      grid.append("<line x1=\"").append(x).append("\" y1=\"").append(top).append("\" x2=\"");
      grid.append(x).append("\" y2=\"").append(y).append("\" stroke=\"#dddddd\"/>\n");
      text(x, y + 16, String.valueOf(year), " text-anchor=\"middle\" fill=\"#555555\"");
    }
    body.insert(marks, grid);
    y += 30;
    if (!section.copies().isEmpty()) {
      text(
          MARGIN,
          y + 10,
          "Caution: copies are warned of ("
              + Page.many(section.copies().size(), "claim")
              + "); they are not drawn.",
          "");
      y += 24;
    }
    y += MARGIN;
  }

  private void legend(Section section) {
    int x = MARGIN;
    rect(x, y - 10, 24, 12, DARK);
    text(x + 30, y, "plain reading", "");
    rect(x + 130, y - 10, 24, 12, LIGHT);
    text(x + 160, y, "outer years", "");
    boolean objects = false;
    for (Bar bar : section.timeline()) {
      objects |= bar.row().about() == Claim.About.OBJECT;
    }
    if (objects) {
      rect(x + 260, y - 10, 24, 12, OBJECT);
      text(x + 290, y, "one object, not the feature", "");
    }
    y += 22;
  }

  private static int length() {
    return WIDTH - LABELS - 2 * MARGIN;
  }

  private static int x(double along) {
    return (int) Math.round(LABELS + MARGIN + along);
  }

  private void bar(Bar bar, TimelineScale scale) {
    Row row = bar.row();
    List<String> lines =
        new ArrayList<>(
            Wrap.lines(row.source().reference() + ", " + ClaimRows.places(row), LETTERS, "", ""));
    int named = lines.size();
    lines.addAll(Wrap.lines(words(row), LETTERS, "", ""));
    int height = lines.size() * LINE + 10;
    boolean object = row.about() == Claim.About.OBJECT;
    int middle = y + height / 2;
    span(bar.outer(), scale, middle, object ? OBJECT_LIGHT : LIGHT);
    span(bar.core(), scale, middle, object ? OBJECT : DARK);
    for (int i = 0; i < lines.size(); i++) {
      String style = i < named ? " font-weight=\"bold\"" : "";
      text(MARGIN, y + 13 + i * LINE, lines.get(i), style);
    }
    y += height;
  }

  private static String words(Row row) {
    return "“"
        + row.words()
        + "”"
        + Page.given(" [", row.bracket(), "]")
        + (row.narrower() ? " (narrower: " + row.concept().label() + ")" : "");
  }

  private void span(YearSpan span, TimelineScale scale, int middle, String colour) {
    int from = x(span.from().isPresent() ? scale.at(span.from().getAsInt(), length()) : 0);
    int to = x(span.to().isPresent() ? scale.at(span.to().getAsInt() + 1, length()) : length());
    int start = span.openStart() ? from + ARROW : from;
    int end = span.openEnd() ? to - ARROW : to;
    rect(start, middle - 6, Math.max(2, end - start), 12, colour);
    if (span.openStart()) {
      arrow(from, start, middle, colour);
    }
    if (span.openEnd()) {
      arrow(to, end, middle, colour);
    }
    if (span.from().isEmpty() && !span.openStart()) {
      text(from - 10, middle + 5, "?", "");
    }
    if (span.to().isEmpty() && !span.openEnd()) {
      text(to + 3, middle + 5, "?", "");
    }
  }

  private void arrow(int tip, int base, int middle, String colour) {
    body.append("<polygon points=\"").append(tip).append(',').append(middle).append(' ');
    body.append(base).append(',').append(middle - 10).append(' ');
    body.append(base).append(',').append(middle + 10);
    body.append("\" fill=\"").append(colour).append("\"/>\n");
  }

  private void rect(int x, int top, int wide, int high, String colour) {
    body.append("<rect x=\"").append(x).append("\" y=\"").append(top).append("\" width=\"");
    body.append(wide).append("\" height=\"").append(high).append("\" fill=\"").append(colour);
    body.append("\"/>\n");
  }

  private void text(int x, int base, String text, String style) {
    body.append("<text x=\"").append(x).append("\" y=\"").append(base).append('"');
    body.append(style).append('>').append(escape(text)).append("</text>\n");
  }

  /** Without what XML 1.0 can't hold. */
  private static String escape(String text) {
    return Html.escape(Wrap.harmless(text));
  }
}
