package merese.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import merese.answer.pull.Pull;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;

/** Lays out what to take, for a screen of any width. */
final class PullText {
  private static final String INDENT = "    ";

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
      for (Item item : answer.byShelf()) {
        standing(item);
      }
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
    flags(item);
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

  private void standing(Item item) {
    page.hanging("[ ] ", PullWords.stand(item) + "  " + PullWords.name(item));
    flags(item);
    for (Opening opening : item.openings()) {
      String what =
          PullWords.slip(opening)
              .or(opening::pointAt)
              .orElse(item.piece().isPresent() ? "the piece" : "the book as a whole");
      page.hanging(INDENT, what + "  (no. " + PullWords.numbers(opening.needs()) + ")");
    }
  }

  private void flags(Item item) {
    item.flag().ifPresent(why -> page.hanging(INDENT, "⚠ not on your shelf: " + why));
    item.remark().ifPresent(remark -> page.hanging(INDENT, remark));
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
            INDENT + "  ",
            "no. " + PullWords.numbers(opening.needs()) + ", " + PullWords.instead(opening));
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
