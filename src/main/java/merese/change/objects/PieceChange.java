package merese.change.objects;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.change.objects.PieceRequest.Particulars;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.Nearest;
import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Photograph;
import merese.store.ChangeSet;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.vocabulary.Folding;
import merese.vocabulary.KeyReading;

/**
 * Records what the user knows of a piece of their own. Nothing here says what a piece is: it is
 * what somebody saw, felt, or looked for and did not find.
 */
public final class PieceChange {
  private static final int MOST_NEAR = 3;

  private final LibraryFolder folder;
  private final List<Effect> effects = new ArrayList<>();
  private Optional<String> asKey = Optional.empty();

  /** Read before the library is locked, since a large one takes a while. */
  private Optional<PiecePicture> picture = Optional.empty();

  private PieceChange(LibraryFolder folder) {
    this.folder = folder;
  }

  /**
   * Does it, all or nothing.
   *
   * @throws ChangeRefusedException where it names a piece, concept or photograph that is not there,
   *     or one that is there already
   * @throws merese.exchange.UnreadableException where a photograph to be copied cannot be read
   */
  public static PieceChanged apply(LibraryFolder folder, PieceRequest request) {
    PieceChange made = new PieceChange(folder);
    if (request instanceof PieceRequest.Photograph photograph) {
      made.picture = Optional.of(PiecePicture.of(folder, photograph));
    }
    try (ChangeSet change = folder.change(request.words())) {
      OwnObject now = made.stage(request, change);
      int files = change.files();
      change.commit();
      made.effects.sort(Comparator.comparing(Effect::sort));
      return new PieceChanged(now.ref(), now.title(), made.effects, made.asKey, files);
    }
  }

  private OwnObject stage(PieceRequest request, ChangeSet change) {
    if (request instanceof PieceRequest.Add add) {
      OwnObject made = added(add);
      change.add(made);
      return made;
    }
    Stored<OwnObject> stored = piece(request.ref());
    OwnObject old = stored.value();
    OwnObject now;
    if (request instanceof PieceRequest.Describe describe) {
      now = described(old, describe.particulars());
    } else if (request instanceof PieceRequest.Observe observe) {
      now = observed(old, observe);
    } else if (request instanceof PieceRequest.Show show) {
      now = shown(old, show.evidence());
    } else {
      now = photographed(old, (PieceRequest.Photograph) request, change);
    }
    change.save(stored, now);
    return now;
  }

  private Stored<OwnObject> piece(String typed) {
    Optional<Stored<OwnObject>> exact = folder.findObject(typed);
    if (exact.isPresent()) {
      return exact.get();
    }
    List<String> refs = refs();
    for (String ref : refs) {
      if (ref.equalsIgnoreCase(typed)) {
        return folder.findObject(ref).orElseThrow();
      }
    }
    List<String> near = Nearest.to(typed, refs, MOST_NEAR);
    throw new ChangeRefusedException(
        "no piece of yours has the reference "
            + typed
            + (near.isEmpty()
                ? "; merese object add " + typed + " --title \"…\" records it"
                : "; did you mean " + String.join(" or ", near) + "?"));
  }

