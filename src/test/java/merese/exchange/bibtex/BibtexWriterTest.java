package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What came in goes out again, but for what has been changed. */
class BibtexWriterTest {
  private static BibLibrary older() throws IOException {
    return BibLibrary.read(resource("older.bib"));
  }

  private static BibLibrary newer() throws IOException {
    return BibLibrary.read(resource("newer.bib"));
  }

  static String resource(String name) throws IOException {
    try (InputStream in = BibtexWriterTest.class.getResourceAsStream("written/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The lines of one entry. */
  private static List<String> entry(String bib, String key) {
    List<String> lines = bib.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).endsWith("{" + key + ",")) {
        int end = i + lines.subList(i, lines.size()).indexOf("}");
        return lines.subList(i + 1, end).stream()
            .map(l -> l.strip().replaceFirst(",$", ""))
            .toList();
      }
    }
    throw new AssertionError("no " + key + " in " + bib);
  }

  private static List<String> keys(String bib) {
    return bib.lines()
        .filter(line -> line.startsWith("@") && line.endsWith(","))
        .map(line -> line.substring(line.indexOf('{') + 1, line.length() - 1))
        .toList();
  }

  @Nested
  class Untouched {
    @Test
    void everyRecordIsReadAgainAsItCame() throws IOException {
      for (BibLibrary library : List.of(older(), newer())) {
        Flavour flavour = Flavour.valueOf(format(library).toUpperCase(java.util.Locale.ROOT));
        Set<ReceivedRecord> records = library.records();
        records.removeIf(r -> r.id().equals("unused"));
        assertEquals(records, BibLibrary.read(library.written(flavour)).records());
      }
    }

    private String format(BibLibrary library) {
      return library.sources().get(0).edition().received().get(0).format();
    }

    @Test
    void fieldsStandInTheirOrderWithMonthsBare() throws IOException {
      assertEquals(
          List.of(
              "author = {Denis {Farrow} and {Cullet Society}}",
              "title = {What Was {\\emph{Triple-Ringed}}: A Reply}",
              "journal = {Cullet Society Journal}",
              "year = {1988}",
              "volume = {12}",
              "number = {3/4}",
              "pages = {3--14}",
              "month = {10~} # jan",
              "note = {With a plate.}",
              "mynote = {mine, not yours}"),
          entry(older().written(Flavour.BIBTEX), "Farrow:88"));
      String bib = older().written(Flavour.BIBTEX);
      assertTrue(entry(bib, "cullet:proc").contains("month = jul"));
      assertTrue(entry(bib, "page").contains("month = {jul}"));
    }

    @Test
    void parentsStandBehindTheirChildrenForBibtexAndByKeyForBiblatex() throws IOException {
      List<String> keys = keys(older().written(Flavour.BIBTEX));
      assertEquals("cullet:proc", keys.get(keys.size() - 1));
      List<String> others = keys.subList(0, keys.size() - 1);
      assertEquals(List.copyOf(new TreeSet<>(others)), others);
      List<String> byKey = keys(older().written(Flavour.BIBLATEX));
      assertEquals(List.copyOf(new TreeSet<>(byKey)), byKey);
    }

    @Test
    void aRecordForBibtexIsOneForBiblatexToo() throws IOException {
      assertEquals(
          BibLibrary.read(older().written(Flavour.BIBTEX)).records(),
          BibLibrary.read(older().written(Flavour.BIBLATEX)).records());
    }

    @Test
    void aRecordForBiblatexIsMadeNewForBibtexWithWhatHasNoHome() throws IOException {
      String bib = newer().written(Flavour.BIBTEX);
      assertEquals(
          List.of(
              "author = {Lutwyck, Everard}",
              "title = {The {Wine} {Glass:} Of {Our} {``Forefathers''}}",
              "edition = {2nd}",
              "publisher = {{Dorrand and Son}}",
              "address = {London and Edinburgh}",
              "year = {1912}",
              "origdate = {1910}",
              "isbn = {978-0-306-40615-7}",
              "note = {Reprint of the edition of 1910. Date: 1912-05{\\textasciitilde}. Illustrated"
                  + " by Ruth Casswell}",
              "keywords = {primary, monograph}",
              "langid = {british}",
              "maintitle = {The Collector's Shelf}",
              "volume = {B}"),
          entry(bib, "lutwyck"));
      assertTrue(entry(bib, "chemist").contains("type = {Technical Report}"));
      assertTrue(entry(bib, "ollerby").contains("journal = {Transactions: Glass}"));
      assertFalse(bib.contains("crossref") || bib.contains("@set") || bib.contains("xdata"), bib);
    }

