package merese.change.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.Note;
import merese.model.Work;
import merese.model.WorkLink;
import merese.store.ChangeSet;
import merese.store.LibraryException;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;

/**
 * Puts right what can be put right without knowing better than the user: what stands there twice,
 * word for word, and what killed saves have left behind. What a source prints is never touched.
 */
public final class Mending {
  private final LibraryFolder folder;
  private final ChangeSet change;
  private final List<Mended> mended = new ArrayList<>();

  private Mending(LibraryFolder folder, ChangeSet change) {
    this.folder = folder;
    this.change = change;
  }

  /**
   * What was put right.
   *
   * @param change what the history calls the change; empty where no file of the library was wrong
   */
  public record Done(List<Mended> mended, OptionalInt change) {
    public Done {
      mended = List.copyOf(mended);
    }
  }

  /** Does it as one change; what is returned has been done. */
  public static Done apply(LibraryFolder folder) {
    List<Path> before = folder.leftovers();
    try (ChangeSet change = folder.change("check --fix")) {
      Mending mending = new Mending(folder, change);
      before.stream().filter(path -> !Files.exists(path)).forEach(mending::takenAway);
      folder.scan().forEach(mending::file);
      change.commit();
      mending.leftovers();
      return new Done(mending.mended, change.number());
    }
  }

  private void leftovers() {
    for (Path leftover : folder.leftovers()) {
      try {
        if (Files.deleteIfExists(leftover)) {
          takenAway(leftover);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A staging folder goes when the next change starts. */
  private void takenAway(Path leftover) {
    mended.add(new Mended(leftover, "left behind by a save that was killed; taken away"));
  }

  private void file(LibraryFile file) {
    try {
      switch (file.kind()) {
        case WORK -> work(folder.readWork(file.path()));
        case VOCABULARY -> vocabulary(folder.readVocabulary(file.path()));
        default -> {}
      }
    } catch (LibraryException e) {
      // It cannot be read: the check that follows says why.
    }
  }

  private void work(Stored<Work> file) {
    Work work = file.value();
    List<String> titles =
        once(file, work.alternateTitles(), title -> "the other title \"" + title + "\"");
    List<WorkLink> links =
        once(file, work.links(), link -> "the link " + link.kind().code() + " " + link.to());
    List<Edition> editions = new ArrayList<>();
    for (Edition edition : work.editions()) {
      List<Check> checks =
          once(
              file,
              edition.checks(),
              check -> edition.key() + ": the check for " + check.concept());
      editions.add(edition.withChecks(checks).withNotes(notes(file, edition)));
    }
    change.save(file, work.withAlternateTitles(titles).withLinks(links).withEditions(editions));
  }

  /** Nothing refers to a note by its id, so the later of two that are else alike can go. */
  private List<Note> notes(Stored<Work> file, Edition edition) {
    Map<Note, String> first = new HashMap<>();
    List<Note> kept = new ArrayList<>();
    for (Note note : edition.notes()) {
      String before = first.putIfAbsent(note.withId("any"), note.id());
      if (before == null) {
        kept.add(note);
      } else {
        mended.add(
            new Mended(
                file.file(),
                edition.key()
                    + ": the note "
                    + note.id()
                    + " said word for word what "
                    + before
                    + " says; "
                    + before
                    + " is kept"));
      }
    }
    return kept;
  }

  private void vocabulary(Stored<VocabularyFile> file) {
    List<Concept> concepts = new ArrayList<>();
    for (Concept concept : file.value().concepts()) {
      Function<Concept.Label, String> words =
          label -> concept.id() + ": the label \"" + label.text() + "\"";
      concepts.add(
          new Concept(
              concept.id(),
              concept.facet(),
              concept.preferred(),
              once(file, concept.alternatives(), words),
              once(file, concept.hidden(), words),
              concept.definition(),
              concept.broader(),
              concept.lookAlikes(),
              concept.lookAlikeRemark(),
              concept.status(),
              concept.matches()));
    }
    change.save(file, new VocabularyFile(file.value().facet(), concepts));
  }

  private <T> List<T> once(Stored<?> file, List<T> all, Function<T, String> words) {
    Set<T> kept = new LinkedHashSet<>();
    for (T one : all) {
      if (!kept.add(one)) {
        mended.add(
            new Mended(file.file(), words.apply(one) + " stood there twice; one of them is kept"));
      }
    }
    return List.copyOf(kept);
  }
}
