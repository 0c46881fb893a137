package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Incoming;
import merese.exchange.Outgoing;
import merese.model.ReceivedRecord;
import merese.model.Work;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marc4j.marc.Record;

class MarcXmlWriterTest {
  static String written(Collection<Outgoing> sources, ReceivedRecord... kept) {
    StringWriter out = new StringWriter();
    try {
      new MarcXmlWriter().write(sources, List.of(kept), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  static List<Outgoing> asSources(Collection<Incoming> read) {
    List<Outgoing> sources = new ArrayList<>();
    for (Incoming source : read) {
      sources.add(outgoing(source.work()));
    }
    return sources;
  }

  static Outgoing outgoing(Work work) {
    return new Outgoing(work, work.editions().get(0), Optional.empty(), List.of());
  }

  /** A record that has most of what is understood, and much that is not. */
  static final ReceivedRecord FULL =
      Lines.record(
          "LDR 00714cam a2200205 a 4500",
          "001 x-1",
          "005 19930521155141.9",
          "008 920219s1949    enka   j      000 0 eng  ",
          "010 ## $a   92005291 ",
          "020 ## $a0306406152 (pbk.) :$c{dollar}15.95",
          "041 0# $aeng",
          "050 00 $aPS3537.A618$bA88 1993",
          "100 1# $aQuenby, Mabel,$d1890-1960.",
          "245 14 $aThe neck and the stopper :$ba study /$cMabel Quenby ; illustrated by T. Rand.",
          "246 1# $aRings",
          "250 ## $a2nd ed.",
          "260 ## $aLondon :$bMarchbank,$cc1949.",
          "300 ## $a2 v. :$bill. ;$c26 cm.",
          "490 1# $aPrimers ;$v14",
          "500 ## $aIncludes index.",
          "500 ## $3For citation$aList no. 6.",
          "534 ## $pFacsimile of:$cLondon, 1926.",
          "520 ## $aOn necks.",
          "650 #0 $aGlassware.",
          "700 1# $aRand, T.,$eillustrator.",
          "700 1# $aTolland, E.,$ecollector.",
          "830 #0 $aPrimers (Marchbank) ;$v14",
          "856 40 $uhttps://example.org/x",
          "999 ## $ilocal");

  @Test
  void whatCameInGoesOutAsItCame() {
    Work work = MarcMeaning.of(FULL).orElseThrow().work();
    Handed again = Handed.xml(written(List.of(outgoing(work))));
    assertEquals(List.of(FULL), again.received());
  }

  @ParameterizedTest
  @MethodSource("merese.exchange.marc.FileCorpusTest#files")
  void everyFileGoesOutAndComesInTheSame(Path file) throws IOException {
    Handed handed = FileCorpusTest.read(file);
    String out = written(asSources(handed.sources), handed.kept.toArray(ReceivedRecord[]::new));
    Handed again = Handed.xml(out);
    assertEquals(List.of(), again.refused);
    assertEquals(Set.copyOf(handed.received()), Set.copyOf(again.received()));
    assertEquals(handed.kept, again.kept);
  }

  /** A source that says something else in every part. */
  private static Work other() {
    return MarcMeaning.of(
            Lines.record(
                "LDR 00000ncm a2200000 a 4500",
                "001 y",
                "008 920219r19711938enka          000 0 ger d",
                "020 ## $a9780306406157",
                "110 2# $aOsmere Museum.",
                "245 00 $aGlas :$bein Buch.",
                "246 1# $aGläser",
                "250 ## $aRev. ed.",
                "260 ## $aOsmere :$bWicket Press,$c1971.",
                "300 ## $a3 v.",
                "490 0# $aHandbooks",
                "500 ## $3For citation$aUnpaginated.",
                "518 ## $oHouse: Harkaway$d9 March 1937$pLondon$2local",
                "534 ## $pReprint of:$c1938.",
                "655 #7 $asale catalogue$2local",
                "700 1# $aTressick, Ivor,$etranslator.",
                "773 0# $7c2as$aCullet Society$tJournal$gVol. 3, p. 4-5",
                "852 7# $aOsmere Archives$jD 3$2local",
                "856 40 $uhttps://example.org/y"))
        .orElseThrow()
        .work();
  }

  @ParameterizedTest
  @EnumSource(Aspect.class)
  void whatTheUserHasChangedIsWrittenAnewAndTheRestStays(Aspect aspect) {
    Work before = MarcMeaning.of(FULL).orElseThrow().work();
    Work changed = aspect.taken(before, other());
    assertFalse(aspect.isSame(before, changed), "the two must differ");
    Handed again = Handed.xml(written(List.of(outgoing(changed))));
    Work after = again.sources.get(0).work();
    assertEquals(aspect.printed(changed), aspect.printed(after));
    assertEquals(EnumSet.noneOf(Aspect.class), Aspect.differing(changed, after));
    List<ReceivedRecord.Field> stayed = new ArrayList<>(FULL.fields());
    stayed.removeIf(f -> !again.received().get(0).fields().contains(f));
    assertTrue(stayed.size() >= FULL.fields().size() - 5, () -> "too much changed: " + stayed);
    for (String homeless : new String[] {"010", "050", "520", "650", "999"}) {
      assertTrue(stayed.stream().anyMatch(f -> f.name().startsWith(homeless)), homeless);
    }
    assertTrue(
        stayed.stream().anyMatch(f -> f.value().contains("collector")), "a role not understood");
  }

  @Test
  void aNewTitleKeepsTheStatementOfResponsibility() {
    Work before = MarcMeaning.of(FULL).orElseThrow().work();
    Work changed = Aspect.TITLE.taken(before, other());
    ReceivedRecord record = Handed.xml(written(List.of(outgoing(changed)))).received().get(0);
    assertEquals(
        Optional.of("$aGlas :$bein Buch /$cMabel Quenby ; illustrated by T. Rand."),
        record.field("245 10"));
  }

  @Test
  void aPartThatTheLibraryNoLongerStatesIsLeftOut() {
    Work before = MarcMeaning.of(FULL).orElseThrow().work();
    Work bare = MarcMeaning.of(Lines.book("245 10 $aGlass.")).orElseThrow().work();
    for (Aspect aspect : Aspect.values()) {
      Work changed = aspect.taken(before, bare);
      Work after = Handed.xml(written(List.of(outgoing(changed)))).sources.get(0).work();
      assertEquals(aspect.printed(changed), aspect.printed(after), aspect.words());
    }
  }

  @Test
  void textStaysInSpiteOfWhatXmlMakesOfIt() {
    ReceivedRecord record =
        Lines.book("245 10 $aA & b < c > \"d\"\r\n\tand {dollar}{lcub}{rcub} 🍷 e\u0301");
    Work work = MarcMeaning.of(record).orElseThrow().work();
    assertEquals(List.of(record), Handed.xml(written(List.of(outgoing(work)))).received());
  }

  @Test
  void aCharacterThatXmlDoesNotAllowIsReplaced() {
    ReceivedRecord record = Lines.book("245 10 $aA\u0001b\ud800c\uffff");
    Work work = MarcMeaning.of(record).orElseThrow().work();
    assertTrue(written(List.of(outgoing(work))).contains("A\ufffdb\ufffdc\ufffd"));
  }

  @Nested
  class OfALibrary {
    private final List<Outgoing> sources = DemoSources.all();
    private final String out = written(sources);

    @Test
    void anOutsideReaderReadsAllOfIt() {
      var reader =
          new org.marc4j.MarcXmlReader(
              new ByteArrayInputStream(out.getBytes(StandardCharsets.UTF_8)));
      int count = 0;
      while (reader.hasNext()) {
        Record record = reader.next();
        count++;
        assertEquals(24, record.getLeader().marshal().length());
        assertEquals(40, record.getControlNumberField() == null ? 0 : fixed(record).length());
        assertEquals(1, record.getVariableFields("245").size());
        assertTrue(record.getVariableFields(new String[] {"100", "110", "111"}).size() <= 1);
      }
      assertEquals(sources.size(), count);
    }

    private static String fixed(Record record) {
      return ((org.marc4j.marc.ControlField) record.getVariableField("008")).getData();
    }

    @Test
    void theOrderInWhichSourcesAreGivenDoesNotMatter() {
      List<Outgoing> shuffled = new ArrayList<>(sources);
      Collections.reverse(shuffled);
      assertEquals(out, written(shuffled));
    }

    @Test
    void broughtInAndGivenOutAgainItIsTheSameText() {
      Handed read = Handed.xml(out);
      assertEquals(List.of(), read.refused);
      assertEquals(out, written(asSources(read.sources)));
    }

    /** All but of which edition of the library another is one more, which needs its keys. */
    @Test
    void broughtInItSaysWhatTheLibrarySays() {
      Map<String, Incoming> read = new HashMap<>();
      Handed.xml(out).sources.forEach(s -> read.put(s.key().orElseThrow(), s));
      for (Outgoing source : sources) {
        if (source.part().isEmpty()) {
          Incoming again = read.get(source.id());
          Work now = source.work().withOnly(source.edition());
          Set<Aspect> differing = Aspect.differing(now, again.work());
          boolean hasParent =
              source.edition().lineage().filter(l -> l.parent().isPresent()).isPresent();
          assertEquals(
              hasParent ? EnumSet.of(Aspect.LINEAGE) : EnumSet.noneOf(Aspect.class),
              differing,
              source.id());
          assertEquals(List.of(), again.remarks());
        }
      }
    }

    @Test
    void notesAreNotGivenOut() {
      assertFalse(out.contains("triangular rings"));
    }
  }

  @Nested
  class Articles {
    @Test
    void anArticleIsNotFiledInTheLanguageThatHasIt() {
      assertEquals('4', FiledTitle.nonfiling("The neck", Optional.of("en")));
      assertEquals('4', FiledTitle.nonfiling("The neck", Optional.empty()));
      assertEquals('3', FiledTitle.nonfiling("Le verre", Optional.of("fr-BE")));
      assertEquals('2', FiledTitle.nonfiling("L'art du verre", Optional.of("fr")));
      assertEquals('4', FiledTitle.nonfiling("Die Karaffe", Optional.of("de")));
      assertEquals('4', FiledTitle.nonfiling("Gli orli", Optional.of("it")));
      assertEquals('3', FiledTitle.nonfiling("El vidrio", Optional.of("es")));
      assertEquals('0', FiledTitle.nonfiling("Die neck", Optional.of("en")));
      assertEquals('0', FiledTitle.nonfiling("Theory", Optional.of("en")));
      assertEquals('0', FiledTitle.nonfiling("The ", Optional.of("en")));
    }
  }
}
