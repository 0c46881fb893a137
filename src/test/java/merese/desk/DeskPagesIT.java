package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
        List.of("look-up-unknown", "/?term=no+such+word"));
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
        browser.picture(shot);
        assertFalse(browser.isWiderThanItsWindow(), shot + " is too wide");
        if (width == 1024) {
          assertEquals(List.of(), browser.accessibilityFaults(), shot);
        }
      }
    }
    browser.assertNoComplaints();
  }
}