    @Test
    void theKindStandsAmongTheKeywordsOnceHoweverOftenARecordIsMadeNew() throws IOException {
      String bib = newer().written(Flavour.BIBTEX);
      String again = BibLibrary.read(bib).written(Flavour.BIBTEX);
      assertTrue(entry(again, "lutwyck").contains("keywords = {primary, monograph}"), again);
    }
  }

  @Nested
  class Excerpts {
    private String written(BibLibrary library, Flavour flavour, String... keys) throws IOException {
      List<Outgoing> some = new ArrayList<>();
      for (String key : keys) {
        some.add(library.source(key));
      }
      return library.written(flavour, some);
    }

    @Test
    void withoutAParentAreWhole() throws IOException {
      List<String> child = entry(written(older(), Flavour.BIBTEX, "trevanny86"), "trevanny86");
      assertTrue(child.contains("publisher = {Marchbank \\& Sons}"), child::toString);
      assertTrue(child.contains("booktitle = {Proceedings of the {Cullet} Meeting}"));
      assertTrue(child.contains("month = jul"));
      assertTrue(child.stream().noneMatch(line -> line.startsWith("crossref")));
      List<String> part = entry(written(newer(), Flavour.BIBLATEX, "strand"), "strand");
      assertTrue(part.contains("maintitle = {Table Glass}"), part::toString);
    }

    @Test
    void withAParentReferToIt() throws IOException {
      String bib = written(older(), Flavour.BIBTEX, "cullet:proc", "Yarrowby:86");
      assertTrue(entry(bib, "Yarrowby:86").contains("crossref = {CULLET:PROC}"), bib);
      assertEquals(List.of("Yarrowby:86", "cullet:proc"), keys(bib));
    }

    @Test
    void haveThePreambleTheDataAndTheSetsThatTheyNeed() throws IOException {
      assertTrue(written(older(), Flavour.BIBTEX, "list").startsWith("@preamble{{\\newcommand"));
      assertEquals(
          List.of("house", "lutwyck"), keys(written(newer(), Flavour.BIBLATEX, "lutwyck")));
      assertEquals(List.of("ollerby"), keys(written(newer(), Flavour.BIBLATEX, "ollerby")));
      assertEquals(
          Set.of("both", "house", "lutwyck", "osmere", "strand"),
          Set.copyOf(keys(written(newer(), Flavour.BIBLATEX, "lutwyck", "strand", "osmere"))));
    }

    @Test
    void keepAReferenceToWhatTheLibraryDoesNotHave() throws IOException {
      BibLibrary library = BibLibrary.read("@inbook{a, title = {T}, crossref = {elsewhere}}");
      assertTrue(library.written(Flavour.BIBTEX).contains("crossref = {elsewhere}"));
    }

    @Test
    void haveTheSameKeysAsTheWhole() throws IOException {
      BibLibrary library = BibLibrary.read("@misc{one, title = {A}}\n@misc{one, title = {B}}");
      String second = library.written(Flavour.BIBTEX, List.of(library.source("one-again")));
      assertEquals(List.of("one-again"), keys(second));
    }

    @Test
    void ofACircleEnd() throws IOException {
      BibLibrary library =
          BibLibrary.read(
              "@book{a, title = {A}, crossref = {b}}\n@book{b, title = {B}, crossref = {a}}");
      assertEquals(library.records(), BibLibrary.read(library.written(Flavour.BIBTEX)).records());
      library.written(Flavour.BIBTEX, List.of(library.source("a")));
    }

    @Test
    void ofALongChainEnd() throws IOException {
      StringBuilder bib = new StringBuilder();
      for (int i = 0; i < 1000; i++) {
        bib.append("@book{b" + i + ", title = {T" + i + "}, crossref = {b" + (i + 1) + "}}\n");
      }
      BibLibrary library = BibLibrary.read(bib.toString());
      assertEquals(library.records(), BibLibrary.read(library.written(Flavour.BIBTEX)).records());
    }
  }

  @Nested
  class Keys {
    @Test
    void areThoseThatTheFileHad() throws IOException {
      Outgoing named = older().source("quenby'1926");
      BibLibrary renamed =
          new BibLibrary(List.of(BibLibrary.outgoing(named.work(), "quenby-1926")), List.of());
      assertEquals(List.of("quenby'1926"), keys(renamed.written(Flavour.BIBTEX)));
    }

