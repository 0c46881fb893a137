package merese.citation;

import static merese.citation.Invented.a;
import static merese.citation.Invented.book;
import static merese.citation.Invented.locators;
import static merese.citation.Invented.person;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import merese.model.Contributor.Role;
import merese.model.Edition.Lineage.Form;
import merese.model.SourceKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Citations as published, beside ours. The sources, all from memory:
 *
 * <ul>
 *   <li>CMOS: The Chicago Manual of Style Online, "Notes and Bibliography: Sample Citations", 17th
 *       edition
 *   <li>MHRA: MHRA Style Guide, 3rd edition 2013, section 11.2
 *   <li>ISO: ISO 690:2010, the examples of its sections 5 and A.2
 * </ul>
 *
 * Where ours differs, the sample lists our text and the reason; the test fails when a difference
 * goes away as well as when one appears.
 */
class PublishedSamplesTest {
  private static final String CHICAGO = "chicago-notes-bibliography-17th-edition";
  private static final String MHRA = "mhra-notes-publisher-place";
  private static final String ISO = "iso690-author-date-en";
  private static final Map<String, Citations> STYLES = new HashMap<>();

  private static final Source SMITH =
      book("Swing Time").by("Zadie", "Smith").year(2016).at("New York", "Penguin Press").source();
  private static final Source GRAZER =
      book("A Curious Mind")
          .subtitle("The Secret to a Bigger Life")
          .by("Brian", "Grazer")
          .by("Charles", "Fishman")
          .year(2015)
          .at("New York", "Simon & Schuster")
          .source();
  private static final Source DAGATA = essays().source();
  private static final Source THOREAU =
      essays().part("Walking", person("Henry David", "Thoreau"), "pp. 167–95").source();
  private static final Source LAHIRI =
      book("In Other Words")
          .by("Jhumpa", "Lahiri")
          .with(Role.TRANSLATOR, person("Ann", "Goldstein"))
          .year(2016)
          .at("New York", "Alfred A. Knopf")
          .source();
  private static final Source SATTERFIELD =
      a(SourceKind.JOURNAL_ARTICLE, "Livy and the Pax Deum")
          .by("Susan", "Satterfield")
          .year(2016)
          .yearPrinted("April 2016")
          .in("Classical Philology", "111", "2", "pp. 165–76")
          .source();
  private static final Source KENG =
      a(SourceKind.JOURNAL_ARTICLE, "Expanding College Access in Taiwan, 1978–2014")
          .subtitle("Effects on Graduate Quality and Income Inequality")
          .by("Shao-Hsun", "Keng")
          .by("Chun-Hung", "Lin")
          .by("Peter F.", "Orazem")
          .year(2017)
          .yearPrinted("Spring 2017")
          .in("Journal of Human Capital", "11", "1", "pp. 1–34")
          .online("https://doi.org/10.1086/690235", null)
          .source();
  private static final Source RUTZ =
      a(SourceKind.THESIS, "King Lear and Its Folktale Analogues")
          .by("Cynthia Lillian", "Rutz")
          .year(2013)
          .kept("University of Chicago", null, null, "PhD diss.")
          .source();

  private static Invented essays() {
    return book("The Making of the American Essay")
        .editedBy("John", "D’Agata")
        .year(2016)
        .at("Minneapolis", "Graywolf Press");
  }

  /**
   * @param ours empty where it is as published
   */
  record Sample(String published, String actual, String ours, String reason) {
    @Override
    public String toString() {
      return published;
    }
  }

  static Stream<Sample> samples() {
    return Stream.of(chicagoNotes(), chicagoShort(), chicagoList(), mhra(), iso()).flatMap(s -> s);
  }

