package merese.exchange.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import merese.exchange.Fixtures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How rows are parted is RFC 4180 and, for rows that break it, our own rule ({@link RowSplitter});
 * what headers and cells mean is common practice, no source.
 */
class CsvFixturesTest {
  static Stream<Path> cases() {
    return Fixtures.in(CsvFixturesTest.class, "reading", ".csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isHandedOnAsItsPartnerSays(Path file) throws IOException {
    Fixtures.check(file, new CsvReader());
  }
}
