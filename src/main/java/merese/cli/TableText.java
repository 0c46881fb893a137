package merese.cli;

import java.util.Optional;
import merese.exchange.csv.CsvExplanation;
import merese.exchange.csv.CsvExplanation.Use;

/** Lays out how the columns of a table are read. */
final class TableText {
  private static final int WIDEST = 24;

  private final Page page;

  TableText(Page page) {
    this.page = page;
  }

  /**
   * @param explanation empty for a file without a header row
   */
  void print(String file, Optional<CsvExplanation> explanation) {
    page.blank();
    if (explanation.isEmpty()) {
      page.text(file + ": there is no header row.");
      return;
    }
    page.heading(file + ": columns parted by " + explanation.get().separator());
    int wide = 0;
    for (Use use : explanation.get().columns()) {
      wide = Math.max(wide, Wrap.columns(use.header()));
    }
    for (Use use : explanation.get().columns()) {
      String header = use.header().isEmpty() ? "(none)" : use.header();
      page.columns("  ", header, Math.min(WIDEST, wide))
          .line(
              use.hasHome()
                  ? "→ " + use.field() + " (" + use.why().words() + ")"
                  : use.why().words());
    }
    if (!explanation.get().missing().isEmpty()) {
      page.blank();
      page.hanging("Not in this table: ", String.join(", ", explanation.get().missing()) + ".");
    }
  }
}
