package merese.desk.note;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.change.LibraryCheck;
import merese.change.checks.Mended;
import merese.change.checks.Mending;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.store.LibraryException;
import merese.store.Problem;
import merese.store.Problem.Severity;

/** What is wrong in the files of the library, and putting right what is safe. */
public final class CheckPage implements Page {
  private static final int MOST_KEPT = 20;
  private static final String TITLE = "Check the library";
  private static final String TEMPLATE = "check.jte";

  private final Site site;

  /** What was put right last, for the page that is led on to; by the number in its address. */
  private final Map<Integer, List<Mended>> putRight = new LinkedHashMap<>();

  private int times;

  public CheckPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/check", this::show);
    routes.post("/check", this::mend);
  }

  /** What is wrong in one file, errors first. */
  public record InFile(String file, List<Problem> problems) {
    public InFile {
      problems = List.copyOf(problems);
    }

    boolean hasError() {
      return problems.stream().anyMatch(p -> p.severity() == Severity.ERROR);
    }
  }

  /**
   * The page.
   *
   * @param files those with an error first
   * @param mended what was just put right; empty where nobody asked for it
   * @param problem what could not be put right
   */
  public record Model(
      LibraryCheck check,
      List<InFile> files,
      Optional<List<Mended>> mended,
      Optional<String> problem) {
    public Model {
      files = List.copyOf(files);
    }

    public String found() {
      int errors = check.errors();
      int warnings = check.warnings();
      String both = errors > 0 && warnings > 0 ? " and " : "";
      return (errors > 0 ? many(errors, "error") : "")
          + both
          + (warnings > 0 ? many(warnings, "warning") : "");
    }

    /** Whether a problem keeps the library from being used as it is. */
    public static boolean isError(Problem problem) {
      return problem.severity() == Severity.ERROR;
    }

    /** What was looked at. */
    public String holdings() {
      LibraryCheck.Holdings held = check.holdings();
      return many(held.works(), "work")
          + ", "
          + many(held.editions(), "edition")
          + ", "
          + many(held.notes(), "note")
          + ", "
          + many(held.concepts(), "concept")
          + " and "
          + many(held.objects(), "object");
    }

    private static String many(int count, String noun) {
      return count + " " + noun + (count == 1 ? "" : "s");
    }
  }

  private void show(Context request) {
    site.lookAgain(); // whoever has just mended a file by hand sees that it is mended
    LibraryCheck check = check();
    if (Site.wantsJson(request)) {
      site.json(request, check);
      return;
    }
    Optional<List<Mended>> mended = Query.text(request, "put-right").flatMap(this::putRight);
    site.show(request, Tab.CHANGES, TITLE, TEMPLATE, model(check, mended, Optional.empty()));
  }

  private static Model model(
      LibraryCheck check, Optional<List<Mended>> mended, Optional<String> problem) {
    Map<String, List<Problem>> byFile = new LinkedHashMap<>();
    for (Problem each : check.problems()) {
      byFile
          .computeIfAbsent(each.file().toString().replace('\\', '/'), f -> new ArrayList<>())
          .add(each);
    }
    List<InFile> files = new ArrayList<>();
    byFile.forEach(
        (file, problems) -> {
          problems.sort(Comparator.comparing(Problem::severity));
          files.add(new InFile(file, problems));
        });
    files.sort(Comparator.comparing(file -> file.hasError() ? 0 : 1));
    return new Model(check, files, mended, problem);
  }

  /** With the files as they are called in the library's own folder. */
  private LibraryCheck check() {
    LibraryCheck check = LibraryCheck.of(site.library());
    List<Problem> problems = new ArrayList<>();
    for (Problem each : check.problems()) {
      problems.add(
          new Problem(
              inLibrary(each.file()),
              each.line(),
              each.column(),
              each.where(),
              each.what(),
              each.remedy(),
              each.severity()));
    }
    return new LibraryCheck(check.holdings(), problems);
  }

  private Path inLibrary(Path file) {
    Path root = site.library().path();
    return file.startsWith(root) ? root.relativize(file) : file;
  }

  private void mend(Context request) {
    Mending.Done done;
    try {
      done = Mending.apply(site.library());
    } catch (LibraryException e) {
      Model model = model(check(), Optional.empty(), Optional.of(e.getMessage()));
      site.refuse(request, Tab.CHANGES, TITLE, TEMPLATE, model);
      return;
    }
    if (Site.wantsJson(request)) {
      site.json(request, done);
      return;
    }
    site.leadOn(request, "/check?put-right=" + keep(done.mended()), done.change());
  }

  private int keep(List<Mended> done) {
    List<Mended> mended = new ArrayList<>();
    for (Mended one : done) {
      mended.add(new Mended(inLibrary(one.file()), one.what()));
    }
    synchronized (putRight) {
      times++;
      putRight.put(times, List.copyOf(mended));
      putRight.remove(times - MOST_KEPT);
      return times;
    }
  }

  private Optional<List<Mended>> putRight(String number) {
    OptionalInt asked = number(number);
    synchronized (putRight) {
      return asked.isEmpty()
          ? Optional.empty()
          : Optional.ofNullable(putRight.get(asked.getAsInt()));
    }
  }

  private static OptionalInt number(String typed) {
    try {
      return OptionalInt.of(Integer.parseInt(typed));
    } catch (NumberFormatException e) {
      return OptionalInt.empty(); // of an address that somebody has altered
    }
  }
}