    @Test
    void areFollowedByThoseThatReferToThem() throws IOException {
      BibLibrary read = BibLibrary.read("@misc{p q, title = {A}}".replace("p q", "pq"));
      Work work = SmallLibrary.monograph("Other", 1900, "T");
      Edition edition = SmallLibrary.edition("CULLET:PROC", 1900);
      List<Outgoing> all = new ArrayList<>(older().sources());
      all.removeIf(source -> source.id().equals("cullet:proc"));
      all.add(BibLibrary.outgoing(older().source("cullet:proc").work(), "proc-1986"));
      all.add(new Outgoing(work.withOnly(edition), edition, Optional.empty(), List.of()));
      String bib = new BibLibrary(all, read.kept()).written(Flavour.BIBTEX);
      assertTrue(keys(bib).contains("proc-1986"), bib);
      assertTrue(entry(bib, "trevanny86").contains("crossref = {proc-1986}"), bib);
    }
  }

  @Nested
  class Changed {
    private List<String> lines(BibLibrary library, String key, Aspect aspect, Work from)
        throws IOException {
      BibLibrary changed = library.with(key, work -> aspect.taken(work, from));
      Flavour flavour = key.equals("lutwyck") ? Flavour.BIBLATEX : Flavour.BIBTEX;
      return entry(changed.written(flavour), key);
    }

    private static Work work(String bib) throws IOException {
      return BibLibrary.read(bib).sources().get(0).work();
    }

    /** The lines that went, and those that came, in their order. */
    private void assertChanges(List<String> before, List<String> now, String... difference) {
      Set<String> gone = new LinkedHashSet<>(before);
      gone.removeAll(now);
      Set<String> come = new LinkedHashSet<>(now);
      come.removeAll(before);
      List<String> all = new ArrayList<>();
      gone.forEach(line -> all.add("- " + line));
      come.forEach(line -> all.add("+ " + line));
      assertEquals(String.join("\n", difference), String.join("\n", all));
    }

    private void assertChanges(String key, Aspect aspect, String other, String... difference)
        throws IOException {
      BibLibrary library = key.equals("lutwyck") ? newer() : older();
      Flavour flavour = key.equals("lutwyck") ? Flavour.BIBLATEX : Flavour.BIBTEX;
      assertChanges(
          entry(library.written(flavour), key),
          lines(library, key, aspect, work(other)),
          difference);
    }

    @Test
    void onePartLeavesAllOthers() throws IOException {
      assertChanges(
          "quenby'1926",
          Aspect.PUBLISHER,
          "@book{a, title = {A}, publisher = {Rose and Crown}}",
          "- publisher = {Marchbank \\& Sons}",
          "+ publisher = {{Rose and Crown}}");
      assertChanges(
          "quenby'1926",
          Aspect.DATE,
          "@book{a, title = {A}, year = {c. 1930}}",
          "- year = {{\\noopsort{1926a}}1926}",
          "+ year = {c. 1930}");
      assertChanges(
          "Farrow:88",
          Aspect.TITLE,
          "@book{a, title = {On \\& Off}}",
          "- title = {What Was {\\emph{Triple-Ringed}}: A Reply}",
          "+ title = {On \\& {Off}}");
      assertChanges(
          "Farrow:88",
          Aspect.CONTAINER,
          "@article{a, title = {A}, journal = {J}, volume = 9}",
          "- journal = {Cullet Society Journal}",
          "- volume = {12}",
          "- number = {3/4}",
          "- pages = {3--14}",
          "+ journal = {J}",
          "+ volume = {9}");
    }

    @Test
    void whatIsNoLongerSaidGoes() throws IOException {
      assertChanges(
          "quenby'1926", Aspect.IDENTIFIERS, "@book{a, title = {A}}", "- isbn = {0-306-40615-2}");
      assertChanges(
          "quenby'1926",
          Aspect.SERIES,
          "@book{a, title = {A}, series = {Guides}}",
          "- series = {Primers}",
          "- volume = {3}",
          "+ series = {Guides}");
      assertChanges("lutwyck", Aspect.LINEAGE, "@book{a, title = {A}}", "- origdate = {1910}");
    }

