package merese.cli;

import java.util.List;
import merese.answer.concordance.Concordance;

/** Lays a concordance out for a screen of any width. */
final class ConcordanceText {
  private static final String INDENT = "    ";
  private static final int WIDEST_NAME = 26;

  private final Page page;
  private final int width;

  ConcordanceText(Page page, int width) {
    this.page = page;
    this.width = width;
  }

  void print(Concordance answer) {
    page.heading("Concordance: " + String.join("; ", answer.asked()));
    page.text(answer.counted());
    if (!answer.rows().isEmpty()) {
      page.text(ConcordanceNotes.legend(answer));
      table(ConcordanceTable.of(answer));
    }
    page.blank();
    blocks(ConcordanceNotes.of(answer));
  }

  private void table(Grid straight) {
    GridText grid = new GridText(page, width);
    List<Grid> parts = grid.parts(straight);
    if (parts.size() > 1) {
      List<Grid> turned = grid.parts(straight.turned(ConcordanceTable.CONCEPTS));
      boolean turn = turned.size() < parts.size();
      parts = turn ? turned : parts;
      page.text(said(turn, parts.size()));
    }
    for (Grid part : parts) {
      page.blank();
      grid.print(part);
    }
  }

  private String said(boolean turned, int parts) {
    String wide = "Sources by concepts is too wide for " + width + " columns, so the table is ";
    String parted = "parted into " + parts + "; each leaves out the rows that it has nothing for.";
    if (parts == 1) {
      return wide + "turned: concepts by sources.";
    }
    return wide + (turned ? "turned (concepts by sources) and " : "") + parted;
  }

  private void blocks(List<Block> blocks) {
    Block.Kind before = null;
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      switch (block.kind()) {
        case HEADING -> {
          page.blank();
          page.heading(block.text());
        }
        case SUBHEADING -> page.hanging("  ", block.text());
        case TEXT -> {
          if (before != null && before != Block.Kind.HEADING && before != Block.Kind.TEXT) {
            page.blank();
          }
          page.text(block.text());
        }
        case ITEM -> page.columns(INDENT, block.name(), nameWidth(blocks, i)).line(block.text());
      }
      before = block.kind();
    }
  }

  /** The widest name between the headings around an item. */
  private static int nameWidth(List<Block> blocks, int index) {
    int from = index;
    while (from > 0 && blocks.get(from - 1).kind() != Block.Kind.HEADING) {
      from--;
    }
    int widest = 0;
    for (int i = from; i < blocks.size() && blocks.get(i).kind() != Block.Kind.HEADING; i++) {
      int wide = Wrap.columns(blocks.get(i).name());
      widest = wide <= WIDEST_NAME ? Math.max(widest, wide) : widest;
    }
    return widest == 0 ? WIDEST_NAME : widest;
  }
}
