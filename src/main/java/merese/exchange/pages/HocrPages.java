package merese.exchange.pages;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.parser.StreamParser;

/**
 * hOCR, the open specification 1.2 of recognised text in HTML: a page is an element of the class
 * ocr_page, and in it a line one of the class ocr_line or of its like. Only for the process that
 * reads it.
 */
final class HocrPages {
  /**
   * What the specification calls lines (ocr_line, ocrx_line), and the floats that recognisers mark
   * single lines with.
   */
  private static final String LINES =
      ".ocr_line, .ocrx_line, .ocr_header, .ocr_footer, .ocr_caption, .ocr_textfloat, .ocr_pageno";

  private static final String WORDS = ".ocrx_word";
  private static final int HEAD = 2048;

  private HocrPages() {}

  static void read(InputStream bytes, PageSink sink) throws IOException {
    BufferedInputStream in = new BufferedInputStream(bytes, HEAD);
    in.mark(HEAD);
    byte[] head = in.readNBytes(HEAD);
    in.reset();
    Charset charset = charset(head);
    boolean xml = new String(head, StandardCharsets.ISO_8859_1).contains("<?xml");
    Parser parser = xml ? Parser.xmlParser() : Parser.htmlParser();
    boolean any = false;
    Reader text = new InputStreamReader(in, charset.newDecoder());
    try (StreamParser pages = new StreamParser(parser).parse(text, "")) {
      for (Element page = pages.selectNext(".ocr_page");
          page != null;
          page = pages.selectNext(".ocr_page")) {
        any = true;
        sink.page(lines(page));
        page.remove(); // read, and no longer needed
      }
    } catch (CharacterCodingException e) {
      throw misread(charset);
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CharacterCodingException) {
        throw misread(charset);
      }
      throw e.getCause();
    }
    if (!any) {
      throw new RefusedException(
          "it is HTML without a page: nothing in it has the class ocr_page",
          "attach hOCR, PDF or plain text");
    }
  }

  private static String lines(Element page) {
    StringBuilder out = new StringBuilder();
    boolean marked = false;
    for (Element line : page.select(LINES)) {
      if (!hasLines(line)) {
        marked = true;
        append(out, words(line));
      }
    }
    if (!marked) {
      List<Element> paragraphs = page.select(".ocr_par, p");
      for (Element each : paragraphs.isEmpty() ? List.of(page) : paragraphs) {
        append(out, each.text());
      }
    }
    return out.toString();
  }

  private static void append(StringBuilder out, String line) {
    out.append(out.length() == 0 ? "" : "\n").append(line);
  }

  private static boolean hasLines(Element line) {
    return !line.children().select(LINES).isEmpty();
  }

  /** The words, where a line has nothing else; they may stand without white space between them. */
  private static String words(Element line) {
    List<Element> words = line.select(WORDS);
    int inWords = words.stream().mapToInt(word -> solid(word.text())).sum();
    return inWords == solid(line.text())
        ? String.join(" ", words.stream().map(Element::text).toList())
        : line.text();
  }

  private static int solid(String text) {
    return (int) text.chars().filter(c -> !Character.isWhitespace(c)).count();
  }

  private static RefusedException misread(Charset charset) {
    return new RefusedException(
        "it is not " + charset.name() + ", as it should be",
        "save it as UTF-8, say so in it, and attach that");
  }

  /** What the mark at the beginning says, else what the file says of itself, else UTF-8. */
  private static Charset charset(byte[] bytes) {
    if (TextBytes.startsWith(bytes, 0xFE, 0xFF) || TextBytes.startsWith(bytes, 0xFF, 0xFE)) {
      return StandardCharsets.UTF_16;
    }
    String head = new String(bytes, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
    String named = named(head, "charset=");
    named = named.isEmpty() ? named(head, "encoding=") : named;
    boolean marked = TextBytes.startsWith(bytes, 0xEF, 0xBB, 0xBF);
    try {
      return marked || named.isEmpty() ? StandardCharsets.UTF_8 : Charset.forName(named);
    } catch (IllegalArgumentException e) {
      throw new RefusedException(
          "it says that it is written in \"" + named + "\", which is not known here",
          "save it as UTF-8, say so in it, and attach that");
    }
  }

  private static String named(String head, String before) {
    int at = head.indexOf(before);
    if (at < 0) {
      return "";
    }
    int begin = at + before.length();
    while (begin < head.length() && (head.charAt(begin) == '"' || head.charAt(begin) == '\'')) {
      begin++;
    }
    int end = begin;
    while (end < head.length()
        && (Character.isLetterOrDigit(head.charAt(end)) || "-_:.".indexOf(head.charAt(end)) >= 0)) {
      end++;
    }
    return head.substring(begin, end);
  }
}
