package merese.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Name;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.model.WorkLink;

/**
 * The same works under other names, keys and ids and in another order: nothing that an answer says
 * may depend on them.
 */
public final class Shuffle {
  private final Random random;
  private final Map<String, String> newNames = new LinkedHashMap<>();
  private final Map<String, String> newWorks = new LinkedHashMap<>();

  private Shuffle(long seed) {
    this.random = new Random(seed);
  }

  /** Shuffled works, and what turns an answer about them back into one about the first. */
  public record Shuffled(List<Work> works, Map<String, String> originals) {
    public String restore(String text) {
      String restored = text;
      for (Map.Entry<String, String> name : originals.entrySet()) {
        restored = restored.replace(name.getKey(), name.getValue());
      }
      return restored;
    }
  }

  public static Shuffled of(List<Work> works, long seed) {
    Shuffle shuffle = new Shuffle(seed);
    List<Work> shuffled = new ArrayList<>();
    works.forEach(work -> shuffled.add(shuffle.work(work)));
    Collections.shuffle(shuffled, shuffle.random);
    Map<String, String> originals = new LinkedHashMap<>();
    shuffle.newNames.forEach((old, made) -> originals.put(made, old));
    return new Shuffled(shuffled, originals);
  }

  private Work work(Work work) {
    List<Contributor> contributors = new ArrayList<>();
    for (Contributor contributor : work.contributors()) {
      Name.Person person = (Name.Person) contributor.name();
      contributors.add(
          new Contributor(
              contributor.role(),
              new Name.Person(
                  renamed(person.family()), person.given(), person.particle(), person.suffix())));
    }
    List<Edition> editions = new ArrayList<>();
    work.editions().forEach(edition -> editions.add(edition(edition)));
    Collections.shuffle(editions, random);
    return new Work(
        renamedWork(work.id()),
        work.kind(),
        renamed(work.title()),
        work.subtitle(),
        work.alternateTitles(),
        contributors,
        work.language(),
        work.mine(),
        editions,
        work.links().stream().map(this::link).toList());
  }

  private WorkLink link(WorkLink link) {
    return new WorkLink(link.kind(), renamedWork(link.to()), link.picture(), link.evidence());
  }

  private String renamedWork(String id) {
    return newWorks.computeIfAbsent(id, i -> "w" + random.nextInt(1_000_000_000));
  }

  private Lineage lineage(Lineage lineage) {
    return new Lineage(
        lineage.form(),
        lineage.parent().map(this::renamed),
        lineage.originalYear(),
        lineage.newMatter(),
        lineage.plates());
  }

  private Edition edition(Edition edition) {
    List<Note> notes = new ArrayList<>();
    edition.notes().forEach(note -> notes.add(note(note)));
    Collections.shuffle(notes, random);
    return new Edition(
        renamed(edition.key()),
        edition.imprint(),
        edition.lineage().map(this::lineage),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope(),
        edition.parts(),
        edition.copies(),
        notes,
        edition.checks(),
        edition.received());
  }

  private Note note(Note note) {
    List<Place> places = new ArrayList<>();
    for (Place place : note.places()) {
      places.add(
          place.withCorrects(
              place.corrects().map(c -> new Place.Corrected(renamed(c.edition()), c.locator()))));
    }
    Collections.shuffle(places, random);
    return new Note(
        "note" + random.nextInt(1_000_000_000),
        note.namings(),
        places,
        note.claims(),
        note.quotation(),
        note.reading(),
        note.part(),
        note.object(),
        note.rights(),
        Optional.empty());
  }

  private String renamed(String name) {
    return newNames.computeIfAbsent(
        name,
        n -> {
          StringBuilder made = new StringBuilder("X");
          for (int i = 0; i < 9; i++) {
            made.append((char) ('a' + random.nextInt(26)));
          }
          return made.toString();
        });
  }
}
