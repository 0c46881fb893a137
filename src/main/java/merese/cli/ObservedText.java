package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.identify.Identification;
import merese.answer.identify.Identification.Observed;
import merese.answer.identify.Identification.PartReading;
import merese.answer.identify.Identification.Seen;
import merese.answer.identify.Identification.Unread;

/** Lays out what was observed, and what of it the key could not read. */
final class ObservedText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 18;

  /** More kinds than this that a part fits are counted. */
  private static final int KINDS = 6;

  private final Page page;

  ObservedText(Page page) {
    this.page = page;
  }

  void print(Identification answer) {
    if (!answer.observed().isEmpty()) {
      page.heading("Observed");
      observed(answer.observed());
      page.blank();
    }
    if (!answer.unread().isEmpty()) {
      page.heading("Recorded, and not read by the key");
      for (Unread unread : answer.unread()) {
        page.hanging(INDENT, unread.observation().words() + " (" + unread.why() + ")");
      }
      page.blank();
    }
    if (!answer.parts().isEmpty()) {
      page.heading("Each part by itself");
      answer.parts().forEach(this::part);
      page.blank();
    }
  }

  private void observed(List<Observed> all) {
    int wide = 0;
    for (Observed observed : all) {
      wide = Math.max(wide, Wrap.columns(observed.label()));
    }
    for (Observed observed : all) {
      Page.Columns columns = page.columns(INDENT, observed.label(), Math.min(wide, WIDEST));
      if (observed.mixed()) {
        columns.line("mixed; any of it is enough for a kind to stay:");
      }
      observed.seen().forEach(seen -> columns.line(said(seen)));
    }
  }

  private static String said(Seen seen) {
    String said =
        seen.said()
            + (seen.value().isEmpty() ? ": rules nothing out" : "")
            + Page.given(" (", seen.sense().map(s -> s.code()), ")");
    return said + Page.given(" – “", seen.words(), "”") + Page.given(", photo ", seen.photo(), "");
  }

  private void part(PartReading part) {
    List<String> said = new ArrayList<>();
    for (Observed observed : part.observed()) {
      for (Seen seen : observed.seen()) {
        said.add(observed.label() + ": " + seen.said());
      }
    }
    int first = Math.min(KINDS, part.fits().size());
    String fits =
        part.fits().isEmpty()
            ? "speaks for no kind"
            : "speaks for " + IdentificationText.names(part.fits().subList(0, first));
    int more = part.fits().size() - first;
    page.hanging(
        INDENT,
        part.part()
            + ": "
            + String.join("; ", said)
            + ". It "
            + fits
            + (more > 0 ? " + " + more + " more" : "")
            + (part.ruledOut() > 0 ? ", and against " + Page.many(part.ruledOut(), "kind") : "")
            + ".");
  }
}