  private static Stream<Sample> chicagoNotes() {
    return Stream.of(
        same(
            "Zadie Smith, *Swing Time* (New York: Penguin Press, 2016), 315–16.",
            note(CHICAGO, SMITH, "pp. 315–16")),
        same(
            "Zadie Smith, *Swing Time* (New York: Penguin Press, 2016), 315–16.",
            note("chicago-notes-bibliography-16th-edition", SMITH, "pp. 315–16")),
        other(
            "Zadie Smith, *Swing Time* (New York: Penguin Press, 2016), 315–16.",
            note("chicago-notes-bibliography", SMITH, "pp. 315–16"),
            "Zadie Smith, *Swing Time* (Penguin Press, 2016), 315–16.",
            "the 18th edition no longer wants the place"),
        same(
            "Brian Grazer and Charles Fishman, *A Curious Mind: The Secret to a Bigger Life*"
                + " (New York: Simon & Schuster, 2015), 12.",
            note(CHICAGO, GRAZER, "p. 12")),
        same(
            "John D’Agata, ed., *The Making of the American Essay* (Minneapolis: Graywolf Press,"
                + " 2016), 177–78.",
            note(CHICAGO, DAGATA, "pp. 177–78")),
        same(
            "Henry David Thoreau, “Walking,” in *The Making of the American Essay*, ed. John"
                + " D’Agata (Minneapolis: Graywolf Press, 2016), 177–78.",
            note(CHICAGO, THOREAU, "pp. 177–78")),
        same(
            "Jhumpa Lahiri, *In Other Words*, trans. Ann Goldstein (New York: Alfred A. Knopf,"
                + " 2016), 146.",
            note(CHICAGO, LAHIRI, "p. 146")),
        other(
            "Susan Satterfield, “Livy and the *Pax Deum*,” *Classical Philology* 111, no. 2"
                + " (April 2016): 170.",
            note(CHICAGO, SATTERFIELD, "p. 170"),
            "Susan Satterfield, “Livy and the Pax Deum,” *Classical Philology* 111, no. 2"
                + " (April 2016): 170.",
            "a title has no mark-up of its own here"),
        same(
            "Shao-Hsun Keng, Chun-Hung Lin, and Peter F. Orazem, “Expanding College Access in"
                + " Taiwan, 1978–2014: Effects on Graduate Quality and Income Inequality,” *Journal"
                + " of Human Capital* 11, no. 1 (Spring 2017): 9–10,"
                + " <https://doi.org/10.1086/690235>.",
            note(CHICAGO, KENG, "pp. 9–10")),
        other(
            "Cynthia Lillian Rutz, “*King Lear* and Its Folktale Analogues” (PhD diss., University"
                + " of Chicago, 2013), 99–100.",
            note(CHICAGO, RUTZ, "pp. 99–100"),
            "Cynthia Lillian Rutz, “King Lear and Its Folktale Analogues” (PhD diss., University"
                + " of Chicago, 2013), 99–100.",
            "a title has no mark-up of its own here"));
  }

  private static Stream<Sample> chicagoShort() {
    return Stream.of(
        same("Smith, *Swing Time*, 320.", shortNote(CHICAGO, SMITH, "p. 320")),
        other(
            "Grazer and Fishman, *Curious Mind*, 37.",
            shortNote(CHICAGO, GRAZER, "p. 37"),
            "Grazer and Fishman, *A Curious Mind*, 37.",
            "a short title is the title without its subtitle; its article stays"),
        same("Thoreau, “Walking,” 182.", shortNote(CHICAGO, THOREAU, "p. 182")),
        same("Lahiri, *In Other Words*, 184.", shortNote(CHICAGO, LAHIRI, "p. 184")),
        other(
            "Satterfield, “Livy,” 172–73.",
            shortNote(CHICAGO, SATTERFIELD, "pp. 172–73"),
            "Satterfield, “Livy and the Pax Deum,” 172–73.",
            "a title without a subtitle is not shortened"),
        other(
            "Keng, Lin, and Orazem, “Expanding College Access,” 23.",
            shortNote(CHICAGO, KENG, "p. 23"),
            "Keng, Lin, and Orazem, “Expanding College Access in Taiwan, 1978–2014,” 23.",
            "a short title is the title without its subtitle"));
  }

