package merese.answer.first;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.SourceLines;
import merese.answer.first.FirstUse.Printed;
import merese.answer.first.FirstUse.Use;
import merese.answer.first.FirstUse.Uses;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Edition.Lineage.Form;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Puts those who print a word in order of time. A reprint or facsimile repeats its original and has
 * no date of its own for a word: only what a part by another author adds is of its own year.
 */
final class Dating {
  private final SourceLines lines;
  private final Map<String, Source> byKey = new LinkedHashMap<>();

  Dating(Shelf shelf, SourceLines lines) {
    this.lines = lines;
    for (Source source : shelf.sources()) {
      byKey.put(source.key(), source);
    }
  }

  Uses uses(List<Printing> printings) {
    Map<Source, List<Printing>> bySource = new LinkedHashMap<>();
    for (Printing printing : printings) {
      bySource.computeIfAbsent(printing.source(), s -> new ArrayList<>()).add(printing);
    }
    Set<String> printing = new LinkedHashSet<>();
    bySource.forEach(
        (source, these) -> {
          if (these.stream().anyMatch(p -> !p.isOnlyDenied())) {
            printing.add(source.key());
          }
        });
    Sorted sorted = new Sorted();
    for (Source source : lines.sorted(bySource.keySet())) {
      sort(source, bySource.get(source), printing, sorted);
    }
    return sorted.uses();
  }

  private static final class Sorted {
    private final List<Use> dated = new ArrayList<>();
    private final List<Use> unsettled = new ArrayList<>();
    private final List<Use> undated = new ArrayList<>();
    private final List<Use> repeats = new ArrayList<>();
    private final List<Use> denied = new ArrayList<>();
    private final List<Use> own = new ArrayList<>();

    /** The lists stay in the order of the editions where years are alike. */
    Uses uses() {
      dated.sort((a, b) -> Integer.compare(a.year().getAsInt(), b.year().getAsInt()));
      int first = 0;
      while (first < dated.size() && dated.get(first).year().equals(dated.get(0).year())) {
        first++;
      }
      return new Uses(
          List.copyOf(dated.subList(0, first)),
          List.copyOf(dated.subList(first, dated.size())),
          unsettled,
          undated,
          repeats,
          denied,
          own);
    }
  }

  private void sort(Source source, List<Printing> all, Set<String> printing, Sorted sorted) {
    List<Printing> said = all.stream().filter(p -> !p.isOnlyDenied()).toList();
    if (source.mine()) {
      sorted.own.add(use(source, all, source.year(), false, Optional.empty()));
      return;
    } else if (said.isEmpty()) {
      sorted.denied.add(use(source, all, source.year(), false, Optional.empty()));
      return;
    }
    Optional<Lineage> lineage = source.edition().lineage().filter(Dating::repeats);
    if (lineage.isEmpty()) {
      ofItsOwnYear(source, said, sorted);
      return;
    }
    List<Printing> added = said.stream().filter(p -> isByAnother(p, source)).toList();
    List<Printing> repeated = said.stream().filter(p -> !added.contains(p)).toList();
    if (!added.isEmpty()) {
      ofItsOwnYear(source, added, sorted);
    }
    if (!repeated.isEmpty()) {
      repeated(source, lineage.get(), repeated, printing, sorted);
    }
  }

  private static boolean repeats(Lineage lineage) {
    return lineage.form() == Form.REPRINT || lineage.form() == Form.FACSIMILE;
  }

  private void ofItsOwnYear(Source source, List<Printing> said, Sorted sorted) {
    (source.year().isPresent() ? sorted.dated : sorted.undated)
        .add(use(source, said, source.year(), false, Optional.empty()));
  }

  /** Whether a part has an author who is none of the work's: an introduction, say. */
  private static boolean isByAnother(Printing printing, Source source) {
    Optional<String> part = printing.sourced().note().part();
    for (Edition.Part known : source.edition().parts()) {
      if (part.isPresent() && known.id().equals(part.get()) && !known.authors().isEmpty()) {
        return source.work().makers().stream()
            .noneMatch(maker -> known.authors().contains(maker.name()));
      }
    }
    return false;
  }

  private void repeated(
      Source source, Lineage lineage, List<Printing> said, Set<String> printing, Sorted sorted) {
    Optional<Source> original = original(source);
    if (original.isPresent() && printing.contains(original.get().key())) {
      sorted.repeats.add(
          use(
              source,
              said,
              original.get().year(),
              true,
              Optional.of("repeats " + lines.reference(original.get()))));
      return;
    }
    OptionalInt year =
        original.isPresent() && original.get().year().isPresent()
            ? original.get().year()
            : lineage.originalYear();
    String why =
        original.isPresent()
            ? lines.reference(original.get()) + " has no note of it"
            : "the original is not in this library";
    String by = "by the " + lineage.form().code() + " (" + why + ")";
    if (lineage.newMatter().isPresent()) {
      String remark = by + ", unless it is in what was added: " + lineage.newMatter().get();
      sorted.unsettled.add(use(source, said, year, true, Optional.of(remark)));
    } else {
      (year.isPresent() ? sorted.dated : sorted.undated)
          .add(use(source, said, year, true, Optional.of(by)));
    }
  }

  /** The edition that is repeated, through reprints of reprints; empty where it is not here. */
  private Optional<Source> original(Source source) {
    Set<String> seen = new LinkedHashSet<>();
    Source at = source;
    while (seen.add(at.key())) {
      Optional<Lineage> lineage = at.edition().lineage().filter(Dating::repeats);
      if (lineage.isEmpty()) {
        return Optional.of(at);
      }
      Optional<String> parent = lineage.get().parent();
      if (parent.isEmpty() || !byKey.containsKey(parent.get())) {
        return Optional.empty();
      }
      at = byKey.get(parent.get());
    }
    return Optional.empty();
  }

  private Use use(
      Source source,
      List<Printing> printings,
      OptionalInt year,
      boolean byReprint,
      Optional<String> remark) {
    Map<String, Set<Locator>> byTerm = new TreeMap<>();
    for (Printing printing : printings) {
      byTerm
          .computeIfAbsent(printing.naming().printed(), t -> new TreeSet<>())
          .addAll(printing.locators());
    }
    List<Printed> terms = new ArrayList<>();
    byTerm.forEach((term, places) -> terms.add(new Printed(term, List.copyOf(places))));
    terms.sort((a, b) -> a.locators().get(0).compareTo(b.locators().get(0)));
    return new Use(lines.of(source), year, byReprint, remark, terms);
  }
}
