package merese.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import merese.model.Concept;
import merese.model.PageText;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.store.PlainFiles;
import merese.store.VocabularyFile;

/**
 * A library as a society's union list would be: of any number of invented works, notes and pages,
 * with the starter vocabulary grown in step. The same numbers give the same bytes on any machine.
 * Words and concepts are as unevenly spread as in life: Zipf's law, by which the word of rank r is
 * met 1/r times as often as the first ("The Psycho-Biology of Language", 1935, from memory).
 *
 * <p>Each work is made from its number alone, so that none need be kept.
 */
public final class UnionList {
  /** What twenty works following each other have of a hundred notes. */
  private static final int[] SHARES = {
    36, 1, 5, 0, 2, 8, 0, 3, 1, 14, 0, 2, 4, 0, 1, 10, 1, 3, 0, 9
  };

  private static final int SHARED = 100;

  /** The pages of one work in so many are there, of its last edition. */
  private static final int WORKS_A_BOOK = 20;

  /** What ten books following each other have of a hundred pages. */
  private static final int[] BOOKS = {10, 2, 40, 5, 3, 8, 1, 20, 4, 7};

  /** As if the library had lain there: no file is so fresh that its time could not be trusted. */
  private static final FileTime WRITTEN = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));

  private final int works;
  private final int notes;
  private final int pages;
  private final UnionWords words = new UnionWords();
  private final UnionThesaurus thesaurus;

  private UnionList(int works, int notes, int pages) {
    this.works = works;
    this.notes = notes;
    this.pages = pages;
    this.thesaurus = new UnionThesaurus(words, works);
  }

  /**
   * @param works how many
   * @param notes how many all of them have together
   */
  public static UnionList of(int works, int notes) {
    return of(works, notes, 0);
  }

  /**
   * @param works how many
   * @param notes how many all of them have together
   * @param pages how many pages of books there are the words of
   */
  public static UnionList of(int works, int notes, int pages) {
    return new UnionList(works, notes, pages);
  }

  public int works() {
    return works;
  }

  public int notes() {
    return notes;
  }

  /** All concepts, the one that the notes name most often first. */
  public List<Concept> concepts() {
    return thesaurus.byRank();
  }

  /** The id of a concept, as often as notes name it. */
  public String namedConcept(Random random) {
    return thesaurus.next(random).id();
  }

  /** A word, as often as texts have it. */
  public String word(Random random) {
    return words.next(random);
  }

  /**
   * @param number from 0
   */
  public Work work(int number) {
    int own = (int) (notesBefore(number + 1) - notesBefore(number));
    Optional<String> earlier =
        number == 0 ? Optional.empty() : Optional.of(id(random(number, 2).nextInt(number)));
    return new UnionSources(words, thesaurus, number, id(number), random(number, 1))
        .work(own, earlier);
  }

  private long notesBefore(int work) {
    return notes * sharesBefore(work, SHARES) / sharesBefore(works, SHARES);
  }

  private static long sharesBefore(int number, int[] of) {
    long shares = (long) (number / of.length) * SHARED;
    for (int i = 0; i < number % of.length; i++) {
      shares += of[i];
    }
    return shares;
  }

  public int pages() {
    return pages;
  }

  /** The page texts of a work; most have none. */
  public List<PageText> pages(Work work, int number) {
    if (pages == 0 || number % WORKS_A_BOOK != 0) {
      return List.of();
    }
    int book = number / WORKS_A_BOOK;
    int count = (int) (pagesBefore(book + 1) - pagesBefore(book));
    String edition = work.editions().get(work.editions().size() - 1).key();
    return new UnionPages(words, thesaurus, random(number, 0)).of(edition, count);
  }

  private long pagesBefore(int book) {
    int books = (works + WORKS_A_BOOK - 1) / WORKS_A_BOOK;
    return pages * sharesBefore(book, BOOKS) / sharesBefore(books, BOOKS);
  }

  private String id(int number) {
    return words.plain(random(number, 3).nextInt(UnionWords.SIZE)) + "-" + number;
  }

  /** Neighbouring seeds give alike first numbers, so they are mixed (SplitMix64's last steps). */
  private static Random random(int number, int what) {
    long mixed = (number * 4L + what) * 0x9E3779B97F4A7C15L;
    mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return new Random(mixed ^ (mixed >>> 31));
  }

  /**
   * Writes the library into {@code folder/library}, which must not be there, as the store would
   * write it.
   */
  public LibraryFolder write(Path folder) throws IOException {
    LibraryFolder library = LibraryFolder.create(folder, "A union list");
    Optional<VocabularyFile> grown = thesaurus.grown();
    if (grown.isPresent()) {
      write(
          library.resolve("vocabulary").resolve(grown.get().facet().id() + ".json"),
          PlainFiles.of(grown.get()));
    }
    Path inWorks = library.resolve("works");
    try {
      IntStream.range(0, works).parallel().forEach(number -> write(library, inWorks, number));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return library;
  }

  private void write(LibraryFolder library, Path inWorks, int number) {
    Work work = work(number);
    try {
      Path file = PlainFiles.place(inWorks, work.id(), works);
      if (!file.getParent().equals(inWorks)) {
        Files.createDirectories(file.getParent());
      }
      write(file, PlainFiles.of(work));
      for (PageText text : pages(work, number)) {
        Path inPages = PlainFiles.place(library.path(), text);
        Files.createDirectories(inPages.getParent());
        write(inPages, PlainFiles.of(text));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    Files.write(file, bytes);
    Files.setLastModifiedTime(file, WRITTEN);
  }
}
