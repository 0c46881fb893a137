package merese.exchange.csl;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import merese.exchange.Fixtures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What an item says: by the CSL 1.0.2 specification and its schema csl-data.json (from memory),
 * dates also by ISO 8601-2:2019; how broken items are parted is our own rule ({@link
 * ItemSplitter}).
 */
class CslFixturesTest {
  static Stream<Path> cases() {
    return Fixtures.in(CslFixturesTest.class, "reading", ".json");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isHandedOnAsItsPartnerSays(Path file) throws IOException {
    Fixtures.check(file, new CslJsonReader());
  }
}
