package merese.citation;

import static de.undercouch.citeproc.csl.internal.behavior.FormattingAttributes.FW_BOLD;
import static de.undercouch.citeproc.csl.internal.behavior.FormattingAttributes.VA_SUP;

import de.undercouch.citeproc.csl.internal.RenderContext;
import de.undercouch.citeproc.csl.internal.SBibliography;
import de.undercouch.citeproc.csl.internal.TokenBuffer;
import de.undercouch.citeproc.csl.internal.format.BaseFormat;
import de.undercouch.citeproc.csl.internal.token.DisplayGroupToken;
import de.undercouch.citeproc.csl.internal.token.TextToken;
import de.undercouch.citeproc.csl.internal.token.Token;
import de.undercouch.citeproc.output.Bibliography;
import de.undercouch.citeproc.output.SecondFieldAlign;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Writes what the processor has put together. Its own Markdown puts a backslash before every comma
 * and its own HTML wraps each entry in blocks, so the writing is done here; the placing of
 * punctuation and quotation marks stays the processor's.
 */
final class CitationFormat extends BaseFormat {

  private static final Pattern BETWEEN_NAMES = Pattern.compile("[,.;:] ");
  private static final Pattern PAGE = Pattern.compile("(?:pp?|S)\\.?\\s*");
  private static final Pattern ENDED = Pattern.compile("[.?!]$");
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private final Escape escape;
  private final Output output;
  private final String locator;
  private final boolean unlabelled;

  CitationFormat(Output output, Optional<CslLocator> locator) {
    this.output = output;
    this.locator = locator.map(CslLocator::text).orElse("");
    this.unlabelled = locator.isPresent() && locator.get().label().isEmpty();
    this.escape = Escape.of(output);
    setConvertLinks(true);
  }

  @Override
  public String getName() {
    return "merese";
  }

  @Override
  protected String doFormatCitation(TokenBuffer buffer, RenderContext ctx) {
    return written(buffer, ctx, false);
  }

  private String written(TokenBuffer buffer, RenderContext ctx, boolean margin) {
    separate(buffer.getTokens(), margin);
    unmark(buffer.getTokens(), ctx);
    return escape.wholeLine(SPACES.matcher(format(buffer)).replaceAll(" ").strip());
  }

  @Override
  protected String doFormatBibliographyEntry(TokenBuffer buffer, RenderContext ctx, int index) {
    SBibliography bibliography = ctx.getStyle().getBibliography();
    return written(buffer, ctx, bibliography.getSecondFieldAlign() != SecondFieldAlign.FALSE);
  }

  /** Puts back what {@link Marks} stand for; quotation marks alternate as the locale has them. */
  private void unmark(List<Token> tokens, RenderContext ctx) {
    int depth = 0;
    for (int i = 0; i < tokens.size(); i++) {
      if (tokens.get(i) instanceof TextToken token) {
        depth += token.getType() == TextToken.Type.OPEN_QUOTE ? 1 : 0;
        depth -= token.getType() == TextToken.Type.CLOSE_QUOTE ? 1 : 0;
        String kind = depth > 0 ? "inner-quote" : "quote";
        tokens.set(
            i,
            token.copyWithText(
                Marks.withLocator(Marks.shown(token.getText()), locator)
                    .replace("" + Marks.OPEN_DOUBLE, term(ctx, "open-" + kind, "“"))
                    .replace("" + Marks.CLOSE_DOUBLE, term(ctx, "close-" + kind, "”"))
                    .replace(Marks.OPEN_SINGLE, '‘')
                    .replace(Marks.CLOSE_SINGLE, '’')));
      }
    }
  }

  /**
   * Drops what the processor puts between two lists of names of which the first is empty ("Title, ,
   * trans. by").
   */
  @Override
  protected void postProcess(TokenBuffer buffer, RenderContext ctx) {
    List<Token> tokens = buffer.getTokens();
    for (int i = tokens.size() - 1; i >= 0; i--) {
      String before = i == 0 ? "" : tokens.get(i - 1).toString();
      if (tokens.get(i) instanceof TextToken token
          && token.getType() == TextToken.Type.TEXT
          && BETWEEN_NAMES.matcher(token.getText()).matches()
          && (before.isEmpty() || before.equals(token.getText()))) {
        tokens.remove(i);
      }
    }
    super.postProcess(buffer, ctx);
  }

