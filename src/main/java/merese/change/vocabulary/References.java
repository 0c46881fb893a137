package merese.change.vocabulary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.CharacterKey;
import merese.model.KeyedKind;
import merese.model.KeyedKind.Allowed;
import merese.model.Mine;
import merese.model.Mine.Coinage;
import merese.model.Mine.Experience;
import merese.model.Mine.Preference;
import merese.model.Mine.SetAside;
import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * All that names a concept outside the vocabulary's own files: notes, the check log, scopes, the
 * user's opinions and pieces, the key to look-alikes. What a file says in somebody's own words is
 * not rewritten, only pointed out.
 */
final class References {
  private final LibraryFolder folder;
  private final String from;
  private final String to;
  private final List<Effect> effects;

  References(LibraryFolder folder, String from, String to, List<Effect> effects) {
    this.folder = folder;
    this.from = from;
    this.to = to;
    this.effects = effects;
  }

  /** Leads everything over and says what. */
  void follow(Sink sink) {
    WorkReferences works = WorkReferences.all(from, to);
    followWorks(works, sink);
    int notes = works.notes();
    if (notes > 0) {
      follows(
          many(notes, "note") + " in " + many(works.sources(), "source") + ", printed as they are");
    }
    if (works.checks() > 0) {
      follows(many(works.checks(), "line") + " of the check log");
    }
    if (works.scopes() > 0) {
      follows(many(works.scopes(), "scope") + " of sources and checks");
    }
    followObjects(sink);
    Stored<Mine> mine = folder.readMine();
    sink.save(mine, mine(mine.value()), List.of());
    Stored<CharacterKey> key = folder.readCharacters();
    sink.save(key, key(key.value()), List.of());
  }