    @Test
    void aNoteOfOurOwnSaysEachThingOnce() throws IOException {
      BibLibrary list =
          BibLibrary.read(
              "@booklet{a, author = {{B \\& Y}}, title = {T}, year = {1842},"
                  + " note = {Date: [c. 1842]. Reprint of the edition of 1840. Osmere, 12\\%},"
                  + " keywords = {printed trade list}}");
      assertChanges(
          entry(list.written(Flavour.BIBTEX), "a"),
          lines(list, "a", Aspect.DATE, work("@book{b, title = {B}, year = {1850}}")),
          "- year = {1842}",
          "- note = {Date: [c. 1842]. Reprint of the edition of 1840. Osmere, 12\\%}",
          "+ year = {1850}",
          "+ note = {Reprint of the edition of 1840. Osmere, 12\\%}");
    }

    @Test
    void whatTheParentStillSaysMakesTheEntryWhole() throws IOException {
      List<String> now =
          lines(older(), "trevanny86", Aspect.PUBLISHER, work("@book{a, title = {A}}"));
      assertTrue(now.stream().noneMatch(l -> l.startsWith("publisher")), now::toString);
      assertTrue(now.stream().noneMatch(l -> l.startsWith("crossref")), now::toString);
      assertTrue(now.contains("address = {London}"), now::toString);
    }

    @Test
    void aParentDoesNotChangeItsChildren() throws IOException {
      Work other = work("@book{a, title = {A}, publisher = {Kolk}}");
      BibLibrary changed = older().with("cullet:proc", work -> Aspect.PUBLISHER.taken(work, other));
      String bib = changed.written(Flavour.BIBTEX);
      assertTrue(entry(bib, "cullet:proc").contains("publisher = {Kolk}"), bib);
      assertTrue(entry(bib, "trevanny86").contains("publisher = {Marchbank \\& Sons}"), bib);
    }

    @Test
    void theKindChangesTheTypeAndItsKeyword() throws IOException {
      Outgoing source = older().source("quenby'1926");
      Work sale = work("@book{a, title = {A}, keywords = {sale catalogue}}");
      assertEquals(SourceKind.SALE_CATALOGUE, sale.kind());
      String bib =
          new BibLibrary(
                  List.of(BibLibrary.outgoing(Aspect.KIND.taken(source.work(), sale), "q")),
                  List.of())
              .written(Flavour.BIBTEX);
      assertTrue(bib.startsWith("@misc{quenby'1926,"), bib);
      assertTrue(bib.contains("keywords = {glass, decanters, sale catalogue}"), bib);
    }

    /** What a record has no field for, so that its note says it. */
    private static final Map<String, String> UNSAID =
        Map.of(
            "ARCHIVE", "only a thesis has a field for where it is kept",
            "CONTAINER", "what is whole stands in nothing, and only a journal has issues",
            "ONLINE", "a tilde is written %7E, which is the same (RFC 3986, section 6.2.2.2)",
            "PLACES", "the place of a patent is where it holds",
            "SERIES", "the number of an article or report is not that of a series");

    /** Each part of each source in turn becomes that of another. */
    @Test
    void everyPartIsReadAgainAsItIs() throws IOException {
      Map<String, Set<String>> unsaid = new TreeMap<>();
      for (BibLibrary library : List.of(older(), newer())) {
        for (Outgoing source : library.sources()) {
          Set<String> tried = new TreeSet<>();
          for (Outgoing other : library.sources()) {
            for (Aspect aspect : EnumSet.complementOf(EnumSet.of(Aspect.KIND))) {
              boolean same = aspect.isSame(source.work(), other.work());
              if (!same && tried.add(aspect + aspect.printed(other.work()))) {
                differing(library, source, other, aspect)
                    .forEach(
                        d ->
                            unsaid
                                .computeIfAbsent(d.name(), k -> new TreeSet<>())
                                .add(source.id() + " < " + other.id() + ", " + aspect));
              }
            }
          }
        }
      }
      assertEquals(UNSAID.keySet(), unsaid.keySet(), unsaid::toString);
    }

    private static Set<Aspect> differing(
        BibLibrary library, Outgoing source, Outgoing other, Aspect aspect) throws IOException {
      ReceivedRecord record = source.edition().received().get(0);
      Flavour flavour = record.format().equals("biblatex") ? Flavour.BIBLATEX : Flavour.BIBTEX;
      Work wanted = aspect.taken(source.work(), other.work());
      String written = library.with(source.id(), work -> wanted).written(flavour);
      BibLibrary again = BibLibrary.read(written);
      Set<Aspect> differing = Aspect.differing(wanted, again.source(record.id()).work());
      differing.remove(Aspect.NOTED_AS);
      assertEquals(written, again.written(flavour), source.id() + " < " + other.id() + aspect);
      return differing;
    }
  }
}
