package merese.change.notes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;

/** How a word goes on that somebody has begun in a {@link Sitting}: what is likeliest first. */
public final class Suggestions {
  /** What fits on a screen. */
  static final int MOST = 30;

  private final Sitting sitting;

  public Suggestions(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Terms: those that the source prints, the latest noted first, then those of the vocabulary. */
  public List<String> terms(String begun) {
    Set<String> terms = new LinkedHashSet<>(printed());
    for (Concept concept : sitting.shelf().thesaurus().concepts()) {
      terms.add(concept.preferred().text());
      concept.alternatives().forEach(label -> terms.add(label.text()));
    }
    return begunWith(begun, terms);
  }

  /** The terms that the source prints, the latest noted first. */
  public Set<String> printed() {
    Set<String> terms = new LinkedHashSet<>();
    List<Note> notes = sitting.edition().notes();
    for (int i = notes.size() - 1; i >= 0; i--) {
      for (Naming naming : notes.get(i).namings()) {
        terms.add(naming.printed());
      }
    }
    terms.remove("");
    return terms;
  }

  /** Ids of concepts. */
  public List<String> concepts(String begun) {
    List<String> ids = new ArrayList<>();
    sitting.shelf().thesaurus().concepts().forEach(c -> ids.add(c.id()));
    return begunWith(begun, ids);
  }

  /** Places: what is noted of the open page, the next one, and all others that are noted. */
  public List<String> places(String begun) {
    Set<String> places = new LinkedHashSet<>();
    if (sitting.page().isPresent()) {
      Locator page = sitting.page().get();
      for (Sitting.NotedThere noted : sitting.noted(page)) {
        noted.note().places().forEach(p -> places.add(p.locator().printed()));
      }
      page.stepped(1).ifPresent(next -> places.add(next.printed()));
      places.add(page.printed());
    }
    for (Note note : sitting.edition().notes()) {
      for (Place place : note.places()) {
        places.add(place.locator().printed());
      }
    }
    return begunWith(begun, places);
  }

  /** The ids of the source's entries and essays. */
  public List<String> parts(String begun) {
    return begunWith(begun, sitting.edition().parts().stream().map(Edition.Part::id).toList());
  }

  private static List<String> begunWith(String begun, Collection<String> words) {
    String folded = begun.toLowerCase(Locale.ROOT);
    List<String> fitting = new ArrayList<>();
    for (String word : words) {
      if (fitting.size() < MOST && word.toLowerCase(Locale.ROOT).startsWith(folded)) {
        fitting.add(word);
      }
    }
    return fitting;
  }
}
