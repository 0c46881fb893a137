package merese.shelf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Homonym;
import merese.search.FileStamp;
import merese.search.IndexedFile;
import merese.search.IndexedFile.IndexedRecord;
import merese.shelf.LibraryReading.Read;
import merese.shelf.Shortfall.Effect;
import merese.store.LibraryFile;
import merese.store.LibraryFile.Kind;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.VocabularyFile;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.SkosIntegrity.Violation;
import merese.vocabulary.Thesaurus;

/**
 * The vocabulary as it stands now, with what has to be indexed of it. A file that can't be read
 * says what it said when it last could, where that is known; a vocabulary that breaks an integrity
 * condition of SKOS is used all the same. Both are {@link Shortfall}s.
 */
final class VocabularyReading {
  private final VocabularyRecords records;
  private final boolean lacking;
  private final List<IndexedFile> files;

  private VocabularyReading(VocabularyRecords records, boolean lacking, List<IndexedFile> files) {
    this.records = records;
    this.lacking = lacking;
    this.files = files;
  }

  Thesaurus thesaurus() {
    return records.thesaurus();
  }

  /** Whether concepts are missing because the file that defines them cannot be read. */
  boolean lacking() {
    return lacking;
  }

  /** What is to be indexed anew, one of them for the vocabulary as a whole. */
  List<IndexedFile> files() {
    return files;
  }

  static VocabularyReading unchanged(VocabularyRecords records, List<Shortfall> known) {
    return new VocabularyReading(records, isLacking(known), List.of());
  }

  /**
   * Reads all files of the vocabulary.
   *
   * @param before what they last said, as far as it is known
   */
  static VocabularyReading of(
      LibraryFolder folder,
      LibraryReading reading,
      List<LibraryFile> files,
      VocabularyRecords before) {
    return read(folder, reading, files, VocabularyRecords.none(), before, List.of());
  }

  /** Reads the files that changed; what the others hold is known from the index. */
  static VocabularyReading changed(
      LibraryFolder folder,
      LibraryReading reading,
      Changes changes,
      VocabularyRecords before,
      List<Shortfall> known) {
    VocabularyRecords kept = new VocabularyRecords(before.facets(), before.registers());
    kept.facets().keySet().removeIf(changes::concerns);
    kept.registers().keySet().removeIf(changes::concerns);
    List<Shortfall> stay = new ArrayList<>(known);
    stay.removeIf(shortfall -> changes.concerns(shortfall.file()));
    return read(folder, reading, changes.changed(), kept, before, stay);
  }

  private static VocabularyReading read(
      LibraryFolder folder,
      LibraryReading reading,
      List<LibraryFile> files,
      VocabularyRecords kept,
      VocabularyRecords before,
      List<Shortfall> known) {
    boolean lacking = isLacking(known);
    List<Read<VocabularyFile>> facets = new ArrayList<>();
    List<Read<List<Homonym>>> registers = new ArrayList<>();
    for (LibraryFile file : files) {
      if (file.kind() == Kind.VOCABULARY) {
        Read<VocabularyFile> read = reading.read(file, folder::readVocabulary);
        facets.add(read.orElse(before.facets().get(file.relative())));
      } else if (file.kind() == Kind.HOMONYMS) {
        registers.add(reading.read(file, path -> folder.readHomonyms()));
      }
    }
    for (Read<VocabularyFile> read : facets) {
      read.value().ifPresent(value -> kept.facets().put(read.stamp().path(), value));
      lacking |= read.value().isEmpty();
    }
    for (Read<List<Homonym>> read : registers) {
      read.value().ifPresent(value -> kept.registers().put(read.stamp().path(), value));
    }
    ForIndex maker = new ForIndex(kept.thesaurus());
    List<IndexedFile> indexed = new ArrayList<>();
    for (Read<VocabularyFile> read : facets) {
      indexed.add(
          file(read, Effect.AS_IT_WAS, read.value().map(v -> maker.vocabulary(read.stamp(), v))));
    }
    for (Read<List<Homonym>> read : registers) {
      indexed.add(
          file(read, Effect.UNREADABLE, read.value().map(v -> maker.homonyms(read.stamp(), v))));
    }
    indexed.add(whole(folder, kept, lacking));
    return new VocabularyReading(kept, lacking, indexed);
  }

  /**
   * @param effect where there are problems and there is something to index nevertheless
   */
  private static IndexedFile file(Read<?> read, Effect effect, Optional<IndexedFile> made) {
    if (read.problems().isEmpty()) {
      return made.orElseThrow();
    }
    Effect real = made.isPresent() ? effect : Effect.UNREADABLE;
    return made.orElse(IndexedFile.of(read.stamp(), List.of()))
        .with(List.of(PackedShortfall.record(real, read.problems())));
  }

  /** All that they say, what is wrong between them, and what they name and none defines. */
  private static IndexedFile whole(
      LibraryFolder folder, VocabularyRecords records, boolean lacking) {
    Thesaurus thesaurus = records.thesaurus();
    List<Problem> problems = new ArrayList<>();
    List<merese.model.Concept> all = new ArrayList<>();
    records.facets().values().forEach(file -> all.addAll(file.concepts()));
    for (Violation violation : SkosIntegrity.check(thesaurus.facets(), all, thesaurus.register())) {
      if (!lacking || violation.condition() != SkosIntegrity.Condition.UNKNOWN_CONCEPT) {
        problems.add(
            new Problem(
                folder.resolve(Changes.WHOLE_VOCABULARY),
                0,
                0,
                "",
                violation.wrong() + " (" + violation.condition() + ")",
                violation.remedy(),
                Problem.Severity.ERROR));
      }
    }
    Set<String> undefined =
        new LinkedHashSet<>(NamedConcepts.of(thesaurus.concepts(), thesaurus.register()));
    undefined.removeIf(id -> thesaurus.concept(id).isPresent());
    List<IndexedRecord> found = new ArrayList<>(PackedShortfall.undefined(undefined));
    found.add(new IndexedRecord(RecordTypes.THESAURUS, PackedThesaurus.pack(thesaurus)));
    if (!problems.isEmpty()) {
      found.add(PackedShortfall.record(Effect.UNSOUND, problems));
    }
    return IndexedFile.of(new FileStamp(Changes.WHOLE_VOCABULARY, 0, 0, "", true), found);
  }

  private static boolean isLacking(List<Shortfall> known) {
    for (Shortfall shortfall : known) {
      if (shortfall.effect() == Effect.UNREADABLE && Changes.isFacet(shortfall.file())) {
        return true;
      }
    }
    return false;
  }
}
