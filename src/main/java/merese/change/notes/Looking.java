package merese.change.notes;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.change.ChangeRefusedException;
import merese.model.Check;
import merese.model.Check.Method;
import merese.model.Check.Result;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Stance;
import merese.model.Scope;
import merese.model.Work;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.ChangeSet;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;

/** Writes down in the check log what was looked through, for what and how. */
public final class Looking {
  private final WritingShelf shelf;
  private final Clock clock;

  public Looking(WritingShelf shelf, Clock clock) {
    this.shelf = shelf;
    this.clock = clock;
  }

  /**
   * What somebody looked through.
   *
   * @param extent empty for the whole of each source
   * @param concepts ids of what was looked for
   * @param scope what the looking was limited to, in words; blank ones are as none
   * @param list what is known of the source's own list of kinds; empty where nothing is said of it
   * @param copy the id of the copy that was in hand
   */
  public record Looked(
      List<SourceAddress> sources,
      Optional<Locator> extent,
      List<String> concepts,
      Method method,
      Optional<String> scope,
      Optional<Result> list,
      String by,
      Optional<String> copy) {
    public Looked {
      sources = List.copyOf(sources);
      concepts = List.copyOf(concepts);
      scope = scope.map(String::strip).filter(words -> !words.isEmpty());
    }
  }

  /**
   * A line that was written.
   *
   * @param notes how many notes on the concept, or on something narrower, there are in what was
   *     looked through
   */
  public record Line(SourceAddress source, Check check, int notes) {}

  /** The lines that were written, and what the history calls the change. */
  public record Logged(List<Line> lines, OptionalInt change) {
    public Logged {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Writes all lines, or none.
   *
   * @throws merese.store.LibraryException where nothing could be written
   */
  public Logged log(Looked looked) {
    looked.concepts().forEach(id -> TermChoice.requireConcept(shelf, id));
    Map<String, List<SourceAddress>> byFile = new LinkedHashMap<>();
    for (SourceAddress source : looked.sources()) {
      byFile.computeIfAbsent(source.file(), f -> new ArrayList<>()).add(source);
    }
    List<Line> lines = new ArrayList<>();
    try (ChangeSet change = shelf.folder().change(words(looked))) {
      for (List<SourceAddress> sources : byFile.values()) {
        Stored<Work> stored = shelf.read(sources.get(0));
        Work work = stored.value();
        for (SourceAddress source : sources.stream().distinct().toList()) {
          work = work.withEdition(logged(NoteTaking.edition(work, source), source, looked, lines));
        }
        change.save(stored, work);
      }
      change.commit();
      byFile.keySet().forEach(shelf::reread);
      return new Logged(lines, change.number());
    }
  }

  private Edition logged(Edition edition, SourceAddress source, Looked looked, List<Line> lines) {
    requireCopy(edition, looked.copy());
    List<Check> checks = new ArrayList<>(edition.checks());
    for (String concept : looked.concepts()) {
      List<Note> notes = notes(edition, concept, looked.extent());
      Check check =
          new Check(
              concept,
              looked.extent(),
              looked.method(),
              looked.list().orElse(result(notes)),
              looked.scope().map(words -> new Scope(words, List.of(), List.of())),
              Optional.of(LocalDate.now(clock)),
              Optional.of(looked.by()),
              looked.copy());
      checks.add(check);
      lines.add(new Line(source, check, notes.size()));
    }
    return edition.withChecks(checks);
  }

  private static void requireCopy(Edition edition, Optional<String> copy) {
    List<String> ids = edition.copies().stream().map(c -> c.id()).toList();
    if (copy.isPresent() && !ids.contains(copy.get())) {
      throw new ChangeRefusedException(
          edition.key()
              + " has no copy \""
              + copy.get()
              + "\""
              + (ids.isEmpty() ? "" : "; its copies are " + String.join(", ", ids)));
    }
  }

  /** What denies the feature finds nothing. */
  private static Result result(List<Note> notes) {
    for (Note note : notes) {
      for (Place place : note.places()) {
        if (place.stance() != Stance.SAYS_ABSENT) {
          return Result.FOUND;
        }
      }
    }
    return Result.NONE;
  }

  private List<Note> notes(Edition edition, String concept, Optional<Locator> extent) {
    Thesaurus thesaurus = shelf.thesaurus();
    List<Note> found = new ArrayList<>();
    for (Note note : edition.notes()) {
      boolean means = false;
      for (Naming naming : note.namings()) {
        means |= naming.concept().isPresent() && thesaurus.covers(concept, naming.concept().get());
      }
      if (means && isIn(note, extent)) {
        found.add(note);
      }
    }
    return found;
  }

  private static boolean isIn(Note note, Optional<Locator> extent) {
    return extent.isEmpty()
        || note.places().stream().anyMatch(p -> p.locator().isWithin(extent.get()));
  }

  private static String words(Looked looked) {
    String what = looked.method().words();
    String where = String.join(", ", looked.sources().stream().map(SourceAddress::key).toList());
    return what + ": " + where + " for " + String.join(", ", looked.concepts());
  }
}
