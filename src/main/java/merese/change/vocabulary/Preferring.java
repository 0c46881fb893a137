package merese.change.vocabulary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.change.ChangeRefusedException;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.model.Concept;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.Mine.Preference;
import merese.model.Mine.SetAside;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;

/** Records which label the user prefers for a concept, and why; it heads every answer. */
public final class Preferring {
  private final LibraryFolder folder;
  private final WholeVocabulary vocabulary;
  private final Thesaurus thesaurus;
  private final Stored<Mine> stored;
  private final List<Effect> effects = new ArrayList<>();

  private Preferring(LibraryFolder folder) {
    this.folder = folder;
    this.vocabulary = WholeVocabulary.read(folder);
    this.thesaurus = vocabulary.thesaurus();
    this.stored = folder.readMine();
  }

  /**
   * What is preferred.
   *
   * @param label empty to have no preference for the concept any more
   * @param concept its id
   */
  public record Request(
      Optional<String> label,
      String concept,
      Optional<String> reason,
      List<SetAside> setAside,
      Optional<LocalDate> on) {
    public Request {
      setAside = List.copyOf(setAside);
    }

    private String words() {
      return label
          .map(l -> "“" + l + "” preferred for " + concept)
          .orElse("no label preferred for " + concept);
    }
  }

  /**
   * Does it, all or nothing.
   *
   * @throws ChangeRefusedException where nobody uses the label for the concept
   */
  public static VocabularyChange apply(LibraryFolder folder, Request request) {
    try (ChangeSet change = folder.change(request.words())) {
      VocabularyChange made = new Preferring(folder).make(request, Sink.into(change));
      change.commit();
      return made;
    }
  }

  private VocabularyChange make(Request request, Sink sink) {
    Concept concept = vocabulary.concept(request.concept());
    Mine mine = stored.value();
    List<Preference> preferences = new ArrayList<>(mine.preferences());
    Optional<Preference> before =
        preferences.stream().filter(p -> p.concept().equals(concept.id())).findFirst();
    if (request.label().isEmpty()) {
      Preference goes =
          before.orElseThrow(
              () -> new ChangeRefusedException("you prefer no label for " + concept.id()));
      preferences.remove(goes);
      effects.add(new Effect(Sort.DROPPED, "your preference for " + words(goes)));
    } else {
      Preference preferred = preferred(request, concept, before);
      if (before.isPresent()) {
        preferences.set(preferences.indexOf(before.get()), preferred);
        effects.add(new Effect(Sort.RENAMED, "your preference: " + words(preferred)));
        effects.add(new Effect(Sort.DROPPED, "before: " + words(before.get())));
      } else {
        preferences.add(preferred);
        effects.add(new Effect(Sort.ADDED, "your preference: " + words(preferred)));
      }
      setAside(preferred, request.setAside());
      warn(preferred);
    }
    sink.save(
        stored,
        new Mine(preferences, mine.coinages(), mine.experience(), mine.untraced()),
        List.of());
    effects.sort(Comparator.comparing(Effect::sort));
    return new VocabularyChange(
        concept.id(), Thesaurus.display(concept.preferred()), effects, List.of(), sink.files());
  }

  private Preference preferred(Request request, Concept concept, Optional<Preference> before) {
    String label = known(request.label().get(), concept);
    List<SetAside> aside = new ArrayList<>(request.setAside());
    for (SetAside each : request.setAside()) {
      if (thesaurus.areSameWords(each.label(), label)) {
        throw new ChangeRefusedException("“" + label + "” cannot be preferred and set aside");
      }
    }
    for (SetAside each : before.map(Preference::setAside).orElse(List.of())) {
      if (!thesaurus.areSameWords(each.label(), label)
          && aside.stream().noneMatch(a -> thesaurus.areSameWords(a.label(), each.label()))) {
        aside.add(each);
      }
    }
    return new Preference(concept.id(), label, request.reason(), aside, request.on());
  }

  /** The label as it is spelt where it is known. */
  private String known(String typed, Concept concept) {
    List<String> words = new ArrayList<>(thesaurus.wordsFor(concept.id()));
    stored.value().coinages().stream()
        .filter(c -> c.concept().equals(concept.id()))
        .forEach(c -> words.add(c.label()));
    if (words.contains(typed)) {
      return typed;
    }
    for (String word : words) {
      if (thesaurus.areSameWords(word, typed)) {
        return word;
      }
    }
    for (PrintedUses.Use use : PrintedUses.of(folder, thesaurus, concept.id(), typed).namings()) {
      if (thesaurus.areSameWords(use.printed(), typed)) {
        return typed;
      }
    }
    throw new ChangeRefusedException(
        "“"
            + typed
            + "” is no label of "
            + concept.id()
            + ", is not coined for it, and no note on it prints it; add it first: merese concept"
            + " describe "
            + concept.id()
            + " --alternative \""
            + typed
            + "\", or merese coin \""
            + typed
            + "\" --for "
            + concept.id());
  }

  private void setAside(Preference preferred, List<SetAside> said) {
    for (SetAside each : preferred.setAside()) {
      effects.add(
          new Effect(
              said.contains(each) ? Sort.ADDED : Sort.STAYS,
              "set aside: “"
                  + each.label()
                  + "”"
                  + each.reason().map(reason -> " (" + reason + ")").orElse("")));
    }
  }

  private void warn(Preference preferred) {
    Set<String> others = new TreeSet<>();
    vocabulary.withWord(preferred.label(), preferred.concept()).forEach(c -> others.add(c.id()));
    vocabulary.registered(preferred.label()).map(Homonym::concepts).ifPresent(others::addAll);
    others.remove(preferred.concept());
    if (!others.isEmpty()) {
      effects.add(
          new Effect(
              Sort.LOOK_AT,
              "“"
                  + preferred.label()
                  + "” also means "
                  + String.join(", ", others)
                  + ": whoever asks by it is asked which"));
    }
  }

  private static String words(Preference preference) {
    return "“"
        + preference.label()
        + "”"
        + preference.reason().map(reason -> " (" + reason.replace('-', ' ') + ")").orElse("");
  }
}
