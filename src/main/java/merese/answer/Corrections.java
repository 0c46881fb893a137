package merese.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PageBreaks;
import merese.model.Place;
import merese.model.Place.Corrected;
import merese.model.Place.Stance;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/**
 * Errata beside what they correct. A correction says which edition it corrects, and mostly where in
 * it. One that names a place belongs to the notes with that place that mean the same; where none
 * does, since an erratum may change the very name, to those of the same facet. One that names no
 * place belongs to the notes of the edition that mean just the same.
 */
public final class Corrections {
  private final Shelf shelf;
  private final SourceLines lines;
  private final Thesaurus thesaurus;
  private final Map<String, Source> sources = new HashMap<>();
  private final Map<String, List<SourcedNote>> known = new HashMap<>();
  private final Map<String, List<SourcedNote>> bySource = new HashMap<>();

  public Corrections(Shelf shelf, SourceLines lines) {
    this.shelf = shelf;
    this.lines = lines;
    this.thesaurus = shelf.thesaurus();
    for (Source source : shelf.sources()) {
      sources.put(source.key(), source);
    }
  }

  /** The corrections of a note, by year of the source that corrects. */
  public List<Correction> of(SourcedNote sourced) {
    List<Correction> corrections = new ArrayList<>();
    for (SourcedNote correcting : correcting(sourced.source().key())) {
      Set<Locator> at = new TreeSet<>();
      Optional<Locator> corrected = Optional.empty();
      for (Place place : correcting.note().places()) {
        if (place.corrects().isPresent()
            && isOf(correcting.note(), place.corrects().get(), sourced)) {
          at.add(place.locator());
          corrected = corrected.or(place.corrects().get()::locator);
        }
      }
      if (!at.isEmpty() && !correcting.equals(sourced)) {
        corrections.add(correction(correcting, at, corrected));
      }
    }
    return corrections;
  }

  /** All that corrects an edition, whether or not there is a note on what it corrects. */
  public List<Correction> ofSource(String key) {
    List<Correction> corrections = new ArrayList<>();
    for (SourcedNote correcting : correcting(key)) {
      Set<Locator> at = new TreeSet<>();
      Optional<Locator> corrected = Optional.empty();
      for (Place place : correcting.note().places()) {
        if (place.corrects().isPresent() && place.corrects().get().edition().equals(key)) {
          at.add(place.locator());
          corrected = corrected.or(place.corrects().get()::locator);
        }
      }
      corrections.add(correction(correcting, at, corrected));
    }
    return corrections;
  }

  private Correction correction(
      SourcedNote correcting, Set<Locator> at, Optional<Locator> corrected) {
    return new Correction(
        lines.of(correcting.source()),
        correcting.note().id(),
        List.copyOf(at),
        corrected,
        words(correcting.note()),
        correcting.source().mine());
  }

  /**
   * What a note that corrects says that it corrects: each as "Quenby 1926, p. 61", or none where
   * the note does not name it.
   */
  public List<String> correctedBy(Note note) {
    List<String> corrected = new ArrayList<>();
    for (Place place : note.places()) {
      if (place.corrects().isPresent()) {
        Corrected what = place.corrects().get();
        Source source = sources.get(what.edition());
        String of = source == null ? what.edition() : lines.reference(source);
        corrected.add(what.locator().isPresent() ? of + ", " + what.locator().get() : of);
      }
    }
    return corrected;
  }

  /** Whether a note is a correction, whatever of. */
  public static boolean isCorrection(Note note) {
    for (Place place : note.places()) {
      if (place.stance() == Stance.CORRECTS) {
        return true;
      }
    }
    return false;
  }

  private List<SourcedNote> correcting(String edition) {
    List<SourcedNote> found = known.get(edition);
    if (found == null) {
      found = new ArrayList<>(shelf.notes(List.of(new NoteCriterion.Corrects(edition))));
      found.sort(
          (a, b) -> {
            int byYear = Source.BY_YEAR.compare(a.source(), b.source());
            return byYear != 0 ? byYear : first(a.note()).compareTo(first(b.note()));
          });
      known.put(edition, found);
    }
    return found;
  }

  private static Locator first(Note note) {
    List<Locator> places = new ArrayList<>();
    for (Place place : note.places()) {
      places.add(place.locator());
    }
    return Collections.min(places);
  }

  private boolean isOf(Note correcting, Corrected what, SourcedNote sourced) {
    return what.edition().equals(sourced.source().key())
        && (what.locator().isEmpty()
            ? sharesMeaning(correcting, sourced.note())
            : at(what.locator().get(), correcting, sourced.source()).contains(sourced));
  }

  private List<SourcedNote> at(Locator corrected, Note correcting, Source source) {
    List<SourcedNote> same = new ArrayList<>();
    List<SourcedNote> alike = new ArrayList<>();
    for (SourcedNote note : notesOf(source)) {
      if (isAt(corrected, note.note())) {
        if (sharesMeaning(correcting, note.note())) {
          same.add(note);
        } else if (sharesFacet(correcting, note.note())) {
          alike.add(note);
        }
      }
    }
    return same.isEmpty() ? alike : same;
  }

  private List<SourcedNote> notesOf(Source source) {
    List<SourcedNote> notes = bySource.get(source.key());
    if (notes == null) {
      notes = shelf.notesOf(source);
      bySource.put(source.key(), notes);
    }
    return notes;
  }

  private static boolean isAt(Locator corrected, Note note) {
    Set<Locator> members = new HashSet<>(corrected.members());
    for (Place place : note.places()) {
      if (place.locator().equals(corrected)
          || !Collections.disjoint(members, place.locator().members())) {
        return true;
      }
    }
    return false;
  }

  private static boolean sharesMeaning(Note one, Note other) {
    return !Collections.disjoint(meanings(one), meanings(other));
  }

  /** A note without a meaning may have any. */
  private boolean sharesFacet(Note one, Note other) {
    Set<String> here = facets(one);
    Set<String> there = facets(other);
    return here.isEmpty() || there.isEmpty() || !Collections.disjoint(here, there);
  }

  private Set<String> facets(Note note) {
    Set<String> facets = new HashSet<>();
    for (String id : meanings(note)) {
      thesaurus.concept(id).ifPresent(concept -> facets.add(concept.facet()));
    }
    return facets;
  }

  private static Set<String> meanings(Note note) {
    Set<String> meanings = new HashSet<>();
    for (Naming naming : note.namings()) {
      naming.concept().ifPresent(meanings::add);
    }
    return meanings;
  }

  private static List<String> words(Note note) {
    if (note.quotation().isPresent()) {
      return List.of(PageBreaks.of(note).marked());
    }
    List<String> words = new ArrayList<>();
    for (Claim claim : note.claims()) {
      words.add(claim.words());
    }
    return words;
  }
}
