package merese.change.notes;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Check;
import merese.model.Check.Method;
import merese.model.Check.Result;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Scope;
import merese.model.Work;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.ChangeSet;
import merese.store.Stored;

/**
 * Writes down in the check log which page texts were searched for the names of a concept. That is
 * no reading, and has a method of its own. A later search of the same pages takes the place of an
 * earlier one.
 */
public final class SearchedTexts {
  private final WritingShelf shelf;
  private final Clock clock;

  public SearchedTexts(WritingShelf shelf, Clock clock) {
    this.shelf = shelf;
    this.clock = clock;
  }

  /**
   * A text that was searched.
   *
   * @param extent its printed pages that have text
   * @param besides what else of it was searched, or alone, in words
   * @param found whether a name stands in it
   */
  public record Searched(
      SourceAddress source, Optional<Locator> extent, Optional<String> besides, boolean found) {}

  /**
   * Writes a line for each text, all or none, as one change.
   *
   * @param concept id of what was searched for
   * @param by who did
   * @return what the history calls the change
   * @throws merese.store.LibraryException where nothing could be written
   */
  public OptionalInt log(String concept, List<Searched> texts, String by) {
    TermChoice.requireConcept(shelf, concept);
    Map<String, List<Searched>> byFile = new LinkedHashMap<>();
    for (Searched each : texts) {
      byFile.computeIfAbsent(each.source().file(), f -> new ArrayList<>()).add(each);
    }
    String what = "word search in the page texts of " + sources(texts) + " for " + concept;
    try (ChangeSet change = shelf.folder().change(what)) {
      for (List<Searched> ofWork : byFile.values()) {
        Stored<Work> stored = shelf.read(ofWork.get(0).source());
        Work work = stored.value();
        for (Searched each : ofWork) {
          Edition edition = NoteTaking.edition(work, each.source());
          work = work.withEdition(logged(edition, check(concept, each, by)));
        }
        change.save(stored, work);
      }
      change.commit();
      byFile.keySet().forEach(shelf::reread);
      return change.number();
    }
  }

  private static String sources(List<Searched> texts) {
    long count = texts.stream().map(each -> each.source().key()).distinct().count();
    return count == 1 ? texts.get(0).source().key() : count + " sources";
  }

  private Check check(String concept, Searched searched, String by) {
    return new Check(
        concept,
        searched.extent(),
        Method.WORD_SEARCH,
        searched.found() ? Result.FOUND : Result.NONE,
        searched.besides().map(words -> new Scope(words, List.of(), List.of())),
        Optional.of(LocalDate.now(clock)),
        Optional.of(by),
        Optional.empty());
  }

  private static Edition logged(Edition edition, Check check) {
    List<Check> checks = new ArrayList<>(edition.checks());
    checks.removeIf(
        old ->
            old.method() == Method.WORD_SEARCH
                && old.concept().equals(check.concept())
                && old.extent().equals(check.extent())
                && old.scope().equals(check.scope()));
    checks.add(check);
    return edition.withChecks(checks);
  }
}
