package merese.answer.literature;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Correction;
import merese.answer.Coverage.ConceptLine;
import merese.answer.claims.ClaimsAnswer.Contradiction;
import merese.answer.claims.ClaimsAnswer.PlaceLine;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.PlaceWords;
import merese.answer.literature.Literature.Clause;
import merese.answer.literature.Literature.Saying;
import merese.answer.literature.Literature.Sentence;
import merese.model.Claim;
import merese.model.Locator;

/**
 * Puts claims into one sentence: each with its source and its own words, those that say alike
 * together, and none averaged. A sentence says who gives a piece to a place, never that it is of
 * that place.
 */
final class Sentences {
  private static final List<Claim.Kind> KINDS =
      List.of(Claim.Kind.PLACE, Claim.Kind.MAKER, Claim.Kind.DATE);

  private final Noted noted;

  Sentences(Noted noted) {
    this.noted = noted;
  }

  /**
   * The sentence of some claims.
   *
   * @param start "Of a type"
   * @param contradictions among claims of the concept
   */
  Optional<Sentence> of(
      String start, ConceptLine concept, List<Row> rows, List<Contradiction> contradictions) {
    List<Clause> clauses = new ArrayList<>();
    for (Claim.Kind kind : KINDS) {
      clauses.addAll(clauses(kind, rows));
    }
    if (clauses.isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (Clause clause : clauses) {
      List<String> said = new ArrayList<>();
      clause.sayings().forEach(saying -> said.add(words(saying)));
      words.add(clause.lead() + " by " + listed(said));
    }
    return Optional.of(
        new Sentence(
            concept,
            start + " " + String.join("; ", words) + ".",
            clauses,
            disagreement(contradictions, rows)));
  }

  private List<Clause> clauses(Claim.Kind kind, List<Row> rows) {
    Map<String, List<Saying>> byLead = new LinkedHashMap<>();
    for (Row row : rows) {
      if (row.kind() == kind) {
        byLead.computeIfAbsent(lead(row), l -> new ArrayList<>()).add(saying(row));
      }
    }
    List<Clause> clauses = new ArrayList<>();
    byLead.forEach((lead, sayings) -> clauses.add(new Clause(kind, lead, sayings)));
    return clauses;
  }

  private static String lead(Row row) {
    return switch (row.kind()) {
      case PLACE -> place(row.place().orElseThrow());
      case MAKER -> "given to a maker";
      default ->
          row.date().flatMap(d -> d.dates()).isPresent()
              ? "with a date, not of the making,"
              : "dated";
    };
  }

  private static String place(PlaceLine line) {
    String places = named(line.places());
    String denied = named(line.denied());
    if (line.places().isEmpty()) {
      return denied.isEmpty() ? "placed" : "not given to " + denied;
    }
    String given =
        switch (line.sense()) {
          case ONLY -> "given only to " + places;
          case MAINLY -> "given mainly to " + places;
          case HEDGED -> "given with a hedge to " + places;
          case STYLE -> "given to " + places + " or its style";
          case FOUND -> "said to be found in " + places;
          case PLAIN, DENIED -> "given to " + places;
        };
    return denied.isEmpty() ? given : given + ", not to " + denied + ",";
  }

  private static String named(List<String> places) {
    List<String> names = new ArrayList<>();
    for (String place : places) {
      boolean several = place.endsWith("Isles") || place.endsWith("Netherlands");
      names.add(several ? "the " + place : place);
    }
    return String.join(", ", names);
  }

  /** A claim as one source's saying, with whatever limits it. */
  Saying saying(Row row) {
    List<String> limits = new ArrayList<>();
    String said = row.words().toLowerCase(Locale.ROOT);
    row.hedge()
        .filter(hedge -> !said.contains(hedge.toLowerCase(Locale.ROOT)))
        .ifPresent(hedge -> limits.add("hedge: " + hedge));
    row.bracket().ifPresent(bracket -> limits.add("limited: " + bracket));
    row.date()
        .flatMap(d -> d.dates())
        .ifPresent(what -> limits.add("dates the " + what + ", not the making"));
    if (row.inCaption()) {
      limits.add("in a caption only");
    }
    if (row.place().isPresent()
        && !PlaceWords.places(row.words()).containsAll(row.place().get().places())) {
      limits.add("the place is the note’s, not in these words");
    }
    List<String> others = new ArrayList<>();
    row.alsoOf().forEach(other -> others.add(other.label()));
    if (!others.isEmpty() && row.about() == Claim.About.FEATURE) {
      limits.add("the note is also about: " + String.join(", ", others));
    }
    Set<Locator> places = new LinkedHashSet<>(row.pictured());
    places.addAll(row.inWords());
    List<Correction> corrected = noted.corrections(row.source().key(), row.note());
    return new Saying(
        row.source(), row.note(), List.copyOf(places), row.words(), limits, corrected);
  }

  /** As in: Quenby 1926, p. 41 (“mainly Irish”; limited: before 1800). */
  private static String words(Saying saying) {
    StringBuilder words = new StringBuilder(saying.source().reference());
    for (Locator place : saying.places()) {
      words.append(", ").append(place);
    }
    words.append(" (“").append(saying.words()).append('”');
    for (String limit : saying.limits()) {
      words.append("; ").append(limit);
    }
    return words.append(')').toString();
  }

  private static String listed(List<String> said) {
    int last = said.size() - 1;
    return last == 0
        ? said.get(0)
        : String.join(", ", said.subList(0, last)) + " and " + said.get(last);
  }

  private static Optional<String> disagreement(List<Contradiction> all, List<Row> rows) {
    Set<Claim.Kind> kinds = new LinkedHashSet<>();
    for (Contradiction each : all) {
      boolean here = rows.contains(each.one()) && each.against().stream().anyMatch(rows::contains);
      if (here && KINDS.contains(each.kind())) {
        kinds.add(each.kind());
      }
    }
    List<String> codes = new ArrayList<>();
    kinds.forEach(kind -> codes.add(kind.code()));
    return codes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Its sources contradict each other on the " + String.join(" and the ", codes) + ".");
  }
}
