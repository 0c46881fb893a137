package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import merese.model.Check;
import merese.model.Contributor;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage;
import merese.model.Edition.Part;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Stance;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;
import merese.model.WorkLink;
import merese.testing.SmallLibrary;

/** Sound libraries with parts, copies, checks, lineages and links that point all over them. */
final class GeneratedLibrary {
  private static final String[] WORDS = {"Neck", "Stopper", "Ring", "Foot", "Stem"};

  private final Random random;
  private final List<String> keys = new ArrayList<>();

  private GeneratedLibrary(long seed) {
    random = new Random(seed);
  }

  static SmallLibrary of(long seed) {
    return new GeneratedLibrary(seed).library();
  }

  private SmallLibrary library() {
    SmallLibrary library = new SmallLibrary();
    int works = 3 + random.nextInt(3);
    for (int i = 0; i < works; i++) {
      library.work(work(i, works));
    }
    return library;
  }

  private boolean maybe() {
    return random.nextBoolean();
  }

  private String word() {
    return WORDS[random.nextInt(WORDS.length)];
  }

  private Optional<String> text() {
    return maybe() ? Optional.of(word()) : Optional.empty();
  }

  private OptionalInt number() {
    return maybe() ? OptionalInt.of(1 + random.nextInt(3)) : OptionalInt.empty();
  }

  private Work work(int number, int works) {
    List<Edition> editions = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      editions.add(edition("k" + number + "-" + i));
    }
    List<WorkLink> links = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      WorkLink.Kind kind = WorkLink.Kind.values()[random.nextInt(5)];
      links.add(new WorkLink(kind, "w" + random.nextInt(works), text(), text()));
    }
    List<Contributor> contributors = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Name name =
          maybe()
              ? new Name.Person(word(), text(), Optional.empty(), Optional.empty())
              : new Name.Body(word());
      contributors.add(new Contributor(Contributor.Role.values()[random.nextInt(3)], name));
    }
    return new Work(
        "w" + number,
        SourceKind.values()[random.nextInt(2)],
        word(),
        text(),
        maybe() ? List.of(word()) : List.of(),
        contributors,
        maybe() ? Optional.of("fr") : Optional.empty(),
        false,
        editions,
        links);
  }

  private Edition edition(String key) {
    Optional<Lineage> lineage =
        keys.isEmpty() || maybe()
            ? Optional.empty()
            : Optional.of(
                new Lineage(
                    Lineage.Form.values()[random.nextInt(3)],
                    Optional.of(keys.get(random.nextInt(keys.size()))),
                    number(),
                    text(),
                    List.of()));
    keys.add(key);
    List<Part> parts = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    List<Check> checks = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      parts.add(new Part("p" + i, word(), List.of(), Optional.empty()));
      copies.add(
          new Copy("c" + i, text(), text(), Optional.empty(), false, Optional.of(key + " " + i)));
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      notes.add(note(i, parts));
      checks.add(check(copies));
    }
    List<ReceivedRecord> received =
        maybe() ? List.of(new ReceivedRecord("bibtex", "book", word(), List.of())) : List.of();
    return new Edition(
        key,
        imprint(),
        lineage,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        parts,
        copies,
        notes,
        checks,
        received);
  }

  private Imprint imprint() {
    return new Imprint(
        text(),
        number(),
        number(),
        text(),
        maybe() ? List.of(word()) : List.of(),
        text(),
        number(),
        text(),
        maybe() ? List.of(Identifier.of(Identifier.Scheme.DOI, "10.5555/" + word())) : List.of(),
        text());
  }

  private Note note(int number, List<Part> parts) {
    Optional<String> piece = maybe() ? Optional.of("piece" + random.nextInt(2)) : Optional.empty();
    Place place =
        new Place(
            Locator.parse("p. " + (1 + random.nextInt(3))),
            Stance.NAMES,
            Medium.TEXT,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            piece);
    Place correction =
        new Place(
                Locator.parse("p. 9"),
                Stance.CORRECTS,
                Medium.TEXT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())
            .withCorrects(
                keys.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                        new Place.Corrected(
                            keys.get(random.nextInt(keys.size())), Optional.empty())));
    Optional<String> part =
        parts.isEmpty() || maybe()
            ? Optional.empty()
            : Optional.of(parts.get(random.nextInt(parts.size())).id());
    return new Note(
        "n" + number,
        List.of(new Naming(word(), Optional.of("ring-bladed"), Optional.of(Why.TEXT))),
        List.of(place, correction),
        List.of(),
        text(),
        text(),
        part,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Check check(List<Copy> copies) {
    return new Check(
        "ring-bladed",
        Optional.empty(),
        Check.Method.READ,
        Check.Result.NONE,
        Optional.empty(),
        Optional.empty(),
        text(),
        copies.isEmpty() || maybe() ? Optional.empty() : Optional.of(copies.get(0).id()));
  }
}
