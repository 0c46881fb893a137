package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.Checked;
import merese.answer.Coverage.NotChecked;
import merese.answer.CoverageQuestion.Narrowing;
import merese.model.Check;
import merese.model.Scope;
import merese.search.Census;
import merese.search.SourceSet;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedCheck;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * What the check logs say of sources that have no note: looked through, not looked through, or
 * looked through within a scope that the question lies outside of. Looking for a family counts for
 * all that is narrower.
 */
public final class CheckLog {
  private final Shelf shelf;
  private final SourceLines lines;
  private final Thesaurus thesaurus;
  private final Collection<String> concepts;
  private final Narrowing narrowing;
  private final Map<Source, List<Check>> bySource = new HashMap<>();

  private CheckLog(
      Shelf shelf, SourceLines lines, Collection<String> concepts, Narrowing narrowing) {
    this.shelf = shelf;
    this.lines = lines;
    this.thesaurus = shelf.thesaurus();
    this.concepts = concepts;
    this.narrowing = narrowing;
  }

  public static CheckLog of(
      Shelf shelf, SourceLines lines, Collection<String> concepts, Narrowing narrowing) {
    CheckLog log = new CheckLog(shelf, lines, concepts, narrowing);
    log.read(shelf.checks(log.families()));
    return log;
  }

  /** The same with nothing read. */
  static CheckLog unread(
      Shelf shelf, SourceLines lines, Collection<String> concepts, Narrowing narrowing) {
    return new CheckLog(shelf, lines, concepts, narrowing);
  }

  private void read(List<SourcedCheck> checks) {
    for (SourcedCheck sourced : checks) {
      List<Check> known = bySource.get(sourced.source());
      if (known == null) {
        known = new ArrayList<>();
        bySource.put(sourced.source(), known);
      }
      known.add(sourced.check());
    }
  }

  /** Reads what the logs of some sources say. */
  List<Source> read(SourceSet sources) {
    Census census = shelf.census();
    read(shelf.checks(census.checks(families()).and(census.of(sources))));
    return shelf.sources(sources);
  }

  /** The sources that some check reaches: only checks within a scope are read for it. */
  SourceSet reached() {
    Census census = shelf.census();
    Set<String> reached = new HashSet<>();
    for (SourcedCheck sourced : shelf.checks(census.limitedChecks(families()))) {
      if (reaches(sourced.check())) {
        reached.add(sourced.source().key());
      }
    }
    return census.checkedWithoutLimit(families()).or(census.called(reached));
  }

  /** The concepts and all that is broader. */
  private Set<String> families() {
    Set<String> families = new LinkedHashSet<>(concepts);
    for (String concept : concepts) {
      families.addAll(thesaurus.broader(concept));
    }
    return families;
  }

  public List<Checked> checked(List<Source> silent) {
    List<Checked> checked = new ArrayList<>();
    for (Source source : silent) {
      List<CheckLine> within = new ArrayList<>();
      for (Check check : checks(source)) {
        if (reaches(check)) {
          within.add(line(check));
        }
      }
      if (!within.isEmpty()) {
        checked.add(new Checked(lines.of(source), within));
      }
    }
    return checked;
  }

  public List<NotChecked> notChecked(List<Source> silent) {
    List<NotChecked> notChecked = new ArrayList<>();
    for (Source source : silent) {
      if (!isReached(source)) {
        notChecked.add(new NotChecked(lines.of(source), remark(source)));
      }
    }
    return notChecked;
  }

  /** The checks of a source that the question is not out of scope of. */
  public List<Check> reaching(Source source) {
    List<Check> reaching = new ArrayList<>();
    for (Check check : checks(source)) {
      if (reaches(check)) {
        reaching.add(check);
      }
    }
    return reaching;
  }

  private boolean isReached(Source source) {
    for (Check check : checks(source)) {
      if (reaches(check)) {
        return true;
      }
    }
    return false;
  }

  /** Why a source that no check reaches may not be worth one: what it or a check is limited to. */
  public Optional<String> remark(Source source) {
    for (Check check : checks(source)) {
      if (check.scope().isPresent()) {
        return Optional.of("looked through (" + check.scope().get().words() + ")");
      }
    }
    Optional<Scope> scope = source.scope();
    return scope.isPresent() && liesOutside(scope.get())
        ? Optional.of("out of its scope (" + scope.get().words() + ")")
        : Optional.empty();
  }

  private List<Check> checks(Source source) {
    List<Check> known = bySource.get(source);
    return known == null ? List.of() : known;
  }

  private boolean reaches(Check check) {
    return check.scope().isEmpty() || !liesOutside(check.scope().get());
  }

  /** Whether the question is about something that the scope shuts out. */
  private boolean liesOutside(Scope scope) {
    return !scope.concepts().isEmpty() && !takesInAConcept(scope)
        || !scope.places().isEmpty() && narrowing.place().isPresent() && !takesInThePlace(scope);
  }

  private boolean takesInAConcept(Scope scope) {
    for (String asked : concepts) {
      for (String limit : scope.concepts()) {
        if (thesaurus.areRelatedByHierarchy(limit, asked)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean takesInThePlace(Scope scope) {
    String asked = Folding.key(narrowing.place().get());
    for (String limit : scope.places()) {
      if (Folding.key(limit).equals(asked)) {
        return true;
      }
    }
    return false;
  }

  /** A check in the words of an answer. */
  public static CheckLine line(Check check) {
    return new CheckLine(
        check.extent(),
        check.method().words(),
        words(check.result()),
        check.scope().isPresent() ? Optional.of(check.scope().get().words()) : Optional.empty());
  }

  private static String words(Check.Result result) {
    return switch (result) {
      case FOUND -> "found, not yet noted";
      case NONE -> "nothing found";
      case NOT_IN_LIST -> "not in its list";
      case NO_LIST -> "has no list";
    };
  }
}
