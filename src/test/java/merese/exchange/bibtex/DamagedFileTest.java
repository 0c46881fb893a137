package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import merese.exchange.Incoming;
import merese.model.ReceivedRecord;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** A good file with bytes of it changed, put in or left out at random. */
class DamagedFileTest {
  /** Entry "k0" and so on, each with a line of text after it. */
  private static final List<String> ENTRIES =
      IntStream.range(0, 8)
          .mapToObj(
              i ->
                  (i % 2 == 0
                          ? """
                            @book{k%d,
                              author = {Yelland, Ada and {Weeden and Sons}},
                              title = "Stems {"}of{"} Severn, {\\'e}tude é",
                              year = 196%d,
                              month = jul # " 5", %% note
                              note = {Kept at Tolland (fol. 3)}
                            }

                            Text on it.
                            """
                          : """
                            @misc(k%d, title = {Gläser %d} # " und Becher", howpublished = {})
                            Text on it.
                            """)
                      .replace("%d", Integer.toString(i)))
          .toList();

  private static final byte[] GOOD = bytes(String.join("", ENTRIES));

  private enum Kind {
    CHANGED,
    PUT_IN,
    LEFT_OUT
  }

  private record Damage(int position, Kind kind, byte with) {
    int at() {
      return position % GOOD.length;
    }

    byte[] of(byte[] file) {
      int at = Math.min(at(), file.length);
      int from = Math.min(file.length, kind == Kind.PUT_IN ? at : at + 1);
      int added = kind == Kind.LEFT_OUT ? 0 : 1;
      byte[] damaged = Arrays.copyOf(file, at + added + file.length - from);
      if (added > 0) {
        damaged[at] = with;
      }
      System.arraycopy(file, from, damaged, at + added, file.length - from);
      return damaged;
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<ReceivedRecord> received(byte[] file) {
    return Handed.read(file).sources.stream().map(Incoming::received).toList();
  }

  private static int chunks(byte[] file) throws IOException {
    try (Spool spool = Spool.of(new ByteArrayInputStream(file), Spool.USUAL_FOLDER)) {
      BibtexSplitter splitter = new BibtexSplitter(spool);
      int count = 0;
      while (splitter.next().isPresent()) {
        count++;
      }
      return count;
    }
  }

  @Provide
  Arbitrary<Damage> damages() {
    Arbitrary<Byte> bytes =
        Arbitraries.oneOf(
            Arbitraries.of("{}()\",=#%@\\ \n\rk0".chars().boxed().toList()).map(Integer::byteValue),
            Arbitraries.bytes());
    return Combinators.combine(
            Arbitraries.integers().between(0, 1_000_000), Arbitraries.of(Kind.class), bytes)
        .as(Damage::new);
  }

  @Provide
  Arbitrary<List<Damage>> severalDamages() {
    return damages().list().ofMinSize(2).ofMaxSize(40);
  }

  /** What is before the damage and what is after the next @ that still starts a line. */
  @Property(tries = 4000, seed = "4")
  void takesNoOtherEntryWithIt(@ForAll("damages") Damage damage) throws IOException {
    byte[] damaged = damage.of(GOOD);
    List<ReceivedRecord> good = received(GOOD);
    List<ReceivedRecord> expected = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < ENTRIES.size(); i++) {
      int end = start + bytes(ENTRIES.get(i)).length;
      boolean before = end <= damage.at();
      boolean after = start > damage.at() + 1;
      if (before || after) {
        expected.add(good.get(i));
      }
      start = end;
    }
    Handed handed = Handed.read(damaged);
    List<ReceivedRecord> received = handed.sources.stream().map(Incoming::received).toList();
    assertTrue(received.containsAll(expected), handed::toString);
    assertEquals(chunks(damaged), handed.count());
    assertTrue(handed.count() <= ENTRIES.size() + 1, handed::toString);
  }

  @Property(tries = 1000, seed = "5")
  void isReadToItsEndHoweverMuchIsDamaged(@ForAll("severalDamages") List<Damage> damages)
      throws IOException {
    byte[] damaged = GOOD;
    for (Damage damage : damages) {
      damaged = damage.of(damaged);
    }
    Handed handed = Handed.read(damaged);
    String text = new String(damaged, StandardCharsets.ISO_8859_1);
    for (var refused : handed.refused) {
      assertTrue(text.contains(new String(refused.verbatim(), StandardCharsets.ISO_8859_1)));
    }
    assertTrue(handed.count() <= chunks(damaged));
  }

  @Property(tries = 500, seed = "6")
  void keepsWhatStandsBeforeItsEndWhereItIsCutOff(
      @ForAll @IntRange(min = 0, max = 2000) int length) {
    byte[] cut = Arrays.copyOf(GOOD, Math.min(length, GOOD.length));
    Handed handed = Handed.read(cut);
    List<ReceivedRecord> good = received(GOOD);
    int whole = 0;
    int end = 0;
    for (String entry : ENTRIES) {
      end += bytes(entry).length;
      whole += end <= cut.length ? 1 : 0;
    }
    assertEquals(good.subList(0, whole), received(cut).subList(0, whole));
    assertTrue(handed.count() <= whole + 1);
  }
}