  private static Stream<Sample> chicagoList() {
    return Stream.of(
        same("Smith, Zadie. *Swing Time*. New York: Penguin Press, 2016.", entry(CHICAGO, SMITH)),
        same(
            "Grazer, Brian, and Charles Fishman. *A Curious Mind: The Secret to a Bigger Life*. New"
                + " York: Simon & Schuster, 2015.",
            entry(CHICAGO, GRAZER)),
        same(
            "D’Agata, John, ed. *The Making of the American Essay*. Minneapolis: Graywolf Press,"
                + " 2016.",
            entry(CHICAGO, DAGATA)),
        same(
            "Thoreau, Henry David. “Walking.” In *The Making of the American Essay*, edited by John"
                + " D’Agata, 167–95. Minneapolis: Graywolf Press, 2016.",
            entry(CHICAGO, THOREAU)),
        same(
            "Lahiri, Jhumpa. *In Other Words*. Translated by Ann Goldstein. New York: Alfred A."
                + " Knopf, 2016.",
            entry(CHICAGO, LAHIRI)),
        same(
            "Keng, Shao-Hsun, Chun-Hung Lin, and Peter F. Orazem. “Expanding College Access in"
                + " Taiwan, 1978–2014: Effects on Graduate Quality and Income Inequality.” *Journal"
                + " of Human Capital* 11, no. 1 (Spring 2017): 1–34."
                + " <https://doi.org/10.1086/690235>.",
            entry(CHICAGO, KENG)));
  }

  private static Stream<Sample> mhra() {
    return Stream.of(
        other(
            "H. Munro Chadwick and N. Kershaw Chadwick, *The Growth of Literature*, 3 vols"
                + " (Cambridge: Cambridge University Press, 1932–40; repr. 1986), I, p. xiii.",
            note(MHRA, chadwick().yearPrinted("1932–40; repr. 1986").source(), "vol. I, p. xiii"),
            "H. Munro Chadwick and N. Kershaw Chadwick, *The Growth of Literature*, 3 vols"
                + " (Cambridge: Cambridge University Press, 1932–40; repr. 1986), vol. I,"
                + " p. xiii.",
            "a place in a volume is printed as it is written"),
        other(
            "H. Munro Chadwick and N. Kershaw Chadwick, *The Growth of Literature*, 3 vols"
                + " (Cambridge: Cambridge University Press, 1932–40; repr. 1986), I, p. xiii.",
            note(MHRA, chadwick().from(Form.REPRINT, 1932).source(), "vol. I, p. xiii"),
            "H. Munro Chadwick and N. Kershaw Chadwick, *The Growth of Literature*, 3 vols (1932;"
                + " Cambridge: Cambridge University Press, 1986), vol. I, p. xiii.",
            "the style is of the 4th edition, which gives the original date first"),
        same(
            "Tom McArthur, *Worlds of Reference: Lexicography, Learning and Language from the Clay"
                + " Tablet to the Computer* (Cambridge: Cambridge University Press, 1986), p. 59.",
            note(
                MHRA,
                book("Worlds of Reference")
                    .subtitle(
                        "Lexicography, Learning and Language from the Clay Tablet to the Computer")
                    .by("Tom", "McArthur")
                    .year(1986)
                    .at("Cambridge", "Cambridge University Press")
                    .source(),
                "p. 59")),
        same(
            "Jean Starobinski, *Montaigne in Motion*, trans. by Arthur Goldhammer (Chicago:"
                + " University of Chicago Press, 1986), p. 174.",
            note(
                MHRA,
                book("Montaigne in Motion")
                    .by("Jean", "Starobinski")
                    .with(Role.TRANSLATOR, person("Arthur", "Goldhammer"))
                    .year(1986)
                    .at("Chicago", "University of Chicago Press")
                    .source(),
                "p. 174")),
        same(
            "*Emily Dickinson: Selected Letters*, ed. by Thomas H. Johnson, 2nd edn (Cambridge, MA:"
                + " Harvard University Press, 1985), pp. 194–97.",
            note(
                MHRA,
                book("Emily Dickinson")
                    .subtitle("Selected Letters")
                    .editedBy("Thomas H.", "Johnson")
                    .edition("2nd edn")
                    .year(1985)
                    .at("Cambridge, MA", "Harvard University Press")
                    .source(),
                "pp. 194–97")),
        other(
            "Richard Hillyer, ‘In More than Name Only: Jonson’s “To Sir Horace Vere”’, *Modern"
                + " Language Review*, 85 (1990), 1–11 (p. 8).",
            note(
                MHRA,
                a(SourceKind.JOURNAL_ARTICLE, "In More than Name Only")
                    .subtitle("Jonson's \"To Sir Horace Vere\"")
                    .by("Richard", "Hillyer")
                    .year(1990)
                    .in("Modern Language Review", "85", null, "pp. 1–11")
                    .source(),
                "p. 8"),
            "Richard Hillyer, ‘In More than Name Only: Jonson’s “to Sir Horace Vere”’, *Modern"
                + " Language Review*, 85 (1990), pp. 1–11 (p. 8).",
            "the style is of the 4th edition, which has pp. for articles too; the processor's title"
                + " case does not see that a quotation begins"),
        same(
            "Robert Ingram, ‘Historical Drama in Great Britain from 1935 to the Present’"
                + " (unpublished doctoral thesis, University of London, 1988), p. 17.",
            note(
                MHRA,
                a(SourceKind.THESIS, "Historical Drama in Great Britain from 1935 to the Present")
                    .by("Robert", "Ingram")
                    .year(1988)
                    .kept("University of London", null, null, "unpublished doctoral thesis")
                    .source(),
                "p. 17")));
  }

