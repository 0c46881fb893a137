package merese.desk.note;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.desk.web.DoneWords;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Going;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.store.History;
import merese.store.History.Line;
import merese.store.HistoryEntry;
import merese.store.LibraryException;
import merese.store.Problem;

/** The changes of the library, and taking one back or putting it back, from any page. */
public final class ChangesPage implements Page {
  private static final int ON_A_PAGE = 100;
  private static final int LONGEST_SHOWN = 160;
  private static final String TITLE = "Changes";
  private static final String TEMPLATE = "changes.jte";
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final Site site;

  public ChangesPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/changes", this::show);
    routes.post("/undo", this::undo);
  }

  /**
   * One change.
   *
   * @param at in the time zone of whoever notes, as 2025-03-02 10:00
   * @param undone whether it is taken back
   * @param undoes the number of the change that this one took back
   * @param takesBack what that was
   */
  public record Change(
      int number,
      String at,
      String what,
      List<String> files,
      boolean undone,
      OptionalInt undoes,
      Optional<Line.TakesBack> takesBack) {
    public Change {
      files = List.copyOf(files);
    }

    /** What was done, as far as it can be read at a glance. */
    public String inShort() {
      int end =
          what.offsetByCodePoints(
              0, Math.min(LONGEST_SHOWN, what.codePointCount(0, what.length())));
      return end == what.length() ? what : what.substring(0, end).strip() + "…";
    }

    /** What taking this one back is called. */
    public String button() {
      return DoneWords.button(what);
    }
  }

  /**
   * Some of the changes, the newest first.
   *
   * @param page from 1
   * @param all how many are kept
   */
  public record Changes(List<Change> changes, int page, int pages, int all) {
    public Changes {
      changes = List.copyOf(changes);
    }
  }

  /**
   * The page, with what could not be done.
   *
   * @param hindrances why a change cannot be taken back now, by its number
   * @param damaged changes that cannot be read, a line each
   */
  public record Model(
      Changes answer,
      Map<Integer, String> hindrances,
      List<String> damaged,
      Optional<String> problem) {}

  private Model model(Changes answer, Optional<String> problem) {
    History history = History.of(site.library());
    Set<Integer> shown = new HashSet<>();
    answer.changes().forEach(change -> shown.add(change.number()));
    List<Line> lines =
        history.lines().stream().filter(line -> shown.contains(line.entry().number())).toList();
    List<String> damaged = history.damaged().stream().map(Problem::toString).toList();
    return new Model(answer, history.hindrances(lines), damaged, problem);
  }

  private void show(Context request) {
    Changes answer = changes(Query.text(request, "page").orElse("1"));
    if (Site.wantsJson(request)) {
      site.json(request, answer);
      return;
    }
    site.show(request, Tab.CHANGES, TITLE, TEMPLATE, model(answer, Optional.empty()));
  }

  private Changes changes(String typed) {
    List<Line> lines = History.of(site.library()).lines();
    int pages = Math.max(1, (lines.size() + ON_A_PAGE - 1) / ON_A_PAGE);
    int page = number(typed);
    if (page < 1 || page > pages) {
      throw new FormException("there are pages 1 to " + pages + " of changes, not " + typed);
    }
    int from = (page - 1) * ON_A_PAGE;
    List<Change> changes = new ArrayList<>();
    for (Line line : lines.subList(from, Math.min(lines.size(), from + ON_A_PAGE))) {
      HistoryEntry entry = line.entry();
      changes.add(
          new Change(
              entry.number(),
              TIME.format(entry.at().atZone(site.clock().getZone())),
              entry.what(),
              entry.paths(),
              line.undone(),
              entry.undoes(),
              line.takesBack()));
    }
    return new Changes(changes, page, pages, lines.size());
  }

  private static int number(String typed) {
    try {
      return Integer.parseInt(typed);
    } catch (NumberFormatException e) {
      throw new FormException("\"" + typed + "\" is no number");
    }
  }

  private void undo(Context request) {
    String problem;
    try {
      History history = History.of(site.library());
      boolean redo = Query.field(request, "redo").isPresent();
      Optional<String> number = Query.field(request, "number");
      Optional<HistoryEntry> done =
          redo
              ? history.redo()
              : number.isPresent() ? history.undo(number(number.get())) : history.undo();
      if (done.isPresent()) {
        site.leadOn(request, Going.back(request), undoing(history, done.get().number()));
        return;
      }
      problem = nothing(redo, number);
    } catch (LibraryException | FormException e) {
      problem = e.getMessage();
    }
    Model model = model(changes("1"), Optional.of(problem));
    site.refuse(request, Tab.CHANGES, TITLE, TEMPLATE, model);
  }

  /** The change that took another back, so that it can be taken back in its turn. */
  private static OptionalInt undoing(History history, int number) {
    for (Line line : history.lines()) {
      if (line.entry().undoes().equals(OptionalInt.of(number))) {
        return OptionalInt.of(line.entry().number());
      }
    }
    return OptionalInt.empty();
  }

  private static String nothing(boolean redo, Optional<String> number) {
    if (redo) {
      return "Nothing was taken back since the last change.";
    }
    return number
        .map(n -> "Change " + n + " is taken back already, or is not kept.")
        .orElse("There is no change to take back.");
  }
}
