package merese.store;

import java.util.List;
import merese.model.PageLines;
import merese.model.PageText;

/** The page texts that are attached to an edition from one file. */
final class PageTextCodec implements Codec<PageText> {
  static final PageTextCodec PAGES = new PageTextCodec();

  /** The key of the edition. */
  static final String SOURCE = "source";

  private static final Codes<PageText.Origin> ORIGIN =
      new Codes<>("a kind of page text", PageText.Origin.values());

  private PageTextCodec() {}

  @Override
  public PageText read(Fields in) {
    return new PageText(
        in.text(SOURCE),
        in.text("file"),
        in.text("sha256"),
        in.code("from", ORIGIN),
        in.pageMap("map"),
        in.list("pages", PageCodec.PAGE));
  }

  @Override
  public void write(PageText text, ObjectBuilder out) {
    out.text(SOURCE, text.source());
    out.text("file", text.file());
    out.text("sha256", text.sha256());
    out.code("from", text.from());
    if (!text.map().isEmpty()) {
      out.text("map", text.map().toString());
    }
    out.allOf("pages", text.pages(), PageCodec.PAGE);
  }

  private static final class PageCodec implements Codec<PageLines> {
    static final PageCodec PAGE = new PageCodec();

    @Override
    public PageLines read(Fields in) {
      List<String> lines = in.texts("lines");
      return lines.isEmpty() ? PageLines.NONE : new PageLines(lines);
    }

    @Override
    public void write(PageLines page, ObjectBuilder out) {
      out.allTexts("lines", page.lines());
    }

    @Override
    public String shape() {
      return "a page";
    }

    @Override
    public String example() {
      return "{ \"lines\": [\"…\"] }";
    }
  }
}
