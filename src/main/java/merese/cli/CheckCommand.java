package merese.cli;

import java.util.List;
import merese.change.LibraryCheck;
import merese.change.LibraryCheck.Holdings;
import merese.store.Problem;

/** Reads a whole library and prints everything that is wrong in it. */
final class CheckCommand extends LibraryCommand {
  CheckCommand(Context context) {
    super(
        context,
        "Read every file of the library and say what is wrong, with file, line and column.\n"
            + "Warnings are likely slips; only errors make the command fail.",
        "merese check",
        "merese check --library shelf");
  }

  @Override
  int run() {
    LibraryCheck check = LibraryCheck.of(library());
    for (Problem problem : check.problems()) {
      context().out().println(context().fromHere(problem));
    }
    Page page = new Page(context().out(), context().screen());
    page.text(holdings(check.holdings()) + ": " + found(check) + ".");
    return check.errors() == 0 ? ExitCode.DONE : ExitCode.FAILED;
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
