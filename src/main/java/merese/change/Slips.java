package merese.change;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Edition;
import merese.model.LocatorKind;
import merese.model.Mine;
import merese.model.Mine.Preference;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.PageBreaks;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Stance;
import merese.model.QuotedText;
import merese.model.Work;
import merese.store.LibraryException;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;
import merese.store.Stored;

/** What is allowed and yet likely to be a slip of the pen: warnings, never errors. */
final class Slips {
  private final LibraryFolder folder;
  private final List<Problem> problems = new ArrayList<>();
  private int notes;

  Slips(LibraryFolder folder) {
    this.folder = folder;
  }

  List<Problem> problems() {
    return problems;
  }

  /** How many notes have been seen. */
  int notes() {
    return notes;
  }

  Work work(Stored<Work> file) {
    for (Edition edition : file.value().editions()) {
      for (Note note : edition.notes()) {
        notes++;
        note.places().stream()
            .filter(Slips::isPlateAsText)
            .forEach(place -> plateAsText(file, edition, note, place));
        note.quotation().ifPresent(quotation -> pageBreaks(file, edition, note, quotation));
      }
    }
    return file.value();
  }

  /** A text that says what a plate does not show is no slip. */
  private static boolean isPlateAsText(Place place) {
    return place.medium() == Medium.TEXT
        && place.stance() != Stance.SAYS_ABSENT
        && place.stance() != Stance.CORRECTS
        && place.locator().labelKind() != LocatorKind.INSERT // a leaf of text may face a page too
        && place.locator().usuallyPicture();
  }

  private void plateAsText(Stored<Work> file, Edition edition, Note note, Place place) {
    String locator = place.locator().printed();
    warn(
        file,
        Position.of(file.content(), edition.key(), note.id(), locator),
        edition.key() + ", " + note.id(),
        "\"" + locator + "\" usually is a picture, but its medium is \"text\"",
        "if it is pictured there, write medium \"photo\" or \"drawing\" and stance \"pictures\";"
            + " for words beneath it, medium \"caption\"");
  }

  private void pageBreaks(Stored<Work> file, Edition edition, Note note, String quotation) {
    Optional<String> doubt = PageBreaks.of(note).doubt();
    if (QuotedText.of(quotation).breaks() > 0 && doubt.isPresent()) {
      warn(
          file,
          Position.of(file.content(), edition.key(), note.id(), quotation),
          edition.key() + ", " + note.id(),
          "in the quotation " + doubt.get(),
          "write a range such as \"pp. 41–42\" as a place; a bar that the source prints is \"||\"");
    }
  }

  /** A library without the folder of pictures keeps its photographs elsewhere. */
  void object(Stored<OwnObject> file) {
    Path pictures = folder.resolve("pictures");
    if (!Files.isDirectory(pictures)) {
      return;
    }
    for (OwnObject.Photograph photograph : file.value().photographs()) {
      if (!isThere(photograph.file())) {
        warn(
            file,
            Position.of(file.content(), "photographs", photograph.id(), photograph.file()),
            photograph.id(),
            "there is no file \"" + photograph.file() + "\" in " + pictures.getFileName(),
            "put the photograph there, or correct \"file\"");
      }
    }
  }

  /** One that would not be in the folder is the store's to report. */
  private boolean isThere(String name) {
    try {
      return Files.exists(folder.picture(name));
    } catch (LibraryException e) {
      return true;
    }
  }

  void mine(Stored<Mine> file) {
    Set<String> seen = new HashSet<>();
    for (Preference preference : file.value().preferences()) {
      if (!seen.add(preference.concept())) {
        warn(
            file,
            Position.of(file.content(), "preferences", preference.concept(), preference.concept()),
            "preferences",
            "there are two preferences for " + preference.concept() + ", and the first one counts",
            "keep one of them");
      }
    }
  }

  private void warn(Stored<?> file, Position at, String where, String what, String remedy) {
    problems.add(
        new Problem(file.file(), at.line(), at.column(), where, what, remedy, Severity.WARNING));
  }
}
