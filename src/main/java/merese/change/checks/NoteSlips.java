package merese.change.checks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Edition.Part;
import merese.model.Locator;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Work;
import merese.store.Stored;
import merese.time.Edtf;
import merese.time.EdtfException;

/** What is likely to be wrong in the notes of one edition, held against the edition. */
final class NoteSlips {
  /** All that a note says but for its number and what the user makes of it. */
  private record Said(
      List<Naming> namings, List<Place> places, List<Claim> claims, Optional<String> quotation) {}

  private final Stored<Work> file;
  private final Edition edition;
  private final Findings findings;
  private final Map<String, Reach> parts = new HashMap<>();
  private final Optional<ArticlePages> whole;

  NoteSlips(Stored<Work> file, Edition edition, Findings findings) {
    this.file = file;
    this.edition = edition;
    this.findings = findings;
    for (Part part : edition.parts()) {
      part.extent().ifPresent(extent -> parts.put(part.id(), Reach.of(extent)));
    }
    whole = ArticlePages.of(edition);
  }

  void look() {
    Map<Said, String> said = new HashMap<>();
    for (Note note : edition.notes()) {
      Said now = new Said(note.namings(), note.places(), note.claims(), note.quotation());
      String before = said.putIfAbsent(now, note.id());
      if (before != null) {
        warn(
            note,
            "this note says just what " + before + " says: the same terms, places and claims",
            "remove one of the two, as with merese remove " + edition.key() + " " + note.id());
      }
      for (Place place : note.places()) {
        place(note, place);
      }
      note.part().map(parts::get).ifPresent(reach -> part(note, reach));
      if (note.quotation().isPresent() && note.places().stream().noneMatch(NoteSlips::isInWords)) {
        warn(
            note,
            "the quotation has no page: no place of this note is in words",
            "add the place that it is from, such as {\"locator\": \"p. 41\", \"stance\": \"names\","
                + " \"medium\": \"text\"}");
      }
      for (Claim claim : note.claims()) {
        date(note, claim);
      }
    }
  }

  private void place(Note note, Place place) {
    Locator locator = place.locator();
    whole
        .flatMap(article -> article.outside(locator))
        .ifPresent(what -> warn(note, place, what, "correct the one or the other"));
    OptionalInt volumes = edition.imprint().volumes();
    if (volumes.isPresent() && lastVolume(locator) > volumes.getAsInt()) {
      warn(
          note,
          place,
          "names volume "
              + lastVolume(locator)
              + ", but this edition has "
              + (volumes.getAsInt() == 1 ? "1 volume" : volumes.getAsInt() + " volumes"),
          "correct the locator, or \"volumes\"");
    }
  }

  private static long lastVolume(Locator locator) {
    if (locator.labelKind() != LocatorKind.VOLUME) {
      return 0;
    }
    long last = 0;
    for (Locator member : locator.members()) {
      LocatorLevel first = member.levels().get(0);
      if (first.kind() == LocatorKind.VOLUME) {
        last = Math.max(last, first.number().map(n -> n.value()).orElse(0L));
      }
    }
    return last;
  }

  /** A picture of what a part treats may be printed elsewhere. */
  private void part(Note note, Reach reach) {
    boolean inside = note.places().stream().anyMatch(p -> reach.holds(p.locator()));
    for (Place place : note.places()) {
      if (reach.leavesOut(place.locator()) && !(inside && place.medium().isPicture())) {
        Part part =
            edition.parts().stream()
                .filter(p -> p.id().equals(note.part().get()))
                .findFirst()
                .get();
        warn(
            note,
            place,
            "is not in the part " + part.id() + ", which has " + part.extent().get(),
            "correct the locator, \"part\" or the part's \"extent\"");
      }
    }
  }

  /** Whether a quotation can be from there. */
  private static boolean isInWords(Place place) {
    List<LocatorLevel> levels = place.locator().levels();
    LocatorKind kind = levels.get(levels.size() - 1).kind();
    return switch (kind) {
      case VOLUME, PART -> false;
      case PLATE,
          COLOUR_PLATE,
          FIGURE,
          PHOTO,
          FRONTISPIECE,
          INSERT,
          FRONT_ENDPAPER,
          BACK_ENDPAPER ->
          !place.medium().isPicture() || levels.size() > 1;
      default -> true;
    };
  }

  private void date(Note note, Claim claim) {
    if (claim.kind() != Claim.Kind.DATE || claim.value().isEmpty()) {
      return;
    }
    try {
      Edtf.parse(claim.value().get());
    } catch (EdtfException e) {
      findings.warn(
          file,
          Position.inNote(file.content(), edition.key(), note.id(), claim.value().get()),
          edition.key() + ", " + note.id(),
          "the value \"" + claim.value().get() + "\" of a date is no EDTF: " + e.problem(),
          e.remedy() + "; without a value, the words are read");
    }
  }

  private void warn(Note note, String what, String remedy) {
    findings.warn(
        file,
        Position.inNote(file.content(), edition.key(), note.id()),
        edition.key() + ", " + note.id(),
        what,
        remedy);
  }

  private void warn(Note note, Place place, String what, String remedy) {
    String locator = place.locator().printed();
    findings.warn(
        file,
        Position.inNote(file.content(), edition.key(), note.id(), locator),
        edition.key() + ", " + note.id(),
        "\"" + locator + "\" " + what,
        remedy);
  }
}
