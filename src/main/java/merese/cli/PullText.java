package merese.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import merese.answer.pull.Pull;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.answer.pull.PullWords;

/** Lays out what to take, for a screen of any width. */
final class PullText {
  private static final String INDENT = "    ";
  private static final int WIDEST_MARK = 20;

  private final Page page;

  PullText(PrintWriter out, Screen screen) {
    this.page = new Page(out, screen);
  }

  void print(Pull answer) {
    if (answer.isEmpty()) {
      page.text(PullWords.nothing(answer));
    } else {
      page.heading(PullWords.heading(answer, false));
      for (Item item : answer.inOrder()) {
        needed(item);
      }
      page.blank();
      page.heading(PullWords.heading(answer, true));
      byShelf(answer.byShelf());
      notAtHand(answer.notAtHand());
    }
    uncovered(answer);
    page.blank();
    answer.remarks().forEach(page::text);
    if (!answer.isEmpty()) {
      page.blank();
      page.text(answer.caution());
    }
  }

  private void needed(Item item) {
    page.blank();
    page.hanging("[ ] ", PullWords.name(item));
    page.hanging(INDENT, PullWords.stand(item));
    item.flag().ifPresent(why -> page.hanging(INDENT, "⚠ not on your shelf: " + why));
    PullWords.copy(item).ifPresent(copy -> page.hanging(INDENT, copy));
    for (Opening opening : item.openings()) {
      String place = PullWords.place(opening);
      Optional<String> slip = PullWords.slip(opening);
      String lead = INDENT + PullWords.numbers(opening.needs()) + "  ";
      String under = " ".repeat(Wrap.columns(lead));
      page.hanging(lead, place.isEmpty() ? "show it" : place);
      if (slip.isPresent()) {
        page.hanging(under, slip.get());
      }
      for (String line : PullWords.details(opening)) {
        page.hanging(under, line);
      }
      page.hanging(under, PullWords.say(opening));
      if (item.flag().isPresent()) {
        page.hanging(under, "⚠ " + PullWords.instead(opening));
      }
    }
  }

  private void byShelf(List<Item> items) {
    int wide = 0;
    for (Item item : items) {
      wide = item.stand().online() ? wide : Math.max(wide, Wrap.columns(PullWords.mark(item)));
    }
    String under = "";
    for (Item item : items) {
      if (!PullWords.place(item).equals(under)) {
        under = PullWords.place(item);
        page.blank();
        page.text(under);
      }
      standing(item, Math.min(wide, WIDEST_MARK));
    }
  }

  private void standing(Item item, int wide) {
    boolean online = item.stand().online();
    Page.Columns columns = page.columns("[ ] ", online ? "online" : PullWords.mark(item), wide);
    columns.line(PullWords.name(item));
    if (online) {
      columns.line(PullWords.mark(item));
    }
    item.flag().ifPresent(why -> columns.line("⚠ not on your shelf: " + why));
    PullWords.copy(item).ifPresent(columns::line);
    for (PullWords.Slip slip : PullWords.slips(item)) {
      columns.line(slip.what() + " " + Wrap.together("(" + slip.numbered() + ")"));
    }
  }

  private void notAtHand(List<Item> items) {
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Not to be had");
    for (Item item : items) {
      page.hanging(INDENT, PullWords.name(item) + ": " + item.flag().orElseThrow());
      for (Opening opening : item.openings()) {
        page.hanging(
            INDENT + "  ", PullWords.numbered(opening.needs()) + ", " + PullWords.instead(opening));
      }
    }
  }

  private void uncovered(Pull answer) {
    if (!answer.uncovered().isEmpty() && !answer.isEmpty()) {
      page.blank();
      page.text("No source covers: " + String.join("; ", answer.uncovered()) + ".");
    }
  }
}
