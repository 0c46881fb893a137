package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import merese.model.Edition.OwnTitle;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;

class WorkTest {
  private static final Edition HERE = SmallLibrary.edition("varnell-1938", 1938);
  private static final Edition ABROAD =
      titled(SmallLibrary.edition("varnell-1939", 1939), "Tableware", "Moulded and Blown");
  private static final Work WORK =
      SmallLibrary.monograph("Varnell", 1938, "Pressed and Free")
          .withAlternateTitles(List.of("Tableware: Moulded and Blown", "Old Glass"))
          .withEditions(List.of(HERE, ABROAD));

  private static Edition titled(Edition edition, String title, String subtitle) {
    return edition.withImprint(
        edition
            .imprint()
            .withTitle(Optional.of(new OwnTitle(title, Optional.ofNullable(subtitle)))));
  }

  @Test
  void anEditionPublishedUnderAnotherTitleIsShownUnderThat() {
    Work shown = WORK.withOnly(ABROAD);
    assertEquals("Tableware", shown.title());
    assertEquals(Optional.of("Moulded and Blown"), shown.subtitle());
    assertEquals(List.of("Pressed and Free", "Old Glass"), shown.alternateTitles());
    assertEquals("Pressed and Free", WORK.withOnly(HERE).title());
  }

  @Test
  void whatWasShownIsPutBackAsItWas() {
    assertEquals(WORK, WORK.withBack(WORK.withOnly(ABROAD)));
    assertEquals(WORK, WORK.withBack(WORK.withOnly(HERE)));
  }

  @Test
  void aChangedTitleGoesWhereItCameFrom() {
    Edition other = titled(ABROAD, "Glassware", null);
    Work changed = WORK.withOnly(other);
    assertEquals(List.of(HERE, other), WORK.withBack(changed).editions());
    assertEquals("Pressed and Free", WORK.withBack(changed).title());
  }
}
