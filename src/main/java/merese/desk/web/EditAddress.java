package merese.desk.web;

import java.util.Map;
import java.util.Optional;

/** Where a file of the library is edited as text, be it sound or not. */
public final class EditAddress {
  private static final Map<String, String> SINGLE =
      Map.of(
          "mine.json", "mine",
          "vocabulary/homonyms.json", "homonyms",
          "vocabulary/characters.json", "key");
  private static final Map<String, String> FOLDERS =
      Map.of("works", "source", "objects", "piece", "vocabulary", "vocabulary");

  private EditAddress() {}

  /**
   * The address of the page.
   *
   * @param file below the library folder, with "/" on every system
   * @return empty for what is not edited in a page
   */
  public static Optional<String> of(String file) {
    if (SINGLE.containsKey(file)) {
      return Optional.of("/edit/" + SINGLE.get(file));
    }
    int slash = file.indexOf('/');
    String kind = slash < 0 ? null : FOLDERS.get(file.substring(0, slash));
    if (kind == null || !file.endsWith(".json")) {
      return Optional.empty();
    }
    String name = file.substring(slash + 1, file.length() - ".json".length());
    return Optional.of("/edit/" + kind + "/" + Site.encoded(name.contains("/") ? file : name));
  }
}
