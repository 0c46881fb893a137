package merese.answer.concordance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.SourceLines;
import merese.answer.Words;
import merese.answer.concordance.Concordance.Meaning;
import merese.answer.concordance.Concordance.Safety;
import merese.answer.concordance.Concordance.Word;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.PlaceTest;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/**
 * Says what the words that some sources use mean in the whole library: every naming counts here,
 * the first of its note or not, since one other meaning is enough to make a word unsafe.
 */
final class WordsMaker {
  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final WordKeys keys;

  /** What is known of one word. */
  private static final class Known {
    final Map<String, Integer> spellings = new LinkedHashMap<>();
    final Map<String, Set<Source>> stated = new TreeMap<>();
    final Map<String, Set<Source>> seen = new TreeMap<>();
    final Set<String> byVocabulary = new TreeSet<>();
    final Set<Source> open = new LinkedHashSet<>();

    Set<String> firm() {
      Set<String> firm = new LinkedHashSet<>(stated.keySet());
      firm.addAll(byVocabulary);
      return firm;
    }

    Set<String> all() {
      Set<String> all = new TreeSet<>(firm());
      all.addAll(seen.keySet());
      return all;
    }
  }

  WordsMaker(Shelf shelf, SourceLines lines, WordKeys keys) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.lines = lines;
    this.keys = keys;
  }

  /** The words of these uses, alphabetically as they are folded. */
  List<Word> of(Collection<Use> uses) {
    Map<String, Known> byKey = new TreeMap<>();
    Set<String> printed = new LinkedHashSet<>();
    for (Use use : uses) {
      String term = use.naming().printed();
      if (!term.isBlank()) {
        printed.add(term);
        byKey
            .computeIfAbsent(keys.of(term), k -> new Known())
            .spellings
            .merge(term, 1, Integer::sum);
      }
    }
    List<NoteCriterion> criteria = new ArrayList<>();
    Set<NoteCriterion> distinct = new LinkedHashSet<>();
    printed.forEach(p -> distinct.addAll(Words.printedAs(thesaurus, p)));
    criteria.addAll(distinct);
    for (SourcedNote note : shelf.notes(criteria)) {
      if (!note.source().mine()) {
        note.note().namings().forEach(n -> add(note, n, byKey.get(keys.of(n.printed()))));
      }
    }
    shelf.meanings(printed).forEach((p, m) -> byKey.get(keys.of(p)).byVocabulary.addAll(m));
    List<Word> words = new ArrayList<>();
    byKey.values().forEach(known -> words.add(word(known)));
    return words;
  }

  private static void add(SourcedNote note, Naming naming, Known known) {
    if (known == null || !PlaceTest.PRESENT.holdsForAny(note.note().placesOf(naming))) {
      return;
    } else if (naming.concept().isEmpty()) {
      known.open.add(note.source());
    } else {
      Map<String, Set<Source>> where = naming.why().get() == Why.TEXT ? known.stated : known.seen;
      where.computeIfAbsent(naming.concept().get(), c -> new LinkedHashSet<>()).add(note.source());
    }
  }

  private Word word(Known known) {
    List<Meaning> meanings = new ArrayList<>();
    for (String concept : known.all()) {
      Set<Source> stated = known.stated.getOrDefault(concept, Set.of());
      Set<Source> seen = new LinkedHashSet<>(known.seen.getOrDefault(concept, Set.of()));
      seen.removeAll(stated);
      meanings.add(
          new Meaning(
              new ConceptLine(concept, thesaurus.label(concept)),
              lines(stated),
              lines(seen),
              known.byVocabulary.contains(concept)));
    }
    meanings.sort(
        (a, b) ->
            Integer.compare(
                b.stated().size() + b.seen().size(), a.stated().size() + a.seen().size()));
    return new Word(
        NamesMaker.commonest(known.spellings), safety(known), meanings, lines(known.open));
  }

  private Safety safety(Known known) {
    if (severalThings(known.firm())) {
      return Safety.NOT_SAFE;
    }
    boolean certain =
        !known.firm().isEmpty() && known.open.isEmpty() && !severalThings(known.all());
    return certain ? Safety.SAFE : Safety.NOT_CERTAIN;
  }

  /** A kind and what is narrower are one thing; two narrower kinds are two. */
  private boolean severalThings(Collection<String> concepts) {
    for (String a : concepts) {
      for (String b : concepts) {
        if (!thesaurus.areRelatedByHierarchy(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  private List<SourceLine> lines(Collection<Source> sources) {
    List<SourceLine> made = new ArrayList<>();
    lines.sorted(sources).forEach(s -> made.add(lines.of(s)));
    return made;
  }
}
