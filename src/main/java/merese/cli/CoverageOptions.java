package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.CoverageQuestion;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.CoverageQuestion.Years;
import merese.model.SourceKind;

/** The options by which a question about a feature is put and narrowed. */
final class CoverageOptions {
  private final Given<String> concept;
  private final Given<String> facet;
  private final Given<Boolean> pictured;
  private final Given<Boolean> owned;
  private final Given<String> kinds;
  private final Given<String> years;
  private final Given<String> place;

  CoverageOptions(Command command) {
    concept = command.option(String.class, "ID", "Ask for one meaning by its id.", "--concept");
    facet =
        command.option(
            String.class, "FACET", "Where a noun is left out: bladed --facet ring.", "--facet");
    pictured = command.flag("Only sources that picture it; the others stand apart.", "--pictured");
    owned = command.flag("Only sources of which you have a copy.", "--owned");
    kinds =
        command.option(
            String.class,
            "KIND",
            "Only these kinds of source, with commas between: monograph,thesis.",
            "--kind");
    years =
        command.option(
            String.class, "YEARS", "Only editions of 1926, 1900..1950 or ..1950.", "--year");
    place =
        command.option(
            String.class,
            "PLACE",
            "Only sources that claim it for this place; silent ones stand apart.",
            "--place");
  }

  CoverageQuestion question(List<String> words) {
    String phrase = String.join(" ", words).strip();
    if (phrase.isEmpty() && concept.value().isEmpty()) {
      throw CommandException.wrongUse("name a term, or a concept with --concept ID");
    }
    return new CoverageQuestion(
        phrase.isEmpty() ? Optional.empty() : Optional.of(phrase),
        concept.value(),
        facet.value(),
        narrowing(),
        CoverageQuestion.Showing.ALL);
  }

  boolean namesConcept() {
    return concept.value().isPresent();
  }

  Narrowing narrowing() {
    return new Narrowing(
        pictured.isSet(),
        owned.isSet(),
        kinds.value().isPresent() ? kinds(kinds.value().get()) : Set.of(),
        years.value().isPresent() ? Optional.of(years(years.value().get())) : Optional.empty(),
        place.value());
  }

  private static Set<SourceKind> kinds(String text) {
    Set<SourceKind> kinds = new LinkedHashSet<>();
    for (String code : text.split(",")) {
      kinds.add(kind(code.strip()));
    }
    return kinds;
  }

  private static SourceKind kind(String code) {
    List<String> codes = new ArrayList<>();
    for (SourceKind kind : SourceKind.values()) {
      if (kind.code().equals(code)) {
        return kind;
      }
      codes.add(kind.code());
    }
    throw CommandException.wrongUse(
        "--kind: there is no kind \"" + code + "\"; the kinds are " + String.join(", ", codes));
  }

  private static Years years(String text) {
    int dots = text.indexOf("..");
    if (dots < 0) {
      OptionalInt year = year(text, text);
      return new Years(year, year);
    }
    OptionalInt from = year(text.substring(0, dots), text);
    OptionalInt to = year(text.substring(dots + 2), text);
    if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
      throw CommandException.wrongUse("--year: " + text + " runs backwards");
    }
    return new Years(from, to);
  }

  private static OptionalInt year(String part, String whole) {
    boolean open = part.isBlank() && whole.length() > 2;
    if (open) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(Integer.parseInt(part.strip()));
    } catch (NumberFormatException e) {
      throw CommandException.wrongUse(
          "--year: \"" + whole + "\" is no year or span; write 1926, 1900..1950, ..1950 or 1900..");
    }
  }
}