  private static Invented chadwick() {
    return book("The Growth of Literature")
        .by("H. Munro", "Chadwick")
        .by("N. Kershaw", "Chadwick")
        .volumes(3)
        .year(1986)
        .at("Cambridge", "Cambridge University Press");
  }

  private static Stream<Sample> iso() {
    return Stream.of(
        same(
            "CRANE, D., 1972. *Invisible colleges*. Chicago: University of Chicago Press.",
            entry(
                ISO,
                book("Invisible colleges")
                    .by("D.", "Crane")
                    .year(1972)
                    .at("Chicago", "University of Chicago Press")
                    .source())),
        other(
            "STIEG, M.F., 1981. The information needs of historians. *College and Research"
                + " Libraries*, **42**(6), 549–560.",
            entry(
                ISO,
                a(SourceKind.JOURNAL_ARTICLE, "The information needs of historians")
                    .by("M. F.", "Stieg")
                    .year(1981)
                    .in("College and Research Libraries", "42", "6", "pp. 549–560")
                    .source()),
            "STIEG, M. F., 1981. The information needs of historians. *College and Research"
                + " Libraries*. 1981. Vol.\u00a042, no.\u00a06, p.\u00a0549–560.",
            "the style chose the longer of the forms that the standard allows"));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void ourTextIsThePublishedOneOrDiffersAsListed(Sample sample) {
    if (sample.ours.isEmpty()) {
      assertEquals(sample.published, sample.actual);
    } else {
      assertNotEquals(sample.published, sample.actual, "no longer differs: " + sample.reason);
      assertEquals(sample.ours, sample.actual, sample.reason);
    }
  }

  private static Sample same(String published, String actual) {
    return new Sample(published, actual, "", "");
  }

  private static Sample other(String published, String actual, String ours, String reason) {
    return new Sample(published, actual, ours, reason);
  }

  private static String note(String style, Source source, String... places) {
    return in(style).note(source, locators(places), Output.MARKDOWN);
  }

  private static String shortNote(String style, Source source, String... places) {
    return in(style).shortNote(source, locators(places), Output.MARKDOWN);
  }

  private static String entry(String style, Source source) {
    return in(style).entry(source, Output.MARKDOWN);
  }

  private static Citations in(String style) {
    return STYLES.computeIfAbsent(
        style, name -> Citations.inStyle(name, name.startsWith("chicago") ? "en-US" : "en-GB"));
  }
}
