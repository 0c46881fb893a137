package merese.cli;

import java.util.List;
import merese.answer.pull.Pull;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.answer.pull.PullWords;
import merese.model.LibrarySettings;

/**
 * A page to print: the order of need, then on a sheet of its own and in large type the order of the
 * shelf, each with a box to tick. No book is cut by the end of a sheet.
 */
final class PullHtml {
  private static final String STYLE =
      """
      body { font: 11pt/1.35 Georgia, "Times New Roman", serif; color: #000; margin: 0; }
      h1 { font-size: 17pt; margin: 0 0 2mm; }
      h2 { font-size: 14pt; margin: 0 0 4mm; }
      .item { width: 100%; border-collapse: collapse; border-top: 0.3mm solid #777; }
      .item, .first, .whole { page-break-inside: avoid; break-inside: avoid; }
      td { vertical-align: top; padding: 2mm 3mm 2mm 0; }
      td.tick { width: 7mm; }
      td.mark { width: 34mm; font-weight: bold; overflow-wrap: anywhere; }
      .box { display: inline-block; width: 4mm; height: 4mm; border: 0.4mm solid #000; }
      .opening { margin: 1.5mm 0 0 9mm; page-break-inside: avoid; break-inside: avoid; }
      .number { float: left; margin-left: -9mm; width: 8mm; font-weight: bold; }
      .say { font-style: italic; }
      .flag { font-weight: bold; }
      .shelf { page-break-before: always; break-before: page; font-size: 15pt; }
      .shelf .box { width: 5.5mm; height: 5.5mm; }
      .shelf td.tick { width: 9mm; }
      .shelf td.mark { width: 46mm; font-size: 18pt; }
      .place { font-size: 13pt; font-style: italic; margin: 5mm 0 2mm; }
      .small { font-size: 10pt; }
      .shelf .small { font-size: 12pt; }
      .caution { margin-top: 8mm; font-size: 9.5pt; }
      @media screen { body { max-width: 180mm; margin: 10mm auto; } .shelf { margin-top: 15mm; } }
      """;

  private final StringBuilder body = new StringBuilder();

  private PullHtml() {}

  static String page(Pull answer, LibrarySettings library, boolean letter) {
    String size = "@page { size: " + (letter ? "Letter" : "A4") + "; margin: 15mm; }\n";
    PullHtml page = new PullHtml();
    page.fill(answer);
    return Html.page("en", "What to take: " + library.title(), size + STYLE, page.body.toString());
  }

  private void fill(Pull answer) {
    if (answer.isEmpty()) {
      element("p", "", PullWords.nothing(answer));
      return;
    }
    body.append("<section>\n");
    element("h1", "", "What to take");
    element("h2", "", PullWords.heading(answer, false));
    for (Item item : answer.inOrder()) {
      needed(item);
    }
    body.append("</section>\n<section class=\"shelf\">\n");
    element("h2", "", PullWords.heading(answer, true));
    String under = "";
    for (Item item : answer.byShelf()) {
      boolean first = !PullWords.place(item).equals(under);
      under = PullWords.place(item);
      if (first) { // a heading is not left alone at the foot of a sheet
        body.append("<div class=\"first\">");
        element("div", "place", under);
      }
      standing(item);
      body.append(first ? "</div>\n" : "");
    }
    notAtHand(answer.notAtHand());
    body.append("</section>\n");
    if (!answer.uncovered().isEmpty()) {
      element("p", "", "No source covers: " + String.join("; ", answer.uncovered()) + ".");
    }
    element("p", "caution", answer.caution());
  }

  private void row(Item item, String stand) {
    body.append("<table class=\"item\"><tr><td class=\"tick\"><span class=\"box\"></span></td>")
        .append("<td class=\"mark\">")
        .append(Html.escape(stand))
        .append("</td><td>\n");
    element("strong", "", PullWords.name(item));
    item.flag().ifPresent(why -> element("div", "flag", "⚠ not on your shelf: " + why));
    PullWords.copy(item).ifPresent(copy -> element("div", "small", copy));
  }

  private void needed(Item item) {
    row(item, PullWords.stand(item));
    for (Opening opening : item.openings()) {
      body.append("<div class=\"opening\">");
      element("span", "number", PullWords.numbers(opening.needs()));
      String place = PullWords.place(opening);
      element("div", "", place.isEmpty() ? "show it" : place);
      PullWords.slip(opening).ifPresent(slip -> element("div", "", slip));
      for (String line : PullWords.details(opening)) {
        element("div", "", line);
      }
      element("div", "say", PullWords.say(opening));
      if (item.flag().isPresent()) {
        element("div", "flag", "⚠ " + PullWords.instead(opening));
      }
      body.append("</div>\n");
    }
    body.append("</td></tr></table>\n");
  }

  private void standing(Item item) {
    row(item, item.stand().online() ? "online" : PullWords.mark(item));
    if (item.stand().online()) {
      element("div", "small", PullWords.mark(item));
    }
    for (PullWords.Slip slip : PullWords.slips(item)) {
      String line = slip.what() + " (" + slip.numbered() + ")";
      element("div", "", Wrap.text(line, Integer.MAX_VALUE));
    }
    body.append("</td></tr></table>\n");
  }

  private void notAtHand(List<Item> items) {
    if (items.isEmpty()) {
      return;
    }
    element("h2", "", "Not to be had");
    for (Item item : items) {
      body.append("<div class=\"whole\">");
      element("strong", "", PullWords.name(item) + ": " + item.flag().orElseThrow());
      for (Opening opening : item.openings()) {
        element(
            "div",
            "small",
            PullWords.numbered(opening.needs()) + ", " + PullWords.instead(opening));
      }
      body.append("</div>\n");
    }
  }

  private void element(String name, String style, String text) {
    body.append('<').append(name);
    if (!style.isEmpty()) {
      body.append(" class=\"").append(style).append('"');
    }
    body.append('>').append(Html.escape(text)).append("</").append(name).append(">\n");
  }
}
