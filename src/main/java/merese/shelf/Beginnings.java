package merese.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Mine;
import merese.model.Naming;
import merese.search.Hits.NoteHit;
import merese.search.NoteIndex;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * What in a library begins with what somebody has typed so far. It is asked at every key, so what
 * can be folded beforehand is.
 */
public final class Beginnings {
  private final NoteIndex index;
  private final List<Folded> labels = new ArrayList<>();
  private final List<Folded> sources = new ArrayList<>();

  /**
   * Something that may be meant.
   *
   * @param kind what it is
   * @param text what to put in the place of what was typed
   * @param id of the concept, or the key of the source; empty for a printed term
   * @param detail what tells it from others
   */
  public record Beginning(Kind kind, String text, String id, String detail) {}

  /** What may be meant. */
  public enum Kind {
    CONCEPT,
    PRINTED,
    SOURCE
  }

  private record Folded(String key, Beginning of, boolean mine) {
    /** Whether a word begins so; the first one, or any. */
    boolean has(String begun, boolean first) {
      return first ? key.startsWith(begun) : key.contains(" " + begun);
    }
  }

  Beginnings(NoteIndex index, Thesaurus thesaurus, Mine mine, Iterable<Source> all) {
    this.index = index;
    Set<String> own = new HashSet<>();
    mine.preferences().forEach(each -> own.add(Folding.key(each.label())));
    mine.coinages().forEach(each -> own.add(Folding.key(each.label())));
    for (Concept concept : thesaurus.concepts()) {
      String preferred = Thesaurus.display(concept.preferred());
      addLabel(concept.preferred(), concept, "", own);
      for (Label label : concept.alternatives()) {
        addLabel(label, concept, preferred, own);
      }
      for (Label label : concept.hidden()) {
        addLabel(label, concept, preferred, own);
      }
    }
    // The shorter, the likelier that it is what somebody begins to type.
    labels.sort(Comparator.comparingInt(each -> each.key().length()));
    for (Source source : all) {
      String key = Folding.key(source.reference() + " " + source.title());
      String detail = source.title();
      sources.add(
          new Folded(
              key, new Beginning(Kind.SOURCE, source.reference(), source.key(), detail), false));
    }
  }

  private void addLabel(Label label, Concept concept, String preferred, Set<String> own) {
    String detail = preferred.isEmpty() ? concept.definition() : "for " + preferred;
    Beginning of = new Beginning(Kind.CONCEPT, label.text(), concept.id(), detail);
    String key = Folding.key(label.text());
    labels.add(new Folded(key, of, own.contains(key)));
  }

  /**
   * Concepts by their labels, then terms as printed. The user's own terms come first, each concept
   * comes once before any comes again, and what begins so comes before what goes on so.
   */
  public List<Beginning> terms(String typed, int most) {
    String begun = Folding.key(typed);
    if (begun.isEmpty()) {
      return List.of();
    }
    List<Beginning> found = new ArrayList<>();
    addLabels(begun, most, found);
    Set<String> known = new LinkedHashSet<>();
    found.forEach(each -> known.add(Folding.key(each.text())));
    for (NoteHit hit : index.printing(begun, 2 * most)) {
      for (Naming naming : PackedNote.unpack(hit.payload()).note().namings()) {
        String key = Folding.key(naming.printed());
        if (found.size() < 2 * most && key.startsWith(begun) && known.add(key)) {
          found.add(new Beginning(Kind.PRINTED, naming.printed(), "", "as printed"));
        }
      }
    }
    return found;
  }

  /** Sources by the words of author, year and title. */
  public List<Beginning> sources(String typed, int most) {
    List<Beginning> found = new ArrayList<>();
    String begun = Folding.key(typed);
    if (!begun.isEmpty()) {
      add(sources, begun, most, found);
    }
    return found;
  }

  private void addLabels(String begun, int most, List<Beginning> found) {
    for (boolean first : new boolean[] {true, false}) {
      for (Folded each : labels) {
        if (each.mine() && found.size() < most && each.has(begun, first)) {
          found.add(each.of());
        }
      }
    }
    List<Beginning> again = new ArrayList<>();
    Set<String> concepts = new HashSet<>();
    found.forEach(each -> concepts.add(each.id()));
    for (boolean first : new boolean[] {true, false}) {
      for (Folded each : labels) {
        if (!each.has(begun, first) || found.contains(each.of())) {
          continue;
        }
        if (!concepts.add(each.of().id())) {
          again.add(each.of());
        } else if (found.size() < most) {
          found.add(each.of());
        }
      }
    }
    for (Beginning each : again) {
      if (found.size() < most && !found.contains(each)) {
        found.add(each);
      }
    }
  }

  private static void add(List<Folded> among, String begun, int most, List<Beginning> found) {
    for (boolean first : new boolean[] {true, false}) {
      for (Folded each : among) {
        if (found.size() < most && each.has(begun, first) && !found.contains(each.of())) {
          found.add(each.of());
        }
      }
    }
  }
}
