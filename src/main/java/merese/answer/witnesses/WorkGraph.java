package merese.answer.witnesses;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import merese.answer.witnesses.Dependence.Kind;
import merese.model.Edition.Lineage;
import merese.model.Work;
import merese.model.WorkLink;
import merese.shelf.Source;

/**
 * Which work follows which, by the links of works and by editions whose parent belongs to another
 * work. Citing is not following, and neither is borrowing a picture: the words stay one's own.
 *
 * <p>Only the works that can be come to are read.
 */
final class WorkGraph {
  /** That a work follows another; {@code evidence} as recorded. */
  record Edge(String to, Kind kind, Optional<String> evidence) {}

  private final Map<String, List<Source>> editions = new HashMap<>();
  private final Map<String, Source> byKey = new HashMap<>();
  private final Map<String, List<Edge>> edges = new HashMap<>();
  private final Map<String, Map<String, List<Edge>>> paths = new HashMap<>();

  WorkGraph(Collection<Source> all, Collection<String> from) {
    for (Source source : all) {
      editions.computeIfAbsent(source.workId(), w -> new ArrayList<>()).add(source);
      byKey.put(source.key(), source);
    }
    editions.values().forEach(e -> e.sort(Source.BY_YEAR));
    read(from);
  }

  private void read(Collection<String> from) {
    Map<String, List<Edge>> backwards = new TreeMap<>();
    Deque<String> waiting = new ArrayDeque<>(from);
    while (!waiting.isEmpty()) {
      String work = waiting.remove();
      if (!edges.containsKey(work)) {
        List<Edge> found = edgesOf(work);
        edges.put(work, found);
        for (Edge edge : found) {
          waiting.add(edge.to());
          if (edge.kind() == Kind.SAME_WORK_ABROAD) {
            backwards
                .computeIfAbsent(edge.to(), w -> new ArrayList<>())
                .add(new Edge(work, edge.kind(), edge.evidence()));
          }
        }
      }
    }
    backwards.forEach((work, more) -> edges.get(work).addAll(more));
    edges.values().forEach(e -> e.sort((a, b) -> compare(a.to(), b.to())));
  }

  private List<Edge> edgesOf(String work) {
    List<Edge> found = new ArrayList<>();
    for (Source edition : editions.getOrDefault(work, List.of())) {
      Work whole = edition.work();
      if (found.isEmpty()) {
        for (WorkLink link : whole.links()) {
          kind(link.kind())
              .filter(k -> !link.to().equals(work))
              .ifPresent(k -> found.add(new Edge(link.to(), k, link.evidence())));
        }
      }
      Optional<Lineage> lineage = edition.edition().lineage();
      Source parent = lineage.flatMap(Lineage::parent).map(byKey::get).orElse(null);
      if (parent != null && !parent.workId().equals(work)) {
        found.add(new Edge(parent.workId(), kind(lineage.get().form()), Optional.empty()));
      }
    }
    return found;
  }

  private static Optional<Kind> kind(WorkLink.Kind kind) {
    return switch (kind) {
      case REPEATS -> Optional.of(Kind.REPEATS);
      case TRANSLATES -> Optional.of(Kind.TRANSLATION);
      case SAME_WORK_ABROAD -> Optional.of(Kind.SAME_WORK_ABROAD);
      case CITES, REUSES_PICTURE -> Optional.empty();
    };
  }

  static Kind kind(Lineage.Form form) {
    return switch (form) {
      case REVISED -> Kind.REVISED;
      case REPRINT -> Kind.REPRINT;
      case FACSIMILE -> Kind.FACSIMILE;
      case TRANSLATION -> Kind.TRANSLATION;
      case TWIN -> Kind.TWIN;
    };
  }

  /** The works that a work follows, near or far, each with the way to it; itself is not there. */
  Map<String, List<Edge>> followed(String work) {
    return paths.computeIfAbsent(work, this::walk);
  }

  private Map<String, List<Edge>> walk(String start) {
    Map<String, List<Edge>> ways = new LinkedHashMap<>();
    Deque<String> waiting = new ArrayDeque<>(List.of(start));
    while (!waiting.isEmpty()) {
      String work = waiting.remove();
      for (Edge edge : edges.getOrDefault(work, List.of())) {
        if (!edge.to().equals(start) && !ways.containsKey(edge.to())) {
          List<Edge> way = new ArrayList<>(ways.getOrDefault(work, List.of()));
          way.add(edge);
          ways.put(edge.to(), way);
          waiting.add(edge.to());
        }
      }
    }
    return ways;
  }

  /** The editions of a work by year; none of one that the library has not. */
  List<Source> editions(String work) {
    return editions.getOrDefault(work, List.of());
  }

  /** The source with a key, or null. */
  Source source(String key) {
    return byKey.get(key);
  }

  /** By the year of their first editions. */
  int compare(String work, String other) {
    List<Source> ours = editions(work);
    List<Source> theirs = editions(other);
    return ours.isEmpty() || theirs.isEmpty()
        ? work.compareTo(other)
        : Source.BY_YEAR.compare(ours.get(0), theirs.get(0));
  }
}
