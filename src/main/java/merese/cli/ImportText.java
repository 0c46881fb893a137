package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.change.records.Difference;
import merese.change.records.ImportResult;
import merese.change.records.Item;
import merese.change.records.Item.Again;
import merese.change.records.Item.New;
import merese.change.records.Item.Proposal;
import merese.change.records.Item.There;
import merese.exchange.FilePlace;
import merese.exchange.Refused;

/** Lays out what an import does, or would do. */
final class ImportText {
  /** Of each section, where not all is wanted. */
  private static final int SHOWN = 30;

  private static final int WIDEST_KEY = 22;

  private final Page page;
  private final boolean all;
  private final boolean done;

  /**
   * @param all whether long sections are printed to their end
   * @param done whether this has been written
   */
  ImportText(Page page, boolean all, boolean done) {
    this.page = page;
    this.all = all;
    this.done = done;
  }

  void print(ImportResult result) {
    added(result.added());
    changed(result.changed());
    unchanged(result);
    kept(result.kept());
    refused(result.refused());
    page.blank();
  }

  private void added(List<New> items) {
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading((done ? "Added: " : "New: ") + Page.many(items.size(), "source"));
    int wide = wide(items);
    for (New item : shown(items)) {
      Page.Columns columns = page.columns("  ", item.key(), wide);
      columns.line(item.line());
      item.proposal().ifPresent(proposal -> columns.line(proposed(item, proposal)));
      item.again().ifPresent(again -> columns.line(again(item, again)));
      remarks(columns, item);
    }
    rest(items);
    if (items.stream().anyMatch(item -> item.again().isPresent())) {
      page.text("  Doubles can be joined: merese merge --one-edition KEY DOUBLE");
    }
  }

  private static String again(New item, Again again) {
    String place =
        again
            .place()
            .map(p -> p.file().equals(item.place().file()) ? " (" + where(p) + ")" : " (" + p + ")")
            .orElse("");
    return "⚠ perhaps " + again.key() + place + " again: " + String.join(", ", again.why());
  }

  private static String where(FilePlace place) {
    return place.line() > 0 ? "line " + place.line() : "record " + place.record();
  }

  private String proposed(New item, Proposal proposal) {
    String why = " (" + String.join(", ", proposal.why()) + ")";
    return proposal.taken()
        ? "as an edition of " + proposal.work() + ", beside " + proposal.beside() + why
        : "perhaps an edition of "
            + proposal.work()
            + ", beside "
            + proposal.beside()
            + why
            + ": "
            + Wrap.together(
                done
                    ? "merese merge " + proposal.beside() + " " + item.key()
                    : "--join " + item.key());
  }

  private void changed(List<There> items) {
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading(
        (done ? "There before, and added to: " : "There already, with something to add: ")
            + Page.many(items.size(), "source"));
    int wide = wide(items);
    for (There item : shown(items)) {
      Page.Columns columns = page.columns("  ", item.key(), wide);
      columns.line(item.place() + ": " + String.join("; ", item.why()));
      for (Difference difference : item.differences()) {
        columns.line(difference(difference));
      }
      if (item.differences().isEmpty()) {
        columns.line("+ the record itself, as it came");
      }
      remarks(columns, item);
    }
    rest(items);
  }

  private static String difference(Difference difference) {
    String part = difference.part().words() + ": ";
    if (difference.ours().isEmpty()) {
      return "+ " + part + difference.theirs();
    }
    return difference.taken()
        ? "± " + part + difference.ours() + " → " + difference.theirs()
        : "≠ " + part + difference.ours() + " stays; the file has " + difference.theirs();
  }

  private void unchanged(ImportResult result) {
    List<There> items = result.unchanged();
    if (items.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("There already, nothing to add: " + Page.many(items.size(), "source"));
    List<There> telling = items.stream().filter(i -> !i.differences().isEmpty() || all).toList();
    int wide = wide(telling);
    for (There item : shown(telling)) {
      Page.Columns columns = page.columns("  ", item.key(), wide);
      columns.line(item.place() + ": " + String.join("; ", item.why()));
      for (Difference difference : item.differences()) {
        columns.line(difference(difference));
      }
    }
    rest(telling);
  }

  private void kept(int records) {
    if (records > 0) {
      page.blank();
      page.heading("Kept word for word, describing no source: " + Page.many(records, "record"));
    }
  }

  private void refused(List<Refused> records) {
    if (records.isEmpty()) {
      return;
    }
    page.blank();
    page.heading("Not read: " + Page.many(records.size(), "record"));
    for (Refused record : shown(records)) {
      page.hanging("  ", record.toString());
    }
    rest(records);
  }

  private static void remarks(Page.Columns columns, Item item) {
    for (String remark : item.remarks()) {
      columns.line("⚠ " + remark);
    }
  }

  private <T> List<T> shown(List<T> items) {
    return all || items.size() <= SHOWN ? items : items.subList(0, SHOWN);
  }

  private void rest(List<?> items) {
    int more = items.size() - shown(items).size();
    if (more > 0) {
      page.text("  … and " + more + " more; --all prints them");
    }
  }

  private int wide(List<? extends Item> items) {
    int wide = 0;
    for (Item item : shown(new ArrayList<>(items))) {
      wide = Math.max(wide, Wrap.columns(item.key()));
    }
    return Math.min(wide, WIDEST_KEY);
  }
}
