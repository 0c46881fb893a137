package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.shelf.SourcedPage;
import merese.vocabulary.NameOnPage;

/**
 * Finds the pages that name what was asked for and have no note of it. What stands on each page is
 * in the index, so no text is read; a library without page texts is asked one question more.
 */
final class PagesNaming {
  private final Shelf shelf;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> wanted = new LinkedHashSet<>();
  private final PageNotes notes;

  /**
   * @param sources keys of those whose pages are looked at
   */
  PagesNaming(Shelf shelf, List<ConceptCoverage> found, Set<String> sources) {
    this.shelf = shelf;
    this.notes = new PageNotes(shelf.thesaurus());
    for (ConceptCoverage coverage : found) {
      asked.add(coverage.concept());
      wanted.addAll(coverage.wanted());
      for (SourcedNote note : coverage.notesOf(sources)) {
        notes.add(note);
      }
    }
  }

  /** A name on a page that is not noted. */
  record Named(SourcedPage page, NameOnPage name, List<String> concepts) {}

  /** All such names on some pages, in their order. */
  private List<Named> notNoted(List<SourcedPage> pages) {
    List<Named> found = new ArrayList<>();
    for (SourcedPage page : pages) {
      for (Named name : named(page)) {
        if (!notes.have(page, name.name())) {
          found.add(name);
        }
      }
    }
    return found;
  }

  private List<Named> named(SourcedPage page) {
    List<Named> found = new ArrayList<>();
    for (NameOnPage name : page.names()) {
      List<String> concepts = new ArrayList<>(name.concepts());
      concepts.retainAll(wanted);
      if (!concepts.isEmpty()) {
        found.add(new Named(page, name, concepts));
      }
    }
    return found;
  }

  /**
   * The same of a page, each spelling once.
   *
   * @param notNoted takes those that are not noted
   * @return how many of them are noted
   */
  int spellings(SourcedPage page, List<Named> notNoted) {
    Map<String, Named> once = new LinkedHashMap<>();
    Set<String> noted = new HashSet<>();
    for (Named each : named(page)) {
      once.putIfAbsent(each.name().spelling(), each);
      if (notes.have(page, each.name())) {
        noted.add(each.name().spelling());
      }
    }
    once.keySet().removeAll(noted);
    notNoted.addAll(once.values());
    return noted.size();
  }

  /** By source, what an index has of the places of the notes. */
  Map<String, Set<String>> notesAround() {
    return notes.around();
  }

  /**
   * @param pages those of each source together, in the order of R4
   */
  List<OnPages> onPages(List<SourcedPage> pages, SourceLines lines) {
    List<OnPages> answer = new ArrayList<>();
    Map<String, Gathered> spellings = new LinkedHashMap<>();
    Source last = null;
    for (Named each : notNoted(pages)) {
      Source source = each.page().source();
      if (last != null && !source.equals(last)) {
        answer.add(new OnPages(lines.of(last), names(spellings)));
        spellings.clear();
      }
      last = source;
      String key = each.name().spelling();
      Gathered gathered = spellings.get(key);
      if (gathered == null) {
        gathered = new Gathered(each);
        spellings.put(key, gathered);
      }
      gathered.add(each.page());
    }
    if (last != null) {
      answer.add(new OnPages(lines.of(last), names(spellings)));
    }
    return answer;
  }

  private static final class Gathered {
    private final Named first;
    private final Set<Locator> at = new LinkedHashSet<>();
    private final Set<String> unnumbered = new LinkedHashSet<>();

    private Gathered(Named first) {
      this.first = first;
    }

    private void add(SourcedPage page) {
      if (page.locator().isPresent()) {
        at.add(page.locator().get());
      } else {
        unnumbered.add(page.cited());
      }
    }
  }

  private List<OnPages.Name> names(Map<String, Gathered> spellings) {
    List<OnPages.Name> names = new ArrayList<>();
    for (Gathered each : spellings.values()) {
      names.add(
          new OnPages.Name(
              each.first.name().words(),
              lines(each.first.concepts()),
              isNarrower(each.first.concepts()),
              each.first.name().doubtful(),
              each.first.name().loose(),
              List.copyOf(each.at),
              List.copyOf(each.unnumbered)));
    }
    return names;
  }

  List<ConceptLine> lines(List<String> concepts) {
    List<ConceptLine> lines = new ArrayList<>();
    for (String concept : concepts) {
      lines.add(new ConceptLine(concept, shelf.thesaurus().label(concept)));
    }
    return lines;
  }

  boolean isNarrower(List<String> concepts) {
    for (String concept : concepts) {
      if (asked.contains(concept)) {
        return false;
      }
    }
    return true;
  }
}
