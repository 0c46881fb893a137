package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.vocabulary.VocabularyChange.StayingNote;
import merese.model.Check;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Scope;
import merese.model.Work;

/**
 * What in a work names a concept, led to another. A naming keeps its printed term and what its
 * meaning rests on.
 */
final class WorkReferences {
  /** Which namings are led over. */
  interface Rule {
    boolean takes(String edition, Note note, Naming naming);
  }

  private final String from;
  private final String to;
  private final Rule rule;
  private final boolean onlyNotes;
  private final Set<String> sources = new LinkedHashSet<>();
  private final List<StayingNote> staying = new ArrayList<>();
  private int notes;
  private int checks;
  private int scopes;

  private WorkReferences(String from, String to, Rule rule, boolean onlyNotes) {
    this.from = from;
    this.to = to;
    this.rule = rule;
    this.onlyNotes = onlyNotes;
  }

  /** All that names a concept. */
  static WorkReferences all(String from, String to) {
    return new WorkReferences(from, to, (edition, note, naming) -> true, false);
  }

  /** Some namings and nothing else; the notes with others of the concept are listed. */
  static WorkReferences some(String from, String to, Rule rule) {
    return new WorkReferences(from, to, rule, true);
  }

  int notes() {
    return notes;
  }

  int sources() {
    return sources.size();
  }

  /** Lines of the check log: led over, or where only notes are, met. */
  int checks() {
    return checks;
  }

  int scopes() {
    return scopes;
  }

  List<StayingNote> staying() {
    return staying;
  }

  /** The same work where it names nothing of the kind. */
  Work follow(Work work) {
    List<Edition> editions = new ArrayList<>();
    work.editions().forEach(edition -> editions.add(follow(edition)));
    return work.withEditions(editions);
  }

  private Edition follow(Edition edition) {
    List<Note> followed = new ArrayList<>();
    edition.notes().forEach(note -> followed.add(follow(edition.key(), note)));
    List<Check> log = new ArrayList<>();
    edition.checks().forEach(check -> log.add(follow(check)));
    return new Edition(
        edition.key(),
        edition.imprint(),
        edition.lineage(),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope().map(this::follow),
        edition.parts(),
        edition.copies(),
        followed,
        log,
        edition.received());
  }

  private Note follow(String edition, Note note) {
    List<Naming> namings = new ArrayList<>();
    List<String> left = new ArrayList<>();
    boolean moved = false;
    for (Naming naming : note.namings()) {
      if (!naming.means(from)) {
        namings.add(naming);
      } else if (rule.takes(edition, note, naming)) {
        namings.add(new Naming(naming.printed(), Optional.of(to), naming.why()));
        moved = true;
      } else {
        namings.add(naming);
        left.add(naming.printed());
      }
    }
    if (!left.isEmpty()) {
      List<String> places =
          note.places().stream().map(p -> p.locator().printed()).distinct().toList();
      staying.add(new StayingNote(edition + "/" + note.id(), left, places));
    }
    if (!moved) {
      return note;
    }
    notes++;
    sources.add(edition);
    return new Note(
        note.id(),
        namings,
        note.places(),
        note.claims(),
        note.quotation(),
        note.reading(),
        note.part(),
        note.object(),
        note.rights(),
        note.checked());
  }

  private Check follow(Check check) {
    Optional<Scope> scope = check.scope().map(this::follow);
    boolean names = check.concept().equals(from);
    checks += names ? 1 : 0;
    return new Check(
        names && !onlyNotes ? to : check.concept(),
        check.extent(),
        check.method(),
        check.result(),
        scope,
        check.on(),
        check.by(),
        check.copy());
  }

  private Scope follow(Scope scope) {
    if (!scope.concepts().contains(from)) {
      return scope;
    }
    scopes++;
    return onlyNotes
        ? scope
        : new Scope(scope.words(), scope.places(), Ids.led(scope.concepts(), from, to));
  }
}