  void followWorks(WorkReferences works, Sink sink) {
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK && mayName(file)) {
        Stored<Work> stored = folder.readWork(file.path());
        sink.save(stored, works.follow(stored.value()), List.of());
      }
    }
  }

  /** Most works of a large library do not; their text is not taken apart. */
  private boolean mayName(LibraryFile file) {
    try {
      String text = Files.readString(file.path(), StandardCharsets.UTF_8);
      return text.contains(from) || text.contains("\\u");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void followObjects(Sink sink) {
    List<String> refs = new ArrayList<>();
    for (LibraryFile file : folder.scan()) {
      if (file.kind() != LibraryFile.Kind.OBJECT) {
        continue;
      }
      Stored<OwnObject> stored = folder.readObject(file.path());
      OwnObject object = stored.value();
      if (object.evidence().stream().anyMatch(e -> e.concept().equals(from))) {
        refs.add(object.ref());
        sink.save(stored, withEvidence(object, evidence(object)), List.of());
      }
    }
    if (!refs.isEmpty()) {
      follows(
          "what "
              + many(refs.size(), "piece")
              + (refs.size() == 1 ? " of yours shows: " : " of yours show: ")
              + String.join(", ", refs));
    }
  }

  private List<Evidence> evidence(OwnObject object) {
    Set<Evidence> led = new LinkedHashSet<>();
    Set<Evidence.Kind> kinds = new LinkedHashSet<>();
    for (Evidence each : object.evidence()) {
      boolean follows = each.concept().equals(from);
      led.add(follows ? new Evidence(to, each.kind(), each.words(), each.photo()) : each);
      if (follows || each.concept().equals(to)) {
        kinds.add(each.kind());
      }
    }
    if (kinds.size() > 1) {
      lookAt(
          object.ref()
              + " now is "
              + String.join(" and ", kinds.stream().map(Evidence.Kind::words).toList())
              + " of "
              + to);
    }
    return List.copyOf(led);
  }

  private static OwnObject withEvidence(OwnObject object, List<Evidence> evidence) {
    return new OwnObject(
        object.ref(),
        object.title(),
        object.measurements(),
        object.provenance(),
        object.place(),
        evidence,
        object.observations(),
        object.photographs());
  }

  private Mine mine(Mine mine) {
    List<Coinage> coinages = new ArrayList<>();
    for (Coinage each : mine.coinages()) {
      if (each.concept().equals(from)) {
        follows("your coined label “" + each.label() + "”");
        coinages.add(new Coinage(each.label(), to, each.coiner(), each.on(), each.evidence()));
      } else {
        coinages.add(each);
      }
    }
    List<Experience> experience = new ArrayList<>();
    int led = 0;
    for (Experience each : mine.experience()) {
      boolean follows = each.concept().equals(from);
      led += follows ? 1 : 0;
      experience.add(
          follows
              ? new Experience(to, each.kind(), each.words(), each.pieces(), each.until())
              : each);
    }
    if (led > 0) {
      follows(many(led, "line") + " of your experience");
    }
    return new Mine(preferences(mine.preferences()), coinages, experience, mine.untraced());
  }

  /** A concept has one preference; that of the concept that stays is kept. */
  private List<Preference> preferences(List<Preference> all) {
    Optional<Preference> kept = of(all, to);
    Optional<Preference> going = of(all, from);
    if (going.isEmpty()) {
      return all;
    }
    Preference led = led(going.get());
    List<Preference> preferences = new ArrayList<>(all);
    if (kept.isEmpty()) {
      follows("your preference for “" + led.label() + "”");
      preferences.set(preferences.indexOf(going.get()), led);
      return preferences;
    }
    Preference both = withSetAside(kept.get(), led);
    preferences.set(preferences.indexOf(kept.get()), both);
    preferences.remove(going.get());
    effects.add(
        new Effect(
            Sort.STAYS,
            "your preference for “"
                + both.label()
                + "”; that for “"
                + led.label()
                + "”"
                + led.reason().map(reason -> " (" + reason + ")").orElse("")
                + " goes, and the labels that it set aside stay set aside"));
    return preferences;
  }

  private static Optional<Preference> of(List<Preference> all, String concept) {
    return all.stream().filter(p -> p.concept().equals(concept)).findFirst();
  }

  private Preference led(Preference p) {
    return new Preference(to, p.label(), p.reason(), p.setAside(), p.on());
  }

  private static Preference withSetAside(Preference kept, Preference other) {
    List<SetAside> aside = new ArrayList<>(kept.setAside());
    for (SetAside each : other.setAside()) {
      if (!each.label().equals(kept.label())
          && aside.stream().noneMatch(a -> a.label().equals(each.label()))) {
        aside.add(each);
      }
    }
    return new Preference(kept.concept(), kept.label(), kept.reason(), aside, kept.on());
  }

  private CharacterKey key(CharacterKey key) {
    Optional<KeyedKind> going = kind(key, from);
    if (going.isEmpty()) {
      return key;
    }
    Optional<KeyedKind> kept = kind(key, to);
    List<KeyedKind> kinds = new ArrayList<>();
    for (KeyedKind kind : key.kinds()) {
      if (kind.concept().equals(kept.isPresent() ? to : from)) {
        kinds.add(kept.isPresent() ? both(kind, going.get()) : new KeyedKind(to, kind.allows()));
      } else if (!kind.concept().equals(from)) {
        kinds.add(kind);
      }
    }
    if (kept.isEmpty()) {
      follows("its line in the key to look-alikes");
    }
    return new CharacterKey(key.basis(), key.characters(), kinds);
  }

  private static Optional<KeyedKind> kind(CharacterKey key, String concept) {
    return key.kinds().stream().filter(kind -> kind.concept().equals(concept)).findFirst();
  }

  /**
   * A kind that is two may show what either may; of a character that only one speaks of, nothing is
   * known of both.
   */
  private KeyedKind both(KeyedKind kept, KeyedKind going) {
    List<Allowed> allows = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    Map<String, Allowed> ofGoing = new LinkedHashMap<>();
    going.allows().forEach(allowed -> ofGoing.put(allowed.character(), allowed));
    for (Allowed allowed : kept.allows()) {
      Allowed other = ofGoing.remove(allowed.character());
      if (other == null) {
        silent.add(allowed.character());
      } else {
        Set<String> values = new LinkedHashSet<>(allowed.values());
        values.addAll(other.values());
        allows.add(new Allowed(allowed.character(), List.copyOf(values)));
      }
    }
    silent.addAll(ofGoing.keySet());
    follows("its line in the key to look-alikes: what either may show");
    if (!silent.isEmpty()) {
      lookAt(
          "the key now leaves open of "
              + to
              + ", since only one of the two spoke of it: "
              + String.join(", ", silent));
    }
    return new KeyedKind(to, allows);
  }

  /**
   * Where the id that goes stands in somebody's own words. One without a hyphen is a word of the
   * trade as well, and is not looked for.
   */
  static List<String> mentions(LibraryFolder folder, String id) {
    List<String> files = new ArrayList<>();
    if (id.indexOf('-') < 0) {
      return files;
    }
    for (LibraryFile file : folder.scan()) {
      boolean ownWords =
          switch (file.kind()) {
            case RECEIVED, SETTINGS, PAGES -> false;
            default -> true;
          };
      if (ownWords) {
        try {
          String text = Files.readString(file.path(), StandardCharsets.UTF_8);
          if (isMentioned(text, id)) {
            files.add(file.relative());
          }
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
    return files;
  }

  /** As a word among others: whole values of a key are references, and follow. */
  private static boolean isMentioned(String text, String id) {
    for (int at = text.indexOf(id); at >= 0; at = text.indexOf(id, at + 1)) {
      char before = at == 0 ? ' ' : text.charAt(at - 1);
      int end = at + id.length();
      char after = end == text.length() ? ' ' : text.charAt(end);
      boolean whole = before == '"' && after == '"';
      if (!whole && !isOfAnId(before) && !isOfAnId(after)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOfAnId(char c) {
    return Character.isLetterOrDigit(c) || c == '-' || c == '_';
  }

  private void follows(String what) {
    effects.add(new Effect(Sort.FOLLOWS, what));
  }

  private void lookAt(String what) {
    effects.add(new Effect(Sort.LOOK_AT, what));
  }

  static String many(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
