package merese.exchange.marc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Libraries and records out, in and out again. */
class MarcRoundTripTest {
  private static final String SEED = "1968";

  @Provide
  Arbitrary<List<Work>> usual() {
    return new GeneratedWorks(GeneratedWorks.usual()).works().list().ofMinSize(1).ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<Work>> any() {
    return new GeneratedWorks(GeneratedWorks.any()).works().list().ofMinSize(1).ofMaxSize(4);
  }

  private static List<Outgoing> sources(List<Work> works) {
    List<Outgoing> sources = new ArrayList<>();
    for (Work work : works) {
      Edition edition = work.editions().get(0).withKey("key-" + sources.size());
      sources.add(
          new Outgoing(work.withEditions(List.of(edition)), edition, Optional.empty(), List.of()));
    }
    return sources;
  }

  @Property(tries = 600, seed = SEED)
  void aLibraryThatComesInAgainGoesOutTheSame(@ForAll("any") List<Work> works) {
    String out = MarcXmlWriterTest.written(sources(works));
    Handed read = Handed.xml(out);
    assertEquals(List.of(), read.refused);
    assertEquals(works.size(), read.sources.size());
    assertEquals(out, MarcXmlWriterTest.written(MarcXmlWriterTest.asSources(read.sources)));
  }

  @Property(tries = 1000, seed = SEED)
  void aLibraryThatComesInAgainSaysTheSame(@ForAll("usual") List<Work> works) {
    List<Outgoing> sources = sources(works);
    Handed read = Handed.xml(MarcXmlWriterTest.written(sources));
    for (int i = 0; i < sources.size(); i++) {
      Work now = sources.get(i).work();
      Work again = read.sources.get(i).work();
      for (Aspect aspect : differing(now, again)) {
        assertEquals(aspect.printed(now), aspect.printed(again), aspect.words());
      }
    }
  }

  /** An article's ISSN is said with its journal, after the other numbers. */
  private static Set<Aspect> differing(Work now, Work again) {
    Set<Aspect> differing = Aspect.differing(now, again);
    boolean sameNumbers =
        Set.copyOf(now.editions().get(0).imprint().identifiers())
            .equals(Set.copyOf(again.editions().get(0).imprint().identifiers()));
    if (sameNumbers) {
      differing.remove(Aspect.IDENTIFIERS);
    }
    return differing;
  }

  /** Any text in any field of a record that is read. */
  @Property(tries = 600, seed = SEED)
  void aRecordGoesOutAndComesInFieldByField(@ForAll("fields") List<Field> fields) {
    List<Field> all = new ArrayList<>();
    all.add(new Field("LDR", "00000nam a2200000 a 4500"));
    all.add(new Field("245 00", "$aGlass"));
    all.addAll(fields);
    var record = new MarcRecord(all.stream().map(MarcField::of).toList()).received();
    Work work = MarcMeaning.of(record).orElseThrow().work();
    Handed read = Handed.xml(MarcXmlWriterTest.written(List.of(MarcXmlWriterTest.outgoing(work))));
    assertEquals(List.of(record), read.received());
    assertEquals(EnumSet.noneOf(Aspect.class), Aspect.differing(work, read.sources.get(0).work()));
  }

  @Provide
  Arbitrary<List<Field>> fields() {
    Arbitrary<String> tag =
        Arbitraries.of(
            "020", "022", "024", "041", "100", "110", "111", "245", "246", "250", "260", "264",
            "300", "440", "490", "500", "502", "518", "534", "655", "700", "710", "773", "830",
            "852", "856", "857", "880", "999");
    Arbitrary<String> indicators = Arbitraries.of("##", "10", "1#", "7#", "#7", "#1", "40", "0#");
    Arbitrary<String> subfield =
        net.jqwik.api.Combinators.combine(
                Arbitraries.of("abcdegnopqtuvxyz2347".split("")), GeneratedWorks.any())
            .as((code, text) -> "$" + code + text.replaceAll("[${}]", ""));
    return net.jqwik.api.Combinators.combine(
            tag, indicators, subfield.list().ofMinSize(1).ofMaxSize(4))
        .as((t, i, s) -> new Field(t + " " + i, String.join("", s)))
        .list()
        .ofMaxSize(12);
  }

  /** The Library of Congress's line form keeps the three marks that it uses itself. */
  @Property(tries = 500, seed = SEED)
  void theLineFormOfAFieldIsTheField(@ForAll String text, @ForAll char code) {
    MarcField field =
        MarcField.data("245", "1 ", List.of(new MarcField.Subfield(code, text + "{dollar}${")));
    assertEquals(field, MarcField.of(field.received()));
  }
}
