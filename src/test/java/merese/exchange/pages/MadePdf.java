package merese.exchange.pages;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;

/** PDFs made for tests. */
final class MadePdf {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final PDDocument document = new PDDocument();
  private final PDType0Font font;

  MadePdf() throws IOException {
    FontMappers.set(new PdfFonts()); // PDFBox's own writes into the user's folder
    try (InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
      font = PDType0Font.load(document, in, true);
    }
  }

  MadePdf page(String... lines) throws IOException {
    return page(List.of(lines), 720);
  }

  /** Lines put down from the last to the first, so that only their places say how to read them. */
  MadePdf pageUpwards(String... lines) throws IOException {
    PDPage page = add();
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      for (int i = lines.length - 1; i >= 0; i--) {
        line(content, lines[i], 72, 720 - 18 * i);
      }
    }
    return this;
  }

  /** Two columns, one after the other. */
  MadePdf columns(List<String> left, List<String> right) throws IOException {
    PDPage page = add();
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      for (int i = 0; i < left.size(); i++) {
        line(content, left.get(i), 72, 720 - 18 * i);
      }
      for (int i = 0; i < right.size(); i++) {
        line(content, right.get(i), 320, 720 - 18 * i);
      }
    }
    return this;
  }

  private MadePdf page(List<String> lines, int top) throws IOException {
    PDPage page = add();
    if (!lines.isEmpty()) {
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        for (int i = 0; i < lines.size(); i++) {
          line(content, lines.get(i), 72, top - 18 * i);
        }
      }
    }
    return this;
  }

  private void line(PDPageContentStream content, String text, int x, int y) throws IOException {
    content.beginText();
    content.setFont(font, 12);
    content.newLineAtOffset(x, y);
    content.showText(text);
    content.endText();
  }

  MadePdf picture() throws IOException {
    PDPage page = add();
    BufferedImage image = new BufferedImage(20, 30, BufferedImage.TYPE_BYTE_GRAY);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawImage(LosslessFactory.createFromImage(document, image), 72, 400, 200, 300);
    }
    return this;
  }

  /** A page whose content is so many megabytes of letters, packed. */
  MadePdf bomb(int megabytes) throws IOException {
    PDPage page = add();
    PDStream stream = new PDStream(document);
    page.setResources(new PDResources());
    String name =
        page.getResources().add(new PDType1Font(Standard14Fonts.FontName.HELVETICA)).getName();
    byte[] letters = ("(" + "rings".repeat(200) + ") Tj\n").repeat(1000).getBytes(US_ASCII);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(("BT /" + name + " 1 Tf\n").getBytes(US_ASCII));
      for (int i = 0; i < megabytes; i++) {
        out.write(letters);
      }
      out.write("ET".getBytes(US_ASCII));
    }
    page.setContents(stream);
    return this;
  }

  MadePdf encrypted(String owner, String user, boolean mayExtract) throws IOException {
    AccessPermission permission = new AccessPermission();
    permission.setCanExtractContent(mayExtract);
    StandardProtectionPolicy policy = new StandardProtectionPolicy(owner, user, permission);
    policy.setEncryptionKeyLength(128);
    document.protect(policy);
    return this;
  }

  private PDPage add() {
    PDPage page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    return page;
  }

  byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    document.close();
    return out.toByteArray();
  }

  /** A PDF written by hand from its objects, the first of which is the catalogue. */
  static byte[] of(String... objects) {
    StringBuilder out = new StringBuilder("%PDF-1.4\n");
    int[] offsets = new int[objects.length];
    for (int i = 0; i < objects.length; i++) {
      offsets[i] = out.length();
      out.append(i + 1).append(" 0 obj\n").append(objects[i]).append("\nendobj\n");
    }
    int xref = out.length();
    out.append("xref\n0 ").append(objects.length + 1).append("\n0000000000 65535 f \n");
    for (int offset : offsets) {
      String digits = Integer.toString(offset);
      out.append("0".repeat(10 - digits.length())).append(digits).append(" 00000 n \n");
    }
    out.append("trailer\n<< /Size ").append(objects.length + 1).append(" /Root 1 0 R >>\n");
    out.append("startxref\n").append(xref).append("\n%%EOF\n");
    return out.toString().getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
  }
}
