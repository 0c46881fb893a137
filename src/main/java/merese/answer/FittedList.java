package merese.answer;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.ReadingList.Chapter;
import merese.answer.ReadingList.Item;

/**
 * A list of sources within a number of bytes, as the description of a film has it. Full citations
 * where all of them fit; else short ones; else as many short ones as fit, and how many more there
 * are. Whole entries only, and never both forms.
 */
public final class FittedList {
  private static final String HEADER = "Books used:";

  private FittedList() {}

  /**
   * The list, without a newline at its end.
   *
   * @param limit in bytes of UTF-8; the header and the line breaks count
   * @return empty where not even one source fits
   */
  public static Optional<String> of(ReadingList list, int limit) {
    List<String> full = new ArrayList<>();
    List<String> brief = new ArrayList<>();
    for (Chapter chapter : list.chapters()) {
      for (Item item : chapter.items()) {
        full.add(withoutStop(item.citation()));
        brief.add(brief(item));
      }
    }
    if (fits(full, limit)) {
      return Optional.of(text(full));
    } else if (fits(brief, limit)) {
      return Optional.of(text(brief));
    }
    for (int kept = brief.size() - 1; kept > 0; kept--) {
      List<String> some = new ArrayList<>(brief.subList(0, kept));
      some.add("+ " + (brief.size() - kept) + " more");
      if (fits(some, limit)) {
        return Optional.of(text(some));
      }
    }
    return Optional.empty();
  }

  private static boolean fits(List<String> lines, int limit) {
    return text(lines).getBytes(StandardCharsets.UTF_8).length <= limit;
  }

  private static String text(List<String> lines) {
    return HEADER + "\n" + String.join("\n", lines);
  }

  private static String withoutStop(String citation) {
    return citation.endsWith(".") ? citation.substring(0, citation.length() - 1) : citation;
  }

  private static String brief(Item item) {
    StringBuilder text = new StringBuilder(item.source().reference());
    item.places().forEach(place -> text.append(", ").append(place));
    return text.toString();
  }
}
