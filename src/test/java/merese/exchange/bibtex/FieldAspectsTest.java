package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.exchange.Aspect;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import org.junit.jupiter.api.Test;

/**
 * That the table of what each field says is what the reading makes of it: a field is left out of a
 * record, and what is read then differs in nothing that the table does not name.
 */
class FieldAspectsTest {
  /** Each type with each field that there is, one record in which all say something. */
  private static final List<String> TYPES =
      List.of(
          "article",
          "book",
          "booklet",
          "collection",
          "inbook",
          "incollection",
          "inproceedings",
          "manual",
          "mastersthesis",
          "misc",
          "mvbook",
          "online",
          "patent",
          "periodical",
          "phdthesis",
          "proceedings",
          "report",
          "suppperiodical",
          "techreport",
          "thesis",
          "unpublished",
          "video");

  private static final List<Field> FIELDS =
      List.of(
          new Field("title", "On Necks"),
          new Field("subtitle", "A Study"),
          new Field("author", "Quenby, Mabel"),
          new Field("editor", "Norrish, Stella"),
          new Field("editora", "Casswell, Ruth"),
          new Field("editoratype", "illustrator"),
          new Field("editorb", "Pell, Anne"),
          new Field("editorbtype", "compiler"),
          new Field("translator", "Lathbury, Joan"),
          new Field("year", "1926"),
          new Field("month", "jul"),
          new Field("edition", "2nd"),
          new Field("volumes", "3"),
          new Field("series", "Primers"),
          new Field("number", "14"),
          new Field("volume", "7"),
          new Field("part", "2"),
          new Field("issue", "Spring"),
          new Field("pages", "3--14"),
          new Field("journal", "Cullet Journal"),
          new Field("booktitle", "Essays on Glass"),
          new Field("booksubtitle", "By Many Hands"),
          new Field("address", "Bath"),
          new Field("publisher", "Marchbank"),
          new Field("howpublished", "Handed out"),
          new Field("institution", "A University"),
          new Field("organization", "A Society"),
          new Field("school", "A School"),
          new Field("type", "Diploma"),
          new Field("isbn", "0-306-40615-2"), // ISO 2108, its own example
          new Field("issn", "0317-8471"), // ISO 3297, its own example
          new Field("doi", "10.1000/182"), // the DOI Handbook, its own example
          new Field("url", "https://a.example/"),
          new Field("urldate", "2025-01-02"),
          new Field("origdate", "1900"),
          new Field("language", "french"),
          new Field(
              "note",
              "Date: [1925]. Year on the cover: 1927. Facsimile of the edition of 1900. Said with"
                  + " it. ISBN as printed: 0-306-40615-3. Archived at https://b.example/"),
          new Field("chapter", "4"),
          new Field("key", "K"),
          new Field("annote", "Seen"),
          new Field("eprint", "1234"));

  /** Those whose lack makes others mean something else. */
  private static final List<String> DECISIVE =
      List.of("title", "journal", "booktitle", "series", "number", "publisher", "url");

  private static Work read(ReceivedRecord record) {
    return BibtexMeaning.of(record, key -> Optional.empty());
  }

  /** Fields that, where they are left out, change what the table does not say. */
  private static void check(ReceivedRecord record, Set<String> wrong) {
    Work reading = read(record);
    FieldAspects aspects = FieldAspects.of(record, reading);
    for (int i = 0; i < record.fields().size(); i++) {
      List<Field> fields = new ArrayList<>(record.fields());
      String name = fields.remove(i).name();
      Work without = read(new ReceivedRecord(record.format(), record.type(), record.id(), fields));
      Set<Aspect> differing = EnumSet.noneOf(Aspect.class);
      differing.addAll(Aspect.differing(reading, without));
      differing.removeAll(aspects.of(name));
      if (record.field("title").isEmpty()) {
        differing.remove(Aspect.TITLE); // what stands in for one
      }
      if (name.equals("keywords")) {
        continue; // several things in one, which the writer sees to by itself
      }
      if (name.equals("translator")) {
        differing.remove(Aspect.LINEAGE); // a translation without one is a reprint
      }
      if (name.equals("editorbtype")) {
        differing.remove(Aspect.PEOPLE); // it stays with its field, which has no home either
      }
      if (!differing.isEmpty()) {
        wrong.add(record.format() + " @" + record.type() + " " + name + ": " + differing);
      }
    }
  }

  @Test
  void ofEveryTypeIsWhatIsRead() {
    Set<String> wrong = new TreeSet<>();
    for (String format : List.of("bibtex", "biblatex")) {
      for (String type : TYPES) {
        check(new ReceivedRecord(format, type, "k", FIELDS), wrong);
        List<Field> ours = new ArrayList<>(FIELDS);
        ours.add(new Field("keywords", "monograph"));
        check(new ReceivedRecord(format, type, "k", ours), wrong);
        for (String left : DECISIVE) {
          List<Field> fields = FIELDS.stream().filter(f -> !f.name().equals(left)).toList();
          check(new ReceivedRecord(format, type, "k", fields), wrong);
        }
      }
    }
    assertEquals("", String.join("\n", wrong));
  }
}