  /**
   * Takes away the comma before a bracket which comes of a title that has moved into the place of
   * the author, the "p." that some styles put before any place, and a second full stop; puts a
   * space after a number that a style sets in a margin of its own.
   */
  private void separate(List<Token> tokens, boolean margin) {
    for (int i = 1; i < tokens.size(); i++) {
      Token before = tokens.get(i - 1);
      Token token = tokens.get(i);
      if (before instanceof TextToken comma
          && comma.getType() == TextToken.Type.DELIMITER
          && comma.getText().equals(", ")
          && token.toString().startsWith("(")) {
        tokens.set(i - 1, comma.copyWithText(" "));
      }
      if (before instanceof TextToken page
          && unlabelled
          && Marks.holdsLocator(token.toString())
          && PAGE.matcher(page.getText()).matches()) {
        tokens.set(i - 1, page.copyWithText(""));
      }
      if (token instanceof TextToken stop
          && stop.getText().startsWith(".")
          && !stop.getText().startsWith("..")
          && ENDED.matcher(before.toString()).find()) {
        tokens.set(i, stop.copyWithText(stop.getText().substring(1)));
      }
      if (margin && before.isFirstField() && !token.isFirstField()) {
        tokens.add(i, new TextToken(" ", TextToken.Type.DELIMITER));
      }
    }
  }

  private static String term(RenderContext ctx, String name, String otherwise) {
    String term = ctx.getTerm(name);
    return term == null ? otherwise : term;
  }

  @Override
  protected String escape(String text) {
    return escape.text(text);
  }

  /** Called with text that is not escaped yet, only for an address on the web. */
  @Override
  protected String formatURL(String address) {
    return escape.link(address);
  }

  @Override
  protected String formatDOI(String doi) {
    return escape.text(doi);
  }

  @Override
  protected String doFormatLink(String text, String uri) {
    return text;
  }

  @Override
  public Bibliography makeBibliography(String[] entries, SBibliography bibliography) {
    throw new UnsupportedOperationException("entries are made one by one");
  }

  @Override
  protected String openFontStyle(int style) {
    return output == Output.HTML ? "<i>" : output == Output.MARKDOWN ? "*" : null;
  }

  @Override
  protected String closeFontStyle(int style) {
    return output == Output.HTML ? "</i>" : output == Output.MARKDOWN ? "*" : null;
  }

  @Override
  protected String openFontWeight(int weight) {
    return weight != FW_BOLD || output == Output.TEXT ? null : html("<b>", "**");
  }

  @Override
  protected String closeFontWeight(int weight) {
    return weight != FW_BOLD || output == Output.TEXT ? null : html("</b>", "**");
  }

  @Override
  protected String openFontVariant(int variant) {
    return html("<span class=\"small-caps\">", null);
  }

  @Override
  protected String closeFontVariant(int variant) {
    return html("</span>", null);
  }

  @Override
  protected String openTextDecoration(int decoration) {
    return html("<u>", null);
  }

  @Override
  protected String closeTextDecoration(int decoration) {
    return html("</u>", null);
  }

  @Override
  protected String openVerticalAlign(int align) {
    return html(align == VA_SUP ? "<sup>" : "<sub>", null);
  }

  @Override
  protected String closeVerticalAlign(int align) {
    return html(align == VA_SUP ? "</sup>" : "</sub>", null);
  }

  private String html(String html, String otherwise) {
    return output == Output.HTML ? html : otherwise;
  }

  /** A style that sets its number in a margin of its own gets one space after it. */
  @Override
  protected String closeDisplayGroup(DisplayGroupToken.Type type) {
    return " ";
  }
}
