package merese.cli;

import merese.citation.Output;

/** Labelled lines in one of the mark-ups: columns, a list of Markdown, a list of HTML. */
final class CiteText {
  private static final int LABELS = 12;

  private final Context context;
  private final Output output;
  private boolean begun;

  CiteText(Context context, Output output) {
    this.context = context;
    this.output = output;
  }

  /**
   * @param text in the mark-up already
   */
  void line(String label, String text) {
    switch (output) {
      case TEXT -> new Page(context.out(), context.screen()).columns("", label, LABELS).line(text);
      case MARKDOWN -> context.out().println("- **" + label + ":** " + text);
      case HTML -> {
        context.out().print(begun ? "" : "<dl>\n");
        context.out().println("<dt>" + label + "</dt><dd>" + text + "</dd>");
      }
    }
    begun = true;
  }

  void end() {
    if (output == Output.HTML && begun) {
      context.out().println("</dl>");
    }
  }
}
