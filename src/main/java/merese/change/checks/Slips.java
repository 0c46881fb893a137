package merese.change.checks;

import java.nio.file.Files;
import java.util.HashSet;
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
import merese.store.Stored;

/** What is allowed in one place and yet likely to be a slip of the pen. */
final class Slips {
  private static final String PICTURES = "pictures";

  private final LibraryFolder folder;
  private final Findings findings;

  Slips(LibraryFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  void work(Stored<Work> file) {
    for (Edition edition : file.value().editions()) {
      for (Note note : edition.notes()) {
        note.places().stream()
            .filter(Slips::isPlateAsText)
            .forEach(place -> plateAsText(file, edition, note, place));
        note.quotation().ifPresent(quotation -> pageBreaks(file, edition, note, quotation));
        note.places().stream()
            .flatMap(place -> place.photo().stream())
            .forEach(
                photo ->
                    fault(photo).ifPresent(what -> wrongPhoto(file, edition, note, photo, what)));
      }
    }
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
    findings.warn(
        file,
        Position.inNote(file.content(), edition.key(), note.id(), locator),
        edition.key() + ", " + note.id(),
        "\"" + locator + "\" usually is a picture, but its medium is \"text\"",
        "if it is pictured there, write medium \"photo\" or \"drawing\" and stance \"pictures\";"
            + " for words beneath it, medium \"caption\"");
  }

  private void pageBreaks(Stored<Work> file, Edition edition, Note note, String quotation) {
    Optional<String> doubt = PageBreaks.of(note).doubt();
    if (QuotedText.of(quotation).breaks() > 0 && doubt.isPresent()) {
      findings.warn(
          file,
          Position.inNote(file.content(), edition.key(), note.id(), quotation),
          edition.key() + ", " + note.id(),
          "in the quotation " + doubt.get(),
          "write a range such as \"pp. 41–42\" as a place; a bar that the source prints is \"||\"");
    }
  }

  /** Merese put it there itself, so one that is missing was moved or deleted since. */
  private void wrongPhoto(
      Stored<Work> file, Edition edition, Note note, String photo, String what) {
    findings.warn(
        file,
        Position.inNote(file.content(), edition.key(), note.id(), photo),
        edition.key() + ", " + note.id(),
        what,
        "put the photograph there, or correct \"photo\"");
  }

  void object(Stored<OwnObject> file) {
    for (OwnObject.Photograph photograph : file.value().photographs()) {
      String name = photograph.file();
      if (!isThere(name) && hasFolderOf(name)) {
        findings.warn(
            file,
            Position.of(file.content(), "photographs", photograph.id(), name),
            photograph.id(),
            noFile(name),
            "put the photograph there, or correct \"file\"");
      }
    }
  }

  /** What is wrong with the file of a picture: it is not there, or is a link out of the folder. */
  private Optional<String> fault(String name) {
    try {
      return Files.exists(folder.picture(name)) ? Optional.empty() : Optional.of(noFile(name));
    } catch (LibraryException e) {
      return Optional.of(e.problems().get(0).what());
    }
  }

  private static String noFile(String name) {
    return "there is no file \"" + name + "\" in " + PICTURES;
  }

  /**
   * Whether the folder that it is said to be in is there: the photographs of a piece may be kept
   * elsewhere altogether, and none of those is a slip.
   */
  private boolean hasFolderOf(String name) {
    int slash = name.lastIndexOf('/');
    String parent = slash < 0 ? "" : name.substring(0, slash);
    return Files.isDirectory(folder.resolve(PICTURES).resolve(parent));
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
        findings.warn(
            file,
            Position.of(file.content(), "preferences", preference.concept(), preference.concept()),
            "preferences",
            "there are two preferences for " + preference.concept() + ", and the first one counts",
            "keep one of them");
      }
    }
  }
}
