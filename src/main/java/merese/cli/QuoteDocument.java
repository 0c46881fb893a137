package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.quote.Quotations;
import merese.answer.quote.Quotations.Grouped;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;
import merese.citation.Output;

/** Writes quotations as Markdown or a page in HTML, each as a block with its citation. */
final class QuoteDocument {
  private static final String STYLE =
      "body { max-width: 42em; margin: 2em auto; padding: 0 1em; font: 1.05em/1.5 serif; }\n"
          + "blockquote { margin: 1.8em 0 0; padding-left: 1em; border-left: 0.2em solid #bbb; }\n"
          + "blockquote + p { margin-top: 0.3em; }\n";

  private final Output output;
  private final StringBuilder text = new StringBuilder();

  QuoteDocument(Output output) {
    this.output = output;
  }

  String of(Quotations answer) {
    for (Section section : answer.sections()) {
      block("# ", "h1", literal(QuoteWords.heading(section)));
      block("", "p", literal(QuoteWords.count(section)));
      for (Grouped grouped : section.groups()) {
        String title = QuoteWords.group(grouped.group());
        if (!title.isEmpty()) {
          block("## ", "h2", literal(title));
        }
        grouped.quotations().forEach(this::quotation);
      }
    }
    answer.remarks().forEach(remark -> block("", "p", literal(remark)));
    answer.legend().forEach(line -> block("", "p", literal(line)));
    return output == Output.HTML
        ? Html.page("en", "Quotations", STYLE, text.toString())
        : text.toString().stripTrailing() + "\n";
  }

  private void quotation(Quotation quotation) {
    block("> ", "blockquote", verbatim(quotation.words()));
    block("", "p", quotation.citation());
    List<String> remarks = QuoteWords.remarks(quotation);
    remarks.forEach(remark -> block("", "p", verbatim(Wrap.loose(remark))));
  }

  /** With its lines, where the words have several. */
  private String verbatim(String words) {
    List<String> lines = new ArrayList<>();
    for (String line : Wrap.harmless(words).split("\n", -1)) {
      lines.add(output.verbatim(line));
    }
    return String.join(output == Output.HTML ? "<br>\n" : "\\\n> ", lines);
  }

  private String literal(String words) {
    return output.literal(words);
  }

  private void block(String lead, String element, String words) {
    if (output == Output.HTML) {
      text.append('<').append(element).append('>').append(words);
      text.append("</").append(element).append(">\n");
    } else {
      text.append(lead).append(words).append("\n\n");
    }
  }
}
