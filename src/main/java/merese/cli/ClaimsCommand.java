package merese.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.CoverageQuestion.Years;
import merese.answer.claims.Claims;
import merese.answer.claims.ClaimsAnswer;
import merese.answer.claims.ClaimsQuestion;
import merese.answer.json.AnswerJson;
import merese.model.Claim;
import merese.shelf.Shelf;
import merese.time.DateProfile;

/** Who claims what of a feature: dates, places, makers, methods, frequency. */
final class ClaimsCommand extends LibraryCommand {
  private final Given<List<String>> terms =
      optionalWords("TERM", "The features, each a term: words of one term in quotation marks.");

  private final Given<String> facet =
      option(String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
  private final Given<String> kinds =
      option(
          String.class,
          "KIND",
          "Only these kinds of claim, with commas between: date,place,maker,method,frequency.",
          "--kind");
  private final Given<String> year =
      option(
          String.class,
          "YEAR",
          "Sort the dates by whether they are of 1795, 1790..1800 or ..1800.",
          "--year");
  private final Given<String> place =
      option(String.class, "PLACE", "Sort the places by whether they are this one.", "--place");
  private final Given<Boolean> timeline = flag("Draw the dates as bars.", "--timeline");
  private final Given<Boolean> svg = flag("Draw them as a picture in SVG.", "--svg");
  private final Given<Path> file =
      option(Path.class, "FILE", "Write the picture to a file that is not there yet.", "--out");
  private final Given<Boolean> profile =
      flag("Show by which rules dates in words become years.", "--profile");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  ClaimsCommand(Context context) {
    super(
        context,
        "Say who claims which date, place, maker, method or frequency, one row a claim.\n"
            + "Years that are computed from words are marked; nothing is averaged.",
        "merese claims \"target stopper\" --year 1795",
        "merese claims \"bladed ring\" --place Ireland",
        "merese claims \"opaque twist\" --svg --out twists.svg",
        "merese claims --profile");
  }

  @Override
  int run() throws IOException {
    List<String> named = terms.value().orElse(List.of());
    if (named.isEmpty() && !profile.isSet()) {
      throw CommandException.wrongUse("name a term, or see the rules for dates with --profile");
    } else if (file.value().isPresent() && !svg.isSet()) {
      throw CommandException.wrongUse("--out goes with --svg");
    }
    if (named.isEmpty()) {
      return showProfile();
    }
    ClaimsQuestion question =
        new ClaimsQuestion(
            named,
            facet.value(),
            kindsWanted(),
            yearsAsked(),
            place.value().filter(p -> !p.isBlank()));
    try (Shelf shelf = openShelf()) {
      ClaimsAnswer answer = Claims.answer(shelf, question);
      print(answer, question);
      return answer.isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }
  }

  private void print(ClaimsAnswer answer, ClaimsQuestion question) throws IOException {
    if (json.isSet()) {
      AnswerJson.print(context().out(), answer);
    } else if (svg.isSet()) {
      picture(TimelineSvg.of(answer));
    } else {
      Page page = new Page(context().out(), context().screen());
      if (timeline.isSet()) {
        new TimelineText(page, context().screen().width()).print(answer);
      } else {
        new ClaimsText(page, question).print(answer);
      }
      if (profile.isSet()) {
        new DateProfileText(page).print(answer.profile());
      }
    }
  }

  private int showProfile() {
    try (Shelf shelf = openShelf()) {
      DateProfile rules = Claims.profile(shelf);
      if (json.isSet()) {
        AnswerJson.print(context().out(), rules);
      } else {
        new DateProfileText(new Page(context().out(), context().screen())).print(rules);
      }
    }
    return ExitCode.DONE;
  }

  private void picture(String drawn) throws IOException {
    if (file.value().isEmpty()) {
      context().out().print(drawn);
      return;
    }
    Path target = context().resolve(file.value().get());
    Path folder = target.getParent();
    if (Files.exists(target)) {
      throw new CommandException("--out: " + target + " is there already; name another file");
    } else if (folder != null && !Files.isDirectory(folder)) {
      throw new CommandException(
          "--out: there is no folder " + folder + " to write " + target.getFileName() + " in");
    }
    Files.writeString(target, drawn, StandardCharsets.UTF_8);
    ErrorLines.print(context(), "Wrote " + target + ".");
  }

  private Set<Claim.Kind> kindsWanted() {
    Set<Claim.Kind> wanted = new LinkedHashSet<>();
    if (kinds.value().isPresent()) {
      for (String code : kinds.value().get().split(",")) {
        wanted.add(kind(code.strip()));
      }
    }
    return wanted;
  }

  private static Claim.Kind kind(String code) {
    List<String> codes = new ArrayList<>();
    for (Claim.Kind kind : Claim.Kind.values()) {
      if (kind.code().equals(code)) {
        return kind;
      }
      codes.add(kind.code());
    }
    throw CommandException.wrongUse(
        "--kind: there is no kind of claim \""
            + code
            + "\"; the kinds are "
            + String.join(", ", codes));
  }

  private Optional<Years> yearsAsked() {
    try {
      return year.value().map(Years::read);
    } catch (IllegalArgumentException e) {
      throw CommandException.wrongUse("--year: " + e.getMessage());
    }
  }
}
