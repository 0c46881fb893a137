package merese.cli;

import java.util.List;
import merese.answer.json.AnswerJson;
import merese.answer.written.Harmless;
import merese.change.LibraryCheck;
import merese.change.LibraryCheck.Holdings;
import merese.change.checks.Mended;
import merese.change.checks.Mending;
import merese.store.LibraryFolder;
import merese.store.Problem;

/** Reads a whole library and prints everything that is wrong in it. */
final class CheckCommand extends LibraryCommand {
  /** Each file is read twice; fewer are done before anybody would wonder. */
  private static final int WORTH_SHOWING = 1000;

  private final Given<Boolean> fix =
      flag(
          "Put right what is safe, as one change, and say what: what stands there twice word for"
              + " word, and what killed saves have left behind. Terms as printed never change.",
          "--fix");

  private final Given<Boolean> json = flag("Print what is found as JSON.", "--json");

  /** What {@code --fix --json} prints. */
  record Fixed(List<Mended> mended, LibraryCheck check) {
    Fixed {
      mended = List.copyOf(mended);
    }
  }

  CheckCommand(Context context) {
    super(
        context,
        "Read every file of the library and say what is wrong, with file, line and column.\n"
            + "Warnings are likely slips; only errors make the command fail: the exit code is 1"
            + " where there is an error, and 0 for warnings alone.",
        "merese check",
        "merese check --fix",
        "merese check --library shelf");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    List<Mended> mended = fix.isSet() ? fromHere(Mending.apply(library).mended()) : List.of();
    LibraryCheck check =
        fromHere(LibraryCheck.of(library, new ShelfProgress(context(), WORTH_SHOWING)));
    if (json.isSet()) {
      AnswerJson.print(context().out(), fix.isSet() ? new Fixed(mended, check) : check);
    } else {
      print(mended, check);
    }
    return check.errors() == 0 ? ExitCode.DONE : ExitCode.FAILED;
  }

  private void print(List<Mended> mended, LibraryCheck check) {
    for (Mended one : mended) {
      context().out().println("fixed: " + one.file() + ": " + one.what());
    }
    if (fix.isSet() && mended.isEmpty()) {
      context().out().println("There is nothing that could be fixed safely.");
    }
    for (Problem problem : check.problems()) {
      context().out().println(Harmless.words(problem.toString()));
    }
    Page page = new Page(context().out(), context().screen());
    page.text(holdings(check.holdings()) + ": " + found(check) + ".");
  }

  private List<Mended> fromHere(List<Mended> mended) {
    return mended.stream()
        .map(one -> new Mended(context().fromHere(one.file()), one.what()))
        .toList();
  }

  private LibraryCheck fromHere(LibraryCheck check) {
    return new LibraryCheck(
        check.holdings(), check.problems().stream().map(context()::fromHere).toList());
  }

  private static String holdings(Holdings held) {
    return String.join(
            ", ",
            List.of(
                Page.many(held.works(), "work"),
                Page.many(held.editions(), "edition"),
                Page.many(held.notes(), "note"),
                Page.many(held.concepts(), "concept")))
        + " and "
        + Page.many(held.objects(), "object");
  }

  private static String found(LibraryCheck check) {
    int errors = check.errors();
    int warnings = check.warnings();
    if (errors == 0 && warnings == 0) {
      return "nothing wrong found";
    }
    String both = errors > 0 && warnings > 0 ? " and " : "";
    return (errors > 0 ? Page.many(errors, "error") : "")
        + both
        + (warnings > 0 ? Page.many(warnings, "warning") : "");
  }
}
