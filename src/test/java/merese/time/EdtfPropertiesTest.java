package merese.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import merese.time.Span.On;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class EdtfPropertiesTest {
  /** Texts that look like EDTF, of which some are. */
  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "1790",
            "17",
            "X",
            "XX",
            "-",
            "-",
            "-06",
            "-11",
            "-21",
            "-41",
            "?",
            "~",
            "%",
            "/",
            "..",
            "[",
            "]",
            "{",
            "}",
            ",",
            "Y",
            "E",
            "S",
            "2",
            "170000",
            "T",
            "10:20:30",
            "Z",
            "+01",
            ":",
            " ",
            "x",
            "0000",
            "-0000",
            "é",
            "\ud800");
    return Arbitraries.oneOf(
        pieces.list().ofMinSize(1).ofMaxSize(12).map(list -> String.join("", list)),
        Arbitraries.strings().withChars("0123456789X-?~%/.[]{},YESTZ:+ ").ofMaxLength(25),
        Arbitraries.strings().ofMaxLength(12));
  }

  @Provide
  Arbitrary<String> dates() {
    Arbitrary<String> mark = Arbitraries.of("", "", "", "?", "~", "%");
    Arbitrary<String> year =
        Arbitraries.oneOf(
            Arbitraries.integers()
                .between(1, 9999)
                .map(y -> ("000" + y).substring(("000" + y).length() - 4)),
            Arbitraries.strings()
                .withChars("0123456789X")
                .ofLength(4)
                .filter(y -> !y.equals("0000")));
    Arbitrary<String> signed =
        Combinators.combine(Arbitraries.of("", "", "-"), year).as((s, y) -> s + y);
    Arbitrary<String> month = Arbitraries.of("01", "02", "04", "12", "XX", "0X", "1X", "X1");
    Arbitrary<String> day = Arbitraries.of("01", "09", "28", "XX", "0X", "1X", "2X", "X1");
    Arbitrary<String> first = Combinators.combine(mark, signed, mark).as((a, y, b) -> a + y + b);
    Arbitrary<String> second =
        Combinators.combine(mark, month, mark).as((a, m, b) -> "-" + a + m + b);
    Arbitrary<String> third = Combinators.combine(mark, day, mark).as((a, d, b) -> "-" + a + d + b);
    return Arbitraries.oneOf(
        first,
        Combinators.combine(first, second).as((y, m) -> y + m),
        Combinators.combine(first, second, third).as((y, m, d) -> y + m + d));
  }

  private static Optional<Edtf> read(String text) {
    try {
      return Optional.of(Edtf.parse(text));
    } catch (EdtfException refused) {
      assertTrue(refused.offset() >= 0 && refused.offset() <= text.length());
      assertFalse(refused.problem().isEmpty() || refused.remedy().isEmpty());
      return Optional.empty();
    }
  }

  @Property(tries = 5_000, seed = "1")
  void aTextIsReadAndPrintedAsItIsOrRefused(@ForAll("texts") String text) {
    read(text)
        .ifPresent(
            date -> {
              assertEquals(text, date.printed());
              assertEquals(date, Edtf.parse(date.printed()));
              assertHolds(date);
            });
  }

  @Property(seed = "1")
  void aDateMadeByTheGrammarIsReadAndPrintedAsItIs(@ForAll("dates") String text) {
    Edtf date = Edtf.parse(text);
    assertEquals(text, date.printed());
    assertHolds(date);
  }

  @Property(seed = "1")
  void anIntervalIsReadWhereItsStartIsNotAfterItsEnd(
      @ForAll("dates") String from, @ForAll("dates") String to) {
    EdtfPoint start = (EdtfPoint) Edtf.parse(from);
    EdtfPoint end = (EdtfPoint) Edtf.parse(to);
    Optional<Edtf> interval = read(from + "/" + to);
    assertEquals(start.first().compareTo(end.startOfLast()) <= 0, interval.isPresent());
    interval.ifPresent(EdtfPropertiesTest::assertHolds);
  }

  /** The core is in the outer span, and both are of the same kind of end. */
  private static void assertHolds(Edtf date) {
    assertTrue(date.level() >= 0 && date.level() <= 2);
    Span core = date.core();
    Span outer = date.outer();
    assertEquals(core.from().getClass(), outer.from().getClass());
    assertEquals(core.to().getClass(), outer.to().getClass());
    if (core.from() instanceof On first && outer.from() instanceof On further) {
      assertTrue(first.day().compareTo(further.day()) >= 0);
    }
    if (core.to() instanceof On last && outer.to() instanceof On further) {
      assertTrue(last.day().compareTo(further.day()) <= 0);
    }
    assertTrue(core.mayOverlap(outer));
    if (!date.qualification().isApproximate() && date instanceof EdtfDate) {
      assertEquals(core, outer);
    }
  }
}
