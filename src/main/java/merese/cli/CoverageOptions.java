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
import picocli.CommandLine.Option;

/** The options by which a question about a feature is put and narrowed. */
final class CoverageOptions {
  @Option(
      names = "--concept",
      paramLabel = "ID",
      order = 1,
      description = "Ask for one meaning by its id.")
  private String concept;

  @Option(
      names = "--facet",
      paramLabel = "FACET",
      order = 2,
      description = "The facet that a noun left out is of: bladed --facet ring.")
  private String facet;

  @Option(
      names = "--pictured",
      order = 3,
      description = "Only sources that picture it; the others are listed apart.")
  private boolean pictured;

  @Option(names = "--owned", order = 4, description = "Only sources of which you have a copy.")
  private boolean owned;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      split = ",",
      order = 5,
      description = "Only these kinds of source: monograph, sale-catalogue ...")
  private List<String> kinds = new ArrayList<>();

  @Option(
      names = "--year",
      paramLabel = "YEARS",
      order = 6,
      description = "Only editions of these years: 1926, 1900..1950, ..1950.")
  private String years;

  @Option(
      names = "--place",
      paramLabel = "PLACE",
      order = 7,
      description = "Only sources that claim it for this place; silent ones apart.")
  private String place;

  CoverageQuestion question(List<String> words) {
    String phrase = String.join(" ", words).strip();
    if (phrase.isEmpty() && concept == null) {
      throw new CommandException("name a term, or a concept with --concept ID");
    }
    return new CoverageQuestion(
        phrase.isEmpty() ? Optional.empty() : Optional.of(phrase),
        Optional.ofNullable(concept),
        Optional.ofNullable(facet),
        narrowing());
  }

  Narrowing narrowing() {
    Set<SourceKind> wanted = new LinkedHashSet<>();
    for (String kind : kinds) {
      wanted.add(kind(kind.strip()));
    }
    return new Narrowing(
        pictured,
        owned,
        wanted,
        Optional.ofNullable(years).map(CoverageOptions::years),
        Optional.ofNullable(place));
  }

  private static SourceKind kind(String code) {
    List<String> codes = new ArrayList<>();
    for (SourceKind kind : SourceKind.values()) {
      if (kind.code().equals(code)) {
        return kind;
      }
      codes.add(kind.code());
    }
    throw new CommandException(
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
      throw new CommandException("--year: " + text + " runs backwards");
    }
    return new Years(from, to);
  }

  private static OptionalInt year(String part, String whole) {
    if (part.isBlank() && !whole.equals("..")) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(Integer.parseInt(part.strip()));
    } catch (NumberFormatException e) {
      throw new CommandException(
          "--year: \"" + whole + "\" is no year or span; write 1926, 1900..1950, ..1950 or 1900..");
    }
  }
}
