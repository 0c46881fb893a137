package merese.answer.claims;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.ConceptLine;
import merese.answer.SourceLines;
import merese.answer.claims.ClaimsAnswer.DateLine;
import merese.answer.claims.ClaimsAnswer.PlaceLine;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.PlaceTest;
import merese.vocabulary.Thesaurus;

/** Makes a row of each claim of a note. */
final class RowMaker {
  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final DateLines dates;
  private final PlaceLines places;

  RowMaker(Thesaurus thesaurus, SourceLines lines, DateLines dates, PlaceLines places) {
    this.thesaurus = thesaurus;
    this.lines = lines;
    this.dates = dates;
    this.places = places;
  }

  /**
   * A claim as a row.
   *
   * @param wanted the concept asked for, and all that is narrower
   */
  Row row(Classified classified, Claim claim, String asked, Set<String> wanted) {
    Note note = classified.sourced().note();
    String concept = classified.naming().concept().get();
    List<Locator> pictured = new ArrayList<>();
    List<Locator> inWords = new ArrayList<>();
    boolean inCaption = locate(classified, claim, pictured, inWords);
    return new Row(
        lines.of(classified.sourced().source()),
        note.id(),
        line(concept),
        !concept.equals(asked),
        others(note, concept, wanted),
        claim.kind(),
        claim.about(),
        claim.words(),
        claim.hedge(),
        claim.bracket(),
        claim.value(),
        pictured,
        inWords,
        inCaption,
        date(claim),
        place(claim),
        note.object().isPresent()
            ? Optional.of(note.object().get().sameness().code() + ": " + note.object().get().ref())
            : Optional.empty(),
        Optional.empty());
  }

  private ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  private Optional<DateLine> date(Claim claim) {
    return claim.kind() == Claim.Kind.DATE || claim.kind() == Claim.Kind.COPY_WARNING
        ? Optional.of(dates.of(claim))
        : Optional.empty();
  }

  private Optional<PlaceLine> place(Claim claim) {
    return claim.kind() == Claim.Kind.PLACE ? Optional.of(places.of(claim)) : Optional.empty();
  }

  /** What else the note is about; the claim does not say of which it is. */
  private List<ConceptLine> others(Note note, String concept, Set<String> wanted) {
    List<ConceptLine> others = new ArrayList<>();
    for (Naming naming : note.namings()) {
      Optional<String> other = naming.concept();
      if (other.isPresent()
          && !other.get().equals(concept)
          && !wanted.contains(other.get())
          && !others.contains(line(other.get()))) {
        others.add(line(other.get()));
      }
    }
    return others;
  }

  /** The claim's own locator, or those of its note; whether a caption alone says it. */
  private static boolean locate(
      Classified classified, Claim claim, List<Locator> pictured, List<Locator> inWords) {
    boolean caption = false;
    boolean text = false;
    for (Place place : classified.places()) {
      if (PlaceTest.ABSENCE.holds(place)
          || claim.locator().isPresent() && !claim.locator().get().equals(place.locator())) {
        continue;
      }
      caption |= place.medium() == Medium.CAPTION;
      text |= place.medium() == Medium.TEXT;
      if (claim.locator().isEmpty()) {
        List<Locator> among = place.medium().isPicture() ? pictured : inWords;
        if (!pictured.contains(place.locator()) && !among.contains(place.locator())) {
          among.add(place.locator());
        }
      }
    }
    if (claim.locator().isPresent()) {
      inWords.add(claim.locator().get());
    }
    inWords.removeAll(pictured);
    Collections.sort(pictured);
    Collections.sort(inWords);
    return caption && !text;
  }
}
