package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.FileEdit;
import merese.change.Made;
import merese.desk.web.NotThereException;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.shelf.Watcher;
import merese.store.LibraryException;
import merese.store.Problem;

/**
 * A file of the library as text.
 *
 * <p>The form carries the hash of what it was filled with. Where the file is no longer that,
 * nothing is written: the answer shows what is there now beside what was typed, and carries the new
 * hash, so that whoever sends it again has seen what they replace. Between the comparison and the
 * writing the change set compares once more, under the library's lock.
 */
public final class EditPage implements Page {
  private static final String TEMPLATE = "edit.jte";

  private final Site site;

  public EditPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/edit/{kind}", this::show);
    routes.post("/edit/{kind}", this::save);
    routes.get("/edit/{kind}/<name>", this::show);
    routes.post("/edit/{kind}/<name>", this::save);
  }

  /**
   * The page.
   *
   * @param address of the page itself
   * @param file its path below the library folder
   * @param text what the form holds
   * @param read the hash of what whoever sends the form has seen
   * @param said what was wrong
   * @param wrong problems, a line each
   * @param now the differing lines, where the file has changed meanwhile
   * @param closed why the file cannot be edited here
   */
  public record Model(
      Editable kind,
      String address,
      String name,
      String file,
      String text,
      String read,
      Optional<String> said,
      List<String> wrong,
      Optional<List<LineDifference.Row>> now,
      Optional<String> closed) {
    public boolean isRefused() {
      return said.isPresent();
    }

    /** Where one came from. */
    public String back() {
      return kind == Editable.SOURCE ? "/shelf/" + Site.encoded(name) : kind.tab().address();
    }
  }

  private void show(Context request) {
    Editable kind = kind(request);
    String name = name(request, kind);
    FileEdit edit = edit(kind, name);
    FileText is = FileText.of(edit.content());
    Model model =
        new Model(
            kind,
            kind.address(name),
            name,
            edit.relative(),
            is.text(),
            is.hash(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            is.closed());
    site.show(request, kind.tab(), "Edit " + edit.relative(), TEMPLATE, model);
  }

  private void save(Context request) {
    Editable kind = kind(request);
    String name = name(request, kind);
    FileEdit edit = edit(kind, name);
    FileText is = FileText.of(edit.content());
    String typed = FileText.plain(Optional.ofNullable(request.formParam("text")).orElse(""));
    String read = Optional.ofNullable(request.formParam("read")).orElse("");
    if (is.closed().isPresent()) {
      refuse(request, kind, name, edit, typed, read, is.closed().get(), List.of());
    } else if (!is.hash().equals(read)) {
      overtaken(request, kind, name, edit, typed);
    } else {
      take(request, kind, name, edit, typed);
    }
  }

  private void take(Context request, Editable kind, String name, FileEdit edit, String typed) {
    FileText is = FileText.of(edit.content());
    try {
      Made<List<Problem>> made = edit.make(is.bytes(typed), Watcher.NONE);
      if (made.result().isEmpty()) {
        site.leadOn(request, leadsTo(kind, name), made.change());
        return;
      }
      refuse(
          request,
          kind,
          name,
          edit,
          typed,
          is.hash(),
          "Nothing was saved: with this the library would have "
              + (made.result().size() == 1 ? "an error" : made.result().size() + " errors")
              + " that it has not now.",
          made.result().stream().map(problem -> words(problem, edit)).toList());
    } catch (LibraryException e) {
      if (edit.isOvertaken()) {
        overtaken(request, kind, name, edit(kind, name), typed);
      } else {
        refuse(request, kind, name, edit, typed, is.hash(), e.getMessage(), List.of());
      }
    }
  }

  /** The source's own page, where what was saved still has that source. */
  private String leadsTo(Editable kind, String name) {
    if (kind != Editable.SOURCE) {
      return kind.address(name);
    }
    try {
      FileEdit.among(site.library(), name, kind.files());
      return "/shelf/" + Site.encoded(name);
    } catch (ChangeRefusedException e) {
      return "/shelf";
    }
  }

  private void refuse(
      Context request,
      Editable kind,
      String name,
      FileEdit edit,
      String typed,
      String read,
      String said,
      List<String> wrong) {
    Model model =
        new Model(
            kind,
            kind.address(name),
            name,
            edit.relative(),
            typed,
            read,
            Optional.of(said),
            wrong,
            Optional.empty(),
            FileText.of(edit.content()).closed());
    site.refuse(request, kind.tab(), "Edit " + edit.relative(), TEMPLATE, model);
  }

  private void overtaken(Context request, Editable kind, String name, FileEdit edit, String typed) {
    FileText is = FileText.of(edit.content());
    request.status(HttpStatus.CONFLICT);
    Model model =
        new Model(
            kind,
            kind.address(name),
            name,
            edit.relative(),
            typed,
            is.hash(),
            Optional.of(
                "Nothing was saved: the file has changed since you opened it, in another window,"
                    + " at the terminal or in an editor. What you typed is below, and beside it"
                    + " what is on the disk now. Take over what you want to keep; saving again"
                    + " replaces what is on the disk with your text."),
            List.of(),
            Optional.of(LineDifference.between(is.text(), typed)),
            is.closed());
    site.show(request, kind.tab(), "Edit " + edit.relative(), TEMPLATE, model);
  }

  /** Where the text itself is wrong, without the path that the page says already. */
  private String words(Problem problem, FileEdit edit) {
    List<String> words = new ArrayList<>();
    if (!problem.file().equals(edit.file())) {
      words.add(
          problem.file().startsWith(site.library().path())
              ? site.library().path().relativize(problem.file()).toString()
              : problem.file().toString());
    }
    if (problem.line() > 0) {
      words.add("line " + problem.line() + ", column " + problem.column());
    }
    if (!problem.where().isEmpty()) {
      words.add(problem.where());
    }
    words.add(problem.what() + (problem.remedy().isEmpty() ? "" : "; " + problem.remedy()));
    return String.join(": ", words);
  }

  private FileEdit edit(Editable kind, String name) {
    try {
      return FileEdit.among(site.library(), name, kind.files());
    } catch (ChangeRefusedException e) {
      throw new NotThereException(e.getMessage());
    }
  }

  private static Editable kind(Context request) {
    String code = request.pathParam("kind");
    return Editable.named(code)
        .orElseThrow(() -> new NotThereException("\"" + code + "\" is no sort of file to edit"));
  }

  /** Of what there is one of, the address has no name. */
  private static String name(Context request, Editable kind) {
    if (kind.only().isPresent()) {
      return kind.only().get();
    }
    String name = request.pathParamMap().getOrDefault("name", "");
    if (name.isEmpty()) {
      throw new NotThereException("the address does not say which file to edit");
    }
    return name;
  }
}
