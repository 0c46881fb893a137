package merese.answer.witnesses;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.SourceLines;
import merese.answer.witnesses.Dependence.Kind;
import merese.answer.witnesses.WorkGraph.Edge;
import merese.model.Edition.Lineage;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Which of some sources are one witness.
 *
 * <p>All editions of a work are one, whatever their form. So is a work with one that it repeats or
 * translates or that it is under another title, be it through works that are not among the sources.
 * A work that follows two others makes them no less independent of each other. Two works that both
 * follow a third one, which is not among the sources, are one. Citing a work, or borrowing a
 * picture from it, leaves one's words one's own.
 *
 * <p>A link is recorded between works and says of which feature only in its evidence, so it holds
 * for all features; with the evidence the user can judge.
 */
public final class Independence {
  private final WorkGraph graph;
  private final SourceLines lines;
  private final Map<String, List<Source>> present = new LinkedHashMap<>();
  private final Map<Source, Witness> bySource = new HashMap<>();
  private final List<Witness> witnesses = new ArrayList<>();

  /**
   * One that speaks for itself, with those that say what they do after it.
   *
   * @param folded by year
   */
  public record Witness(Source first, List<Folded> folded) {}

  /**
   * A source that is no witness of its own.
   *
   * @param why the steps that lead to the witness; mostly one
   */
  public record Folded(Source source, List<Dependence> why) {}

  private Independence(Shelf shelf, Collection<Source> sources) {
    this.lines = new SourceLines();
    List<Source> sorted = lines.sorted(sources);
    for (Source source : sorted) {
      if (!source.mine()) {
        present.computeIfAbsent(source.workId(), w -> new ArrayList<>()).add(source);
      }
    }
    this.graph = new WorkGraph(shelf.sources(), present.keySet());
    fold();
  }

  /** The user's own works among the sources are left out: they are never witnesses. */
  public static Independence of(Shelf shelf, Collection<Source> sources) {
    return new Independence(shelf, sources);
  }

  /** All of them, by the year of the first source of each. */
  public List<Witness> witnesses() {
    return witnesses;
  }

  /** The witness that a source is or belongs to; null for one that was not asked about. */
  public Witness of(Source source) {
    return bySource.get(source);
  }

  private void fold() {
    Map<String, String> leaders = leaders();
    Map<String, Witness> byWork = new LinkedHashMap<>();
    for (String work : present.keySet()) {
      if (leaders.get(work).equals(work)) {
        byWork.put(work, new Witness(present.get(work).get(0), new ArrayList<>()));
      }
    }
    Map<String, List<Dependence>> why = new HashMap<>();
    present.keySet().forEach(w -> why.put(w, way(w, leaders.get(w))));
    for (Map.Entry<String, List<Source>> work : present.entrySet()) {
      Witness witness = byWork.get(leaders.get(work.getKey()));
      for (Source source : work.getValue()) {
        bySource.put(source, witness);
        if (source.equals(work.getValue().get(0))) {
          if (!source.equals(witness.first())) {
            witness.folded().add(new Folded(source, why.get(work.getKey())));
          }
        } else {
          witness.folded().add(new Folded(source, List.of(edition(source, work.getValue()))));
        }
      }
    }
    for (Witness witness : byWork.values()) {
      witness.folded().sort((a, b) -> Source.BY_YEAR.compare(a.source(), b.source()));
      witnesses.add(witness);
    }
  }

  /** For each work the one that it is folded into, which may be itself. */
  private Map<String, String> leaders() {
    Map<String, String> leaders = new LinkedHashMap<>();
    Map<String, String> claimed = new HashMap<>();
    for (String work : present.keySet()) {
      String leader = followedAmongPresent(work);
      if (leader == null) {
        leader = work;
        for (String origin : graph.followed(work).keySet()) {
          if (!present.containsKey(origin)) {
            leader = leader.equals(work) ? claimed.getOrDefault(origin, work) : leader;
          }
        }
        if (leader.equals(work)) {
          graph.followed(work).keySet().forEach(o -> claimed.putIfAbsent(o, work));
        }
      }
      leaders.put(work, leader);
    }
    for (String work : present.keySet()) {
      leaders.put(work, last(leaders, work));
    }
    return leaders;
  }

  private static String last(Map<String, String> leaders, String work) {
    String at = work;
    while (!leaders.get(at).equals(at)) {
      at = leaders.get(at);
    }
    return at;
  }

  /** The earliest of the sources' works that this one follows; null where there is none. */
  private String followedAmongPresent(String work) {
    for (String other : present.keySet()) {
      boolean follows = graph.followed(work).containsKey(other);
      boolean isFollowed = follows && graph.followed(other).containsKey(work);
      if (follows && (!isFollowed || isBefore(other, work))) {
        return other;
      }
    }
    return null;
  }

  private boolean isBefore(String other, String work) {
    return Source.BY_YEAR.compare(present.get(other).get(0), present.get(work).get(0)) < 0;
  }

  private List<Dependence> way(String work, String leader) {
    if (leader.equals(work)) {
      return List.of();
    }
    Map<String, List<Edge>> followed = graph.followed(work);
    List<Edge> edges = followed.get(leader);
    if (edges != null) {
      return steps(edges);
    }
    for (Map.Entry<String, List<Edge>> origin : followed.entrySet()) {
      if (graph.followed(leader).containsKey(origin.getKey())) {
        List<Dependence> steps = new ArrayList<>(steps(origin.getValue()));
        steps.add(
            new Dependence(
                Kind.SAME_ORIGIN,
                lines.reference(present.get(leader).get(0)),
                Optional.empty(),
                Optional.empty()));
        return steps;
      }
    }
    throw new IllegalStateException(work + " is folded into " + leader + " for no reason");
  }

  private List<Dependence> steps(List<Edge> edges) {
    List<Dependence> steps = new ArrayList<>();
    for (Edge edge : edges) {
      steps.add(
          new Dependence(edge.kind(), reference(edge.to()), edge.evidence(), Optional.empty()));
    }
    return steps;
  }

  /** A work is named by its first edition among the sources, else by its first one. */
  private String reference(String work) {
    List<Source> editions = present.getOrDefault(work, graph.editions(work));
    return editions.isEmpty() ? work : lines.reference(editions.get(0));
  }

  private Dependence edition(Source source, List<Source> editions) {
    Optional<Lineage> lineage = source.edition().lineage();
    Source parent = lineage.flatMap(Lineage::parent).map(graph::source).orElse(null);
    return new Dependence(
        lineage.map(l -> WorkGraph.kind(l.form())).orElse(Kind.OTHER_EDITION),
        lines.reference(parent == null ? editions.get(0) : parent),
        Optional.empty(),
        lineage.flatMap(Lineage::newMatter));
  }
}
