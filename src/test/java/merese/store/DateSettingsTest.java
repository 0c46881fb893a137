package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.DateSettings;
import merese.model.DateWord;
import merese.model.LibrarySettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateSettingsTest {
  @TempDir private Path folder;

  private Path file;

  private LibraryFolder library(String profile) throws IOException {
    if (file == null) {
      file = LibraryFolder.create(folder, "A library").resolve("library.json");
    }
    Files.writeString(
        file,
        "{\n  \"format\": 2,\n  \"title\": \"A library\",\n  \"language\": \"en\",\n"
            + "  \"dateProfile\": "
            + profile
            + "\n}\n");
    return LibraryFolder.open(file.getParent());
  }

  @Test
  void theNameDefaultStillStandsForTheProgramsRules() throws IOException {
    assertEquals(
        Optional.of(DateSettings.DEFAULT), library("\"default\"").settings().dateProfile());
  }

  @Test
  void numbersAndWordsAreRead() throws IOException {
    DateSettings dates =
        library(
                """
                { "name": "ours", "circaYears": 10, "periods": [
                    { "word": "Regency", "from": 1795, "to": 1837, "outerTo": 1840 } ] }""")
            .settings()
            .dateProfile()
            .orElseThrow();
    assertEquals(OptionalInt.of(10), dates.circaYears());
    assertEquals(
        new DateWord("Regency", 1795, 1837, OptionalInt.empty(), OptionalInt.of(1840)),
        dates.periods().get(0));
  }

  @Test
  void savingKeepsWhatIsNotKnown() throws IOException {
    LibraryFolder library =
        library(
            "{ \"circaYears\": 10, \"mine\": 1, \"periods\": [\n"
                + "    { \"word\": \"Regency\", \"from\": 1811, \"to\": 1820, \"why\": \"x\" } ] }");
    Stored<LibrarySettings> stored = library.storedSettings();
    LibrarySettings old = stored.value();
    library.save(
        stored,
        new LibrarySettings(
            old.format(), "Another", old.language(), old.style(), old.dateProfile()));
    String saved = Files.readString(file);
    assertTrue(saved.contains("\"mine\": 1"), saved);
    assertTrue(saved.contains("\"why\": \"x\""), saved);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "ours" | library.json:5:18 | stands where "default" or an object
          { "circaYears": "ten" } | library.json:5:34 | whole number belongs
          { "circaYears": -1 } | library.json:5:18 | from 0 to 100
          { "centuryFirstYear": 2 } | library.json:5:18 | write 0 for 1700–1799
          { "periods": [ { "word": "R", "from": 1820, "to": 1811 } ] } | library.json:5:33 | ends before it begins
          { "periods": [ { "word": "R", "from": 1, "to": 2, "outerFrom": 2 } ] } | library.json:5:33 | begin after the plain ones
          { "parts": [ { "word": "early", "from": 0, "to": 133 } ] } | library.json:5:18 | outside its century
          { "parts": [ { "from": 0, "to": 33 } ] } | library.json:5:31 | "word" is missing
          """)
  void aMistakeIsNamedWithItsPlace(String profile, String place, String message)
      throws IOException {
    LibraryFolder library = library(profile);
    LibraryException refused = assertThrows(LibraryException.class, library::settings);
    assertTrue(refused.getMessage().contains(place), refused.getMessage());
    assertTrue(refused.getMessage().contains(message), refused.getMessage());
  }
}
