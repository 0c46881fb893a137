package merese.exchange.identifier;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Where the hyphens of an ISBN stand: the ranges of the International ISBN Agency, as of 3 October
 * 2024, from its RangeMessage.xml in the jar of isbn-core 1.5.3.
 */
final class IsbnRanges {
  private static final String FILE = "/com/github/ladutsko/isbn/RangeMessage.xml";

  /** The ranges say how many digits the registrant has by the seven digits after the group. */
  private static final int DIGITS = 7;

  private static final int LONGEST_GROUP = 5;

  /** How many digits each part has. */
  record Parts(int group, int registrant) {}

  private record Range(int from, int to, int length) {}

  private final Map<String, List<Range>> byPrefix;

  private IsbnRanges(Map<String, List<Range>> byPrefix) {
    this.byPrefix = byPrefix;
  }

  static IsbnRanges get() {
    return Loaded.RANGES;
  }

  private static final class Loaded {
    static final IsbnRanges RANGES = load();
  }

  /**
   * @param thirteen digits, of which the last does not matter
   * @return empty where no range in use has it
   */
  Optional<Parts> parts(String thirteen) {
    for (int group = 1; group <= LONGEST_GROUP; group++) {
      List<Range> ranges = byPrefix.get(thirteen.substring(0, 3 + group));
      if (ranges != null) {
        int digits = number(thirteen.substring(3 + group, 12));
        for (Range range : ranges) {
          if (range.from() <= digits && digits <= range.to() && range.length() > 0) {
            return Optional.of(new Parts(group, range.length()));
          }
        }
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static int number(String digits) {
    String seven = digits.length() >= DIGITS ? digits.substring(0, DIGITS) : digits;
    return Integer.parseInt(seven + "0".repeat(DIGITS - seven.length()));
  }

  private static IsbnRanges load() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try (InputStream in = IsbnRanges.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the ISBN ranges are missing from the program");
      }
      return new IsbnRanges(read(factory.createXMLStreamReader(in)));
    } catch (IOException | XMLStreamException e) {
      throw new IllegalStateException("the ISBN ranges of the program can't be read", e);
    }
  }

  private static Map<String, List<Range>> read(XMLStreamReader xml) throws XMLStreamException {
    Map<String, List<Range>> byPrefix = new HashMap<>();
    boolean inGroups = false;
    List<Range> ranges = new ArrayList<>();
    String range = "";
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamReader.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "RegistrationGroups" -> inGroups = true;
        case "Prefix" -> {
          ranges = new ArrayList<>();
          if (inGroups) {
            byPrefix.put(xml.getElementText().strip().replace("-", ""), ranges);
          }
        }
        case "Range" -> range = xml.getElementText().strip();
        case "Length" -> {
          int dash = range.indexOf('-');
          ranges.add(
              new Range(
                  Integer.parseInt(range.substring(0, dash)),
                  Integer.parseInt(range.substring(dash + 1)),
                  Integer.parseInt(xml.getElementText().strip())));
        }
        default -> {
          // names of agencies, the date
        }
      }
    }
    return byPrefix;
  }
}
