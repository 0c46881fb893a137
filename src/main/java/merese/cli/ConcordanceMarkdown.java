package merese.cli;

import java.util.List;
import merese.answer.concordance.Concordance;

/** A concordance as Markdown, its table with the bars that most readers know. */
final class ConcordanceMarkdown {
  private final StringBuilder out = new StringBuilder();

  private ConcordanceMarkdown() {}

  static String of(Concordance answer) {
    ConcordanceMarkdown form = new ConcordanceMarkdown();
    form.out
        .append("# Concordance: ")
        .append(text(String.join("; ", answer.asked())))
        .append("\n\n");
    form.paragraph(answer.counted());
    if (!answer.rows().isEmpty()) {
      form.paragraph(ConcordanceNotes.legend(answer));
      form.table(ConcordanceTable.of(answer));
    }
    form.blocks(ConcordanceNotes.of(answer));
    return form.out.toString().stripTrailing() + "\n";
  }

  private void paragraph(String words) {
    out.append(text(words)).append("\n\n");
  }

  private void table(Grid grid) {
    out.append("| ").append(grid.corner()).append(" |");
    grid.columns().forEach(c -> out.append(' ').append(cell(c)).append(" |"));
    out.append("\n|").append(" --- |".repeat(grid.columns().size() + 1)).append('\n');
    for (int row = 0; row < grid.rows().size(); row++) {
      out.append("| ").append(cell(grid.rows().get(row))).append(" |");
      for (String cell : grid.cells().get(row)) {
        out.append(cell.isEmpty() ? " |" : " " + cell(cell) + " |");
      }
      out.append('\n');
    }
    out.append('\n');
  }

  private void blocks(List<Block> blocks) {
    Block.Kind before = Block.Kind.TEXT;
    for (Block each : blocks) {
      Block block = each.loose();
      if (before == Block.Kind.ITEM && block.kind() != Block.Kind.ITEM) {
        out.append('\n');
      }
      switch (block.kind()) {
        case HEADING -> out.append("## ").append(text(block.text())).append("\n\n");
        case SUBHEADING -> out.append("### ").append(text(block.text())).append("\n\n");
        case TEXT -> paragraph(block.text());
        case ITEM ->
            out.append("- ")
                .append(text(block.name()))
                .append(": ")
                .append(text(block.text()))
                .append('\n');
      }
      before = block.kind();
    }
  }

  private static String cell(String words) {
    return text(words).replace("\n", "<br>");
  }

  /** As it was printed, quotation marks and all, with what Markdown would read made literal. */
  private static String text(String words) {
    StringBuilder escaped = new StringBuilder(words.length() + 16);
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if ("\\`*_[]<>|#&~".indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c);
    }
    return escaped.toString();
  }
}
