package merese.cli;

import java.util.List;
import merese.answer.concordance.Concordance;

/**
 * A concordance as a page in HTML. The table is turned or parted so that each part has at most
 * {@value #WIDEST} columns, which a sheet of paper holds; the headings stay in sight on a screen
 * and stand again on each sheet.
 */
final class ConcordanceHtml {
  private static final int WIDEST = 6;
  private static final String STYLE =
      """
      body { max-width: 75em; margin: 2em auto; padding: 0 1em; font: 1em/1.45 serif; color: #111;
        background: #fff; }
      h1 { font-size: 1.6em; } h2 { font-size: 1.2em; margin-top: 1.8em; }
      h3 { font-size: 1em; margin: 1.2em 0 0.3em; }
      table { border-collapse: separate; border-spacing: 0; margin: 1.2em 0 2em; width: 100%; }
      th, td { padding: 0.35em 0.7em; text-align: left; vertical-align: top;
        border-bottom: 1px solid #ccc; overflow-wrap: anywhere; }
      thead th { position: sticky; top: 0; background: #f3f1ec; border-bottom: 2px solid #555;
        vertical-align: bottom; z-index: 1; }
      tbody th { font-weight: normal; position: sticky; left: 0; background: #faf9f6;
        min-width: 8em; }
      td div + div { margin-top: 0.4em; } td div.places { margin-top: 0; }
      .places { color: #444; font-size: 0.9em; }
      ul { padding-left: 1.4em; margin: 0.3em 0; }
      @page { size: landscape; margin: 12mm; }
      @media print {
        body { max-width: none; margin: 0; font-size: 9pt; }
        thead { display: table-header-group; }
        thead th, tbody th { position: static; }
        tr, li { break-inside: avoid; } h2, h3 { break-after: avoid; }
      }
      """;

  private final StringBuilder out = new StringBuilder();

  private ConcordanceHtml() {}

  static String of(Concordance answer) {
    String title = "Concordance: " + String.join("; ", answer.asked());
    ConcordanceHtml form = new ConcordanceHtml();
    form.element("h1", title);
    form.element("p", answer.counted());
    if (!answer.rows().isEmpty()) {
      form.element("p", ConcordanceNotes.legend(answer));
      form.tables(ConcordanceTable.of(answer));
    }
    form.blocks(ConcordanceNotes.of(answer));
    return Html.page("en", title, STYLE, form.out.toString());
  }

  private void tables(Grid straight) {
    List<Grid> parts = straight.parts(WIDEST, column -> 1);
    List<Grid> turned = straight.turned(ConcordanceTable.CONCEPTS).parts(WIDEST, column -> 1);
    for (Grid part : turned.size() < parts.size() ? turned : parts) {
      table(part);
    }
  }

  private void table(Grid grid) {
    out.append("<table>\n<thead><tr><th scope=\"col\">").append(grid.corner()).append("</th>");
    grid.columns()
        .forEach(c -> out.append("<th scope=\"col\">").append(Html.escape(c)).append("</th>"));
    out.append("</tr></thead>\n<tbody>\n");
    for (int row = 0; row < grid.rows().size(); row++) {
      out.append("<tr><th scope=\"row\">")
          .append(Html.escape(grid.rows().get(row)))
          .append("</th>");
      grid.cells().get(row).forEach(this::cell);
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table>\n");
  }

  /** A line that begins a term, and the line of its places below it. */
  private void cell(String cell) {
    out.append("<td>");
    if (!cell.isEmpty()) {
      for (String line : cell.split("\n", -1)) {
        boolean term = line.startsWith("“") || line.startsWith("not named");
        out.append(term ? "<div>" : "<div class=\"places\">")
            .append(Html.escape(line))
            .append("</div>");
      }
    }
    out.append("</td>");
  }

  private void blocks(List<Block> blocks) {
    boolean list = false;
    for (Block each : blocks) {
      Block block = each.loose();
      if (list != (block.kind() == Block.Kind.ITEM)) {
        list = !list;
        out.append(list ? "<ul>\n" : "</ul>\n");
      }
      switch (block.kind()) {
        case HEADING -> element("h2", block.text());
        case SUBHEADING -> element("h3", block.text());
        case TEXT -> element("p", block.text());
        case ITEM -> element("li", block.name() + ": " + block.text());
      }
    }
    out.append(list ? "</ul>\n" : "");
  }

  private void element(String name, String text) {
    out.append('<').append(name).append('>').append(Html.escape(text));
    out.append("</").append(name).append(">\n");
  }
}
