package merese.desk.list;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.util.Set;

/**
 * A citation in HTML, as the room of citations writes it. Only the marks that it writes get
 * through; anything else that looks like one is shown as text.
 *
 * @param html a run of HTML in which all words are escaped
 */
record Marked(String html) implements Content {
  private static final Set<String> MARKS =
      Set.of(
          "<i>",
          "</i>",
          "<b>",
          "</b>",
          "<u>",
          "</u>",
          "<sup>",
          "</sup>",
          "<sub>",
          "</sub>",
          "<span class=\"small-caps\">",
          "</span>",
          "</a>");

  @Override
  public void writeTo(TemplateOutput output) {
    int at = 0;
    while (at < html.length()) {
      int open = html.indexOf('<', at);
      if (open < 0) {
        output.writeContent(html.substring(at));
        return;
      }
      output.writeContent(html.substring(at, open));
      int close = html.indexOf('>', open);
      String mark = close < 0 ? "" : html.substring(open, close + 1);
      if (MARKS.contains(mark) || isLink(mark)) {
        output.writeContent(mark);
        at = close + 1;
      } else {
        output.writeContent("&lt;");
        at = open + 1;
      }
    }
  }

  private static boolean isLink(String mark) {
    String start = "<a href=\"";
    boolean web =
        mark.startsWith(start + "http://")
            || mark.startsWith(start + "https://")
            || mark.startsWith(start + "HTTP");
    return web && mark.indexOf('"', start.length()) == mark.length() - 2;
  }
}
