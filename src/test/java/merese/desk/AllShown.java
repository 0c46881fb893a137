package merese.desk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Holds a page against the JSON of the same answer: every word and number of a field must stand in
 * the page, in its text or in an attribute.
 */
final class AllShown {
  private final String text;
  private final Set<String> notShown;
  private final List<String> missing = new ArrayList<>();

  private AllShown(String text, Set<String> notShown) {
    this.text = text;
    this.notShown = notShown;
  }

  /**
   * What a page lacks.
   *
   * @param notShown paths of fields that the page says in words of its own, as "sections/group";
   *     numbers of lists left out
   * @return a line for each field that is missing
   */
  static List<String> missing(JsonNode answer, Document page, Set<String> notShown) {
    AllShown check = new AllShown(text(page), notShown);
    check.look("", answer);
    return check.missing;
  }

  /** All text, and all that attributes say, with single spaces. */
  private static String text(Document page) {
    StringBuilder text = new StringBuilder(page.text()).append('\n');
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        text.append(attribute.getValue()).append('\n');
      }
    }
    return spaced(text.toString());
  }

  /** With single spaces; case and hyphens do not count, so that "COUNTER_EXAMPLE" may be said. */
  private static String spaced(String text) {
    String plain = text.replace('\u00A0', ' ').replace('-', ' ').strip();
    return String.join(" ", plain.split("\\s+", -1)).toLowerCase(Locale.ROOT);
  }

  private void look(String path, JsonNode node) {
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        look(path.isEmpty() ? field.getKey() : path + "/" + field.getKey(), field.getValue());
      }
    } else if (node.isArray()) {
      node.forEach(each -> look(path, each));
    } else if (node.isTextual() || node.isNumber()) {
      String said = spaced(node.asText());
      said = said.replace('_', ' ');
      if (!text.contains(said) && !notShown.contains(path)) {
        missing.add(path + ": " + said);
      }
    }
  }
}
