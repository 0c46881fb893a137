package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
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
final class CheckLog {
  private final SourceLines lines;
  private final Thesaurus thesaurus;
  private final Collection<String> concepts;
  private final Narrowing narrowing;
  private final Map<Source, List<Check>> bySource = new LinkedHashMap<>();

  private CheckLog(
      SourceLines lines, Thesaurus thesaurus, Collection<String> concepts, Narrowing narrowing) {
    this.lines = lines;
    this.thesaurus = thesaurus;
    this.concepts = concepts;
    this.narrowing = narrowing;
  }

  static CheckLog of(
      Shelf shelf, SourceLines lines, Collection<String> concepts, Narrowing narrowing) {
    CheckLog log = new CheckLog(lines, shelf.thesaurus(), concepts, narrowing);
    Set<String> families = new LinkedHashSet<>(concepts);
    concepts.forEach(id -> families.addAll(shelf.thesaurus().broader(id)));
    for (SourcedCheck sourced : shelf.checks(families)) {
      log.bySource.computeIfAbsent(sourced.source(), s -> new ArrayList<>()).add(sourced.check());
    }
    return log;
  }

  List<Checked> checked(List<Source> silent) {
    List<Checked> checked = new ArrayList<>();
    for (Source source : silent) {
      List<CheckLine> within =
          checks(source).stream().filter(this::reaches).map(CheckLog::line).toList();
      if (!within.isEmpty()) {
        checked.add(new Checked(lines.of(source), within));
      }
    }
    return checked;
  }

  List<NotChecked> notChecked(List<Source> silent) {
    List<NotChecked> notChecked = new ArrayList<>();
    for (Source source : silent) {
      if (checks(source).stream().noneMatch(this::reaches)) {
        notChecked.add(new NotChecked(lines.of(source), remark(source)));
      }
    }
    return notChecked;
  }

  private Optional<String> remark(Source source) {
    for (Check check : checks(source)) {
      return Optional.of("looked through (" + check.scope().get().words() + ")");
    }
    return source
        .edition()
        .scope()
        .filter(this::liesOutside)
        .map(scope -> "out of its scope (" + scope.words() + ")");
  }

  private List<Check> checks(Source source) {
    return bySource.getOrDefault(source, List.of());
  }

  private boolean reaches(Check check) {
    return check.scope().isEmpty() || !liesOutside(check.scope().get());
  }

  /** Whether the question is about something that the scope shuts out. */
  private boolean liesOutside(Scope scope) {
    boolean otherConcept =
        !scope.concepts().isEmpty()
            && concepts.stream()
                .noneMatch(
                    asked ->
                        scope.concepts().stream()
                            .anyMatch(limit -> thesaurus.areRelatedByHierarchy(limit, asked)));
    boolean otherPlace =
        narrowing.place().isPresent()
            && !scope.places().isEmpty()
            && scope.places().stream()
                .noneMatch(p -> Folding.key(p).equals(Folding.key(narrowing.place().get())));
    return otherConcept || otherPlace;
  }

  private static CheckLine line(Check check) {
    return new CheckLine(
        check.extent(),
        check.method().words(),
        words(check.result()),
        check.scope().map(Scope::words));
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
