package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.Exports;
import merese.testing.HostileLibrary;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What real programs make of an export. */
class ProgramsIT {
  @TempDir private Path folder;

  private String demo() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder.resolve("demo"))) {
      return exported(shelf);
    }
  }

  private String hostile() throws IOException {
    try (Shelf shelf = HostileLibrary.make().open(folder.resolve("hostile"))) {
      return exported(shelf);
    }
  }

  private String exported(Shelf shelf) throws IOException {
    String text = shelf.ask(s -> Exports.bibtex(s, List.of()));
    Files.writeString(folder.resolve("all.bib"), text);
    return text;
  }

  private void style(String name) throws IOException {
    try (InputStream in = ProgramsIT.class.getResourceAsStream(name + ".bst")) {
      Files.copy(in, folder.resolve(name + ".bst"));
    }
  }

  private Program bibtex(String style) throws IOException, InterruptedException {
    Files.writeString(
        folder.resolve("all.aux"),
        "\\relax\n\\citation{*}\n\\bibdata{all}\n\\bibstyle{" + style + "}\n");
    return Program.run(folder, "bibtex", "all");
  }

  private static long entries(String bib) {
    return bib.lines().filter(line -> line.startsWith("@")).count();
  }

  @Nested
  class BibtexWithItsPlainStyle {
    private void readsWithoutAWord(String bib) throws Exception {
      Program ran = bibtex("plain");
      assertEquals(0, ran.code(), ran.output());
      assertEquals(
          List.of(),
          ran.output().lines().filter(Predicate.not(ProgramsIT::isNamingAFile)).toList());
      String bbl = Files.readString(folder.resolve("all.bbl"));
      assertEquals(entries(bib), bbl.lines().filter(line -> line.startsWith("\\bibitem")).count());
    }

    @Test
    void readsTheDemo() throws Exception {
      readsWithoutAWord(demo());
    }

    @Test
    void readsAHostileLibrary() throws Exception {
      readsWithoutAWord(hostile());
    }
  }

  private static boolean isNamingAFile(String line) {
    return line.startsWith("This is BibTeX")
        || line.startsWith("The top-level auxiliary file")
        || line.startsWith("The style file")
        || line.startsWith("Database file");
  }

  @Nested
  class BiberWithItsDataModel {
    private List<String> complaints() throws Exception {
      Program ran =
          Program.run(
              folder,
              "biber",
              "--tool",
              "--validate-datamodel",
              "--output-file=out.bib",
              "all.bib");
      assertEquals(0, ran.code(), ran.output());
      assertTrue(ran.output().contains("Datamodel validation complete"), ran.output());
      return ran.output().lines().filter(line -> !line.startsWith("INFO - ")).toList();
    }

    private void biblatex(Shelf shelf) throws IOException {
      Files.writeString(folder.resolve("all.bib"), BibExports.of(shelf, Flavour.BIBLATEX));
    }

    /**
     * What the demo does not have, and the type for films: its data model gives it no fields, since
     * the standard styles print it as misc.
     */
    @Test
    void missesInWhatIsForBiblatexOnlyWhatTheSourcesDoNotHave() throws Exception {
      try (Shelf shelf = DemoLibrary.open(folder.resolve("demo"))) {
        biblatex(shelf);
      }
      assertEquals(
          List.of(
              "brackenford-directory-1817: Missing mandatory field 'author'",
              "cruet-frame-1904: Missing mandatory field 'author'",
              "cullet-newsletter-1994: Missing mandatory field 'author'",
              "few-words-undated: Missing mandatory field - one of 'author, editor' must be"
                  + " defined",
              "few-words-undated: Missing mandatory field - one of 'date, year' must be defined",
              "scarthwaite-2019: Invalid field 'author' for entrytype 'video'",
              "scarthwaite-2019: Invalid field 'organization' for entrytype 'video'",
              "scarthwaite-2019: Invalid field 'title' for entrytype 'video'",
              "yelland-1869: Missing mandatory field 'number'"),
          byEntry());
    }

    @Test
    void findsNothingInAHostileLibraryForBiblatexButFilms() throws Exception {
      try (Shelf shelf = HostileLibrary.make().open(folder.resolve("hostile"))) {
        biblatex(shelf);
      }
      assertEquals(
          List.of(),
          byEntry().stream().filter(line -> !line.endsWith("for entrytype 'video'")).toList());
    }

    private List<String> byEntry() throws Exception {
      return complaints().stream()
          .map(line -> line.replaceFirst("WARN - Datamodel: Entry '(.*)' \\(.*?\\)", "$1"))
          .filter(line -> !line.startsWith("INFO"))
          .sorted()
          .toList();
    }

    /**
     * What biblatex asks for and the original BibTeX does not: each book without an editor has an
     * author, each essay's book an editor, and everything a date. Nothing true could be written
     * there that both would take.
     */
    @Test
    void missesOnlyWhatTheSourcesDoNotHave() throws Exception {
      demo();
      assertEquals(
          List.of(
              "few-words-undated: Missing mandatory field - one of 'date, year' must be defined",
              "osmere-1979: Missing mandatory field 'author'",
              "osmere-1988: Missing mandatory field 'author'",
              "quenby-1977:intro: Missing mandatory field 'editor'",
              "severn-1965:entries: Missing mandatory field 'editor'",
              "severn-1965:necks: Missing mandatory field 'editor'"),
          byEntry());
    }

    @Test
    void readsAHostileLibrary() throws Exception {
      hostile();
      assertEquals(List.of(), complaints());
    }
  }

  @Nested
  class Latex {
    @Test
    void printsEveryFieldOfAHostileLibraryWithoutRunningACommand() throws Exception {
      hostile();
      style("fields");
      Program read = bibtex("fields");
      assertEquals(0, read.code(), read.output());
      Files.writeString(
          folder.resolve("all.tex"),
          """
          \\documentclass{article}
          \\usepackage[T1]{fontenc}
          \\usepackage{url}
          \\begin{document}
          \\sloppy
          \\nocite{*}
          \\bibliographystyle{fields}
          \\bibliography{all}
          \\end{document}
          """);
      Program set =
          Program.run(
              folder, "pdflatex", "-recorder", "-shell-escape", "-interaction=nonstopmode", "all");
      String log = Files.readString(folder.resolve("all.log"), StandardCharsets.ISO_8859_1);
      assertAll(
          () -> assertEquals("", errors(log)),
          () -> assertEquals(0, set.code(), set.output()),
          () -> assertFalse(Files.exists(folder.resolve("owned"))),
          () -> assertFalse(Files.readString(folder.resolve("all.fls")).contains("/etc/passwd")),
          () -> assertTrue(log.contains("Output written on all.pdf"), log));
    }

    private static String errors(String log) {
      return log.lines()
          .filter(line -> line.startsWith("! ") || line.contains("runsystem("))
          .collect(Collectors.joining("\n"));
    }
  }

  @Nested
  class NamesInBibtex {
    /** The names of the check file, written by us, come back from BibTeX in the same parts. */
    @Test
    void areTakenApartAsTheyWerePutTogether() throws Exception {
      StringBuilder bib = new StringBuilder();
      List<String> expected = new ArrayList<>();
      int number = 0;
      for (NameSplitCheckTest.Row row : NameSplitCheckTest.rows().toList()) {
        String written = BibtexNames.of(NameSplitCheckTest.name(row.parts())).orElseThrow();
        String key = "n" + number++;
        bib.append("@misc{" + key + ", author = {" + written + "}}\n");
        expected.add(key + "|" + line(row.parts()));
      }
      Files.writeString(folder.resolve("all.bib"), bib);
      style("names");
      assertEquals(0, bibtex("names").code());
      assertEquals(
          expected,
          Files.readString(folder.resolve("all.bbl"))
              .replace('~', ' ')
              .lines()
              .map(line -> line.substring(0, line.indexOf('|') + 1) + plain(line))
              .toList());
    }

    private static String line(BibtexNameSplit parts) {
      BibtexNameSplit plain = NameSplitCheckTest.plainParts(parts);
      return String.join("|", plain.first(), plain.von(), plain.last(), plain.jr()) + "|";
    }

    private static String plain(String line) {
      return NameSplitCheckTest.plain(line.substring(line.indexOf('|') + 1));
    }
  }
}
