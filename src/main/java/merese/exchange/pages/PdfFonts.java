package merese.exchange.pages;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * One font in place of all that are not in a file: text is only read, not drawn. PDFBox's own
 * mapper looks through all fonts of the machine and writes a list of them into the user's folder.
 */
final class PdfFonts implements FontMapper {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final TrueTypeFont font;

  PdfFonts() throws IOException {
    try (InputStream in = FontMapper.class.getResourceAsStream(FONT)) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(in));
    }
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo cidSystemInfo) {
    return new CIDFontMapping(null, font, true);
  }
}
