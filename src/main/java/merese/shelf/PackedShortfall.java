package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.search.Hits.RecordHit;
import merese.search.IndexedFile.IndexedRecord;
import merese.store.LibraryFolder;
import merese.store.Problem;

/** What is wrong with the files, as the index holds it. */
final class PackedShortfall {
  private static final Shortfall.Effect[] EFFECTS = Shortfall.Effect.values();

  /** So many problems of one file are kept; the library's own check lists all. */
  private static final int KEPT = 20;

  /** A text that quotes much of a damaged file is cut. */
  private static final int LONGEST = 500;

  private PackedShortfall() {}

  static IndexedRecord record(Shortfall.Effect effect, List<Problem> problems) {
    List<Problem> kept = problems.subList(0, Math.min(KEPT, problems.size()));
    byte[] packed = new Packer().constant(effect).list(kept, PackedShortfall::problem).toBytes();
    return new IndexedRecord(RecordTypes.SHORTFALL, packed);
  }

  private static void problem(Packer to, Problem problem) {
    to.number(problem.line()).number(problem.column()).text(cut(problem.where()));
    to.text(cut(problem.what())).text(cut(problem.remedy()));
  }

  private static String cut(String text) {
    return text.length() <= LONGEST
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST / 2)) + " …";
  }

  /** The files are named as the library is addressed now. */
  static Shortfall unpack(RecordHit hit, LibraryFolder folder) {
    Unpacker from = new Unpacker(hit.payload());
    Shortfall.Effect effect = from.constant(EFFECTS);
    Path file = folder.resolve(hit.file());
    List<Problem> problems = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      problems.add(
          new Problem(
              file,
              from.number(),
              from.number(),
              from.text(),
              from.text(),
              from.text(),
              Problem.Severity.ERROR));
    }
    return new Shortfall(hit.file(), problems, effect);
  }

  static List<IndexedRecord> undefined(Iterable<String> concepts) {
    List<IndexedRecord> records = new ArrayList<>();
    for (String id : concepts) {
      records.add(new IndexedRecord(RecordTypes.UNDEFINED, id.getBytes(StandardCharsets.UTF_8)));
    }
    return records;
  }
}
