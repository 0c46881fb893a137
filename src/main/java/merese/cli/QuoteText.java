package merese.cli;

import merese.answer.quote.Quotations;
import merese.answer.quote.Quotations.Grouped;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;

/** Lays quotations out on a screen, each with its citation below. */
final class QuoteText {
  private static final String INDENT = "    ";

  private final Page page;

  QuoteText(Page page) {
    this.page = page;
  }

  void print(Quotations answer) {
    for (Section section : answer.sections()) {
      section(section);
    }
    page.blank();
    answer.remarks().forEach(page::text);
    answer.legend().forEach(page::text);
  }

  private void section(Section section) {
    page.blank();
    page.heading(QuoteWords.heading(section));
    page.text(QuoteWords.count(section));
    for (Grouped grouped : section.groups()) {
      String title = QuoteWords.group(grouped.group());
      if (!title.isEmpty()) {
        page.blank();
        page.heading(title);
      }
      for (Quotation quotation : grouped.quotations()) {
        page.blank();
        quotation(quotation);
      }
    }
  }

  private void quotation(Quotation quotation) {
    page.text("“" + quotation.words() + "”");
    page.hanging(INDENT, Labels.together(quotation.citation()));
    for (String remark : QuoteWords.remarks(quotation)) {
      page.hanging(INDENT, remark);
    }
  }
}
