package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page, as a browser shows it: no fault by axe-core in light or dark, nothing that the
 * browser refuses, and nothing that sticks out of a telephone's width. The pictures that are taken
 * stay in target/desk, to be looked at.
 */
class DeskPagesIT {
  private static final int[] WIDTHS = {390, 1024, 1600};

  @TempDir private static Path home;
  private static RunningDesk desk;
  private static Browser browser;

  @BeforeAll
  static void start() throws IOException {
    desk = RunningDesk.onDemo(home);
    browser = Browser.open(desk, home);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    assertEquals(List.of(), desk.faults());
    desk.close();
  }

  /** A name for the picture, and an address. */
  static List<List<String>> pages() {
    return List.of(
        List.of("look-up", "/"),
        List.of("look-up-bladed", "/?term=bladed+ring&pictured=on"),
        List.of("look-up-homonym", "/?term=triple+ring"),
        List.of("look-up-nothing", "/?term=spiral+neck+trail"),
        List.of("look-up-unknown", "/?term=no+such+word"),
        List.of("find", "/find?words=join+felt"),
        List.of("find-empty", "/find"),
        List.of("not-there", "/no/such/page"),
        List.of("concordance", "/concordance?term=ring"),
        List.of(
            "concordance-cell",
            "/concordance/cell?term=ring&source=quenby-1926&column=ring-bladed"),
        List.of("concordance-empty", "/concordance"),
        List.of("timeline", "/timeline?concept=stopper-target&year=1795"),
        List.of("timeline-empty", "/timeline"),
        List.of("words", "/words?term=ring"),
        List.of("witnesses", "/witnesses?concept=foot-folded"),
        List.of("shelf", "/shelf"),
        List.of("shelf-mark", "/shelf?by=mark"),
        List.of("source", "/shelf/quenby-1926"),
        List.of("add", "/add?kind=monograph"),
        List.of("edit", "/edit/source/haskeld-1983"),
        List.of("remove", "/remove?source=haskeld-1983"),
        List.of("vocabulary", "/vocabulary?facet=ring"),
        List.of("concept", "/vocabulary/ring-bladed"),
        List.of("pieces", "/pieces"),
        List.of("piece", "/pieces/d-3"),
        List.of("identify", "/identify?object=d-9"),
        List.of("note", "/note?source=quenby-1926&at=p.+41"),
        List.of("note-empty", "/note"),
        List.of("headings", "/list-of-headings?source=quenby-1926"),
        List.of("looked", "/looked?source=quenby-1926"),
        List.of("changes", "/changes"),
        List.of("check", "/check"),
        List.of("reading-list", "/reading-list?concept=foot-firing&concept=ring-bladed"),
        List.of("reading-list-empty", "/reading-list"),
        List.of("pull", "/pull?concept=ring-bladed&concept=foot-folded"),
        List.of("show", "/show?concept=ring-bladed"),
        List.of("show-empty", "/show"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void isSoundAtEveryWidthInLightAndDark(List<String> page) throws IOException {
    String name = page.get(0);
    for (boolean dark : new boolean[] {false, true}) {
      browser.dark(dark);
      for (int width : WIDTHS) {
        browser.size(width, 900);
        browser.go(page.get(1));
        String shot = name + "-" + width + (dark ? "-dark" : "");
        assertEquals(List.of(), browser.stickingOut(), shot);
        browser.picture(shot);
        if (width == 1024) {
          assertEquals(List.of(), browser.accessibilityFaults(), shot);
        }
      }
    }
    List<String> complaints = browser.complaints();
    complaints.removeIf(line -> line.contains("/no/such/page - Failed to load resource"));
    assertEquals(List.of(), complaints);
  }
}