  private List<String> refs() {
    List<String> refs = new ArrayList<>();
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.OBJECT) {
        refs.add(file.name());
      }
    }
    return refs;
  }

  private OwnObject added(PieceRequest.Add add) {
    if (refs().contains(add.ref())) {
      throw new ChangeRefusedException(
          "there is a piece "
              + add.ref()
              + " already; merese object describe "
              + add.ref()
              + " says more of it");
    }
    Particulars of = add.particulars();
    OwnObject made =
        new OwnObject(
            add.ref(),
            of.title().orElseThrow(),
            of.measurements(),
            of.provenance(),
            of.place(),
            List.of(),
            List.of(),
            List.of());
    effects.add(new Effect(Sort.ADDED, "the piece " + add.ref()));
    told("measurements", Optional.empty(), of.measurements());
    told("provenance", Optional.empty(), of.provenance());
    told("place", Optional.empty(), of.place());
    return made;
  }

  private OwnObject described(OwnObject old, Particulars of) {
    return new OwnObject(
        old.ref(),
        told("title", Optional.of(old.title()), of.title()).orElseThrow(),
        told("measurements", old.measurements(), of.measurements()),
        told("provenance", old.provenance(), of.provenance()),
        told("place", old.place(), of.place()),
        old.evidence(),
        old.observations(),
        old.photographs());
  }

  /** What is so from now on. */
  private Optional<String> told(String part, Optional<String> old, Optional<String> said) {
    if (said.isEmpty() || said.equals(old)) {
      return old;
    }
    effects.add(
        new Effect(
            old.isPresent() ? Sort.RENAMED : Sort.ADDED,
            part + ": " + said.get() + old.map(o -> " (before: " + o + ")").orElse("")));
    return said;
  }

  private OwnObject observed(OwnObject old, PieceRequest.Observe request) {
    Observation observation = request.observation();
    observation.photo().ifPresent(photo -> requirePhoto(old, photo));
    List<Observation> all = new ArrayList<>();
    for (Observation each : old.observations()) {
      if (!isOfTheSame(each, observation)) {
        all.add(each);
      } else if (request.instead()) {
        effects.add(new Effect(Sort.DROPPED, each.words()));
      } else if (!each.equals(observation)) {
        all.add(each);
        effects.add(new Effect(Sort.STAYS, each.words() + " (--instead replaces it)"));
      }
    }
    all.add(observation);
    effects.add(new Effect(Sort.ADDED, observation.words() + ", " + observation.sense().code()));
    read(observation);
    return new OwnObject(
        old.ref(),
        old.title(),
        old.measurements(),
        old.provenance(),
        old.place(),
        old.evidence(),
        all,
        old.photographs());
  }

  private static boolean isOfTheSame(Observation one, Observation other) {
    return Folding.key(one.part()).equals(Folding.key(other.part()))
        && Folding.key(one.character()).equals(Folding.key(other.character()));
  }

  /** Says what the key to look-alikes makes of it. */
  private void read(Observation observation) {
    Stored<CharacterKey> own = folder.readCharacters();
    CharacterKey key =
        own.value().equals(CharacterKey.EMPTY) ? LibraryFolder.starterCharacters() : own.value();
    KeyReading reading = KeyReading.of(key, observation);
    if (reading.unread().isEmpty()) {
      asKey = Optional.of(reading.character().label() + ": " + reading.label());
    } else if (reading.character() == null) {
      List<String> near = near(key, observation.character());
      effects.add(
          new Effect(
              Sort.LOOK_AT,
              "identify does not read this: "
                  + reading.unread().get()
                  + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near))));
    } else {
      KeyCharacter character = reading.character();
      effects.add(
          new Effect(
              Sort.LOOK_AT,
              "identify does not read this: "
                  + reading.unread().get()
                  + (character.counted()
                      ? ""
                      : "; begin --value with one of " + String.join(", ", values(character)))));
    }
  }

  private static List<String> values(KeyCharacter character) {
    return character.values().stream().map(KeyCharacter.Value::label).toList();
  }

  /** Characters of the key by a word that is like one of those typed. */
  private static List<String> near(CharacterKey key, String typed) {
    List<String> near = new ArrayList<>();
    for (KeyCharacter character : key.characters()) {
      List<String> names = new ArrayList<>(character.alsoCalled());
      names.add(character.label());
      names.add(character.id());
      for (String word : typed.toLowerCase(Locale.ROOT).split(" ", -1)) {
        if (word.length() > 2
            && near.size() < MOST_NEAR
            && !near.contains(character.label())
            && !Nearest.to(word, names, 1).isEmpty()) {
          near.add(character.label());
        }
      }
    }
    return near;
  }

  private OwnObject shown(OwnObject old, Evidence evidence) {
    evidence.photo().ifPresent(photo -> requirePhoto(old, photo));
    boolean known =
        folder.scan().stream()
            .filter(file -> file.kind() == LibraryFile.Kind.VOCABULARY)
            .flatMap(file -> folder.readVocabulary(file.path()).value().concepts().stream())
            .anyMatch(concept -> concept.id().equals(evidence.concept()));
    if (!known) {
      throw new ChangeRefusedException("there is no concept " + evidence.concept());
    }
    List<Evidence> all = new ArrayList<>();
    boolean there = false;
    for (Evidence each : old.evidence()) {
      if (each.concept().equals(evidence.concept())) {
        there |= each.equals(evidence);
        effects.add(new Effect(Sort.DROPPED, "before: " + words(each)));
      } else {
        all.add(each);
      }
    }
    if (there) {
      effects.clear();
      return old;
    }
    all.add(evidence);
    effects.add(new Effect(Sort.ADDED, words(evidence)));
    return new OwnObject(
        old.ref(),
        old.title(),
        old.measurements(),
        old.provenance(),
        old.place(),
        all,
        old.observations(),
        old.photographs());
  }

  private static String words(Evidence evidence) {
    return (evidence.kind() == Evidence.Kind.MIXED ? "mixed example" : evidence.kind().words())
        + " of "
        + evidence.concept()
        + evidence.words().map(w -> ": " + w).orElse("")
        + evidence.photo().map(p -> " (photograph " + p + ")").orElse("");
  }

  private static void requirePhoto(OwnObject object, String photo) {
    List<String> ids = object.photographs().stream().map(Photograph::id).toList();
    if (!ids.contains(photo)) {
      throw new ChangeRefusedException(
          object.ref()
              + " has no photograph "
              + photo
              + (ids.isEmpty()
                  ? "; merese object photograph records one"
                  : "; it has " + String.join(", ", ids)));
    }
  }

  private OwnObject photographed(OwnObject old, PieceRequest.Photograph request, ChangeSet change) {
    List<String> ids = old.photographs().stream().map(Photograph::id).toList();
    String id = request.id().orElseGet(() -> next(ids));
    if (ids.contains(id)) {
      throw new ChangeRefusedException(
          old.ref() + " has a photograph " + id + " already; choose another --id");
    }
    String file = picture.orElseThrow().stage(change, old.ref(), id);
    for (Photograph each : old.photographs()) {
      if (each.file().equals(file)) {
        throw new ChangeRefusedException(file + " is photograph " + each.id() + " already");
      }
    }
    List<Photograph> all = new ArrayList<>(old.photographs());
    all.add(new Photograph(id, file, request.caption(), request.turn()));
    effects.add(
        new Effect(
            Sort.ADDED,
            "photograph " + id + ": " + file + request.caption().map(c -> ", " + c).orElse("")));
    return new OwnObject(
        old.ref(),
        old.title(),
        old.measurements(),
        old.provenance(),
        old.place(),
        old.evidence(),
        old.observations(),
        all);
  }

  private static String next(List<String> ids) {
    int number = ids.size() + 1;
    while (ids.contains("p" + number)) {
      number++;
    }
    return "p" + number;
  }
}
