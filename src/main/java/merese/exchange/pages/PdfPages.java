package merese.exchange.pages;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageTree;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF, page by page; for the process that reads it. */
final class PdfPages {
  private static final String MEND = "open it in a viewer and save or print it as a new PDF";

  private PdfPages() {}

  static void read(Path file, Limits limits, PageSink sink) throws IOException {
    FontMappers.set(new PdfFonts());
    try (RandomAccessRead in = new RandomAccessReadBufferedFile(file);
        PDDocument document =
            Loader.loadPDF(in, "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
      if (!document.getCurrentAccessPermission().canExtractContent()) {
        throw new RefusedException(
            "who made it does not permit its text to be taken out",
            "ask them for a copy that does, or copy the words that you need by hand");
      }
      int says = document.getNumberOfPages();
      if (says > limits.pages()) {
        throw Collected.tooManyPages(limits);
      }
      Pages pages = new Pages(limits, sink);
      pages.writeText(document, Writer.nullWriter());
      if (pages.number != says) {
        throw new RefusedException(
            "it is damaged: it says that it has "
                + Counted.pages(says)
                + ", and "
                + Counted.of(pages.number)
                + " can be found",
            MEND);
      }
    } catch (InvalidPasswordException e) {
      throw new RefusedException(
          "it is encrypted, and cannot be opened without its password",
          "open it in a viewer with the password, save it without one, and attach that");
    } catch (UncheckedIOException e) {
      throw new RefusedException("it is damaged: " + reason(e.getCause()), MEND);
    } catch (PipeException e) {
      throw e;
    } catch (IOException e) {
      throw new RefusedException("it cannot be read as PDF: " + reason(e), MEND);
    } catch (StackOverflowError e) {
      throw new RefusedException("its parts are nested without end", MEND);
    } catch (RefusedException e) {
      throw e;
    } catch (RuntimeException e) {
      throw new RefusedException("it is damaged, and cannot be read as PDF", MEND);
    }
  }

  private static String reason(Exception e) {
    String message = e.getMessage();
    return message == null || message.isBlank() ? "it is damaged" : message.strip();
  }

  /** That the pages cannot be handed on; no fault of the file. */
  static final class PipeException extends IOException {
    private static final long serialVersionUID = 1L;

    PipeException(IOException cause) {
      super(cause);
    }
  }

  /**
   * Hands on one page after the other. The order is that in which the text was put into the page,
   * which is that of reading even in columns; where it jumps about, the order is by place.
   */
  private static final class Pages extends PDFTextStripper {
    private final Limits limits;
    private final PageSink sink;
    private int number;
    private Bounded text;
    private int lines;
    private int upwards;
    private float last;

    Pages(Limits limits, PageSink sink) {
      this.limits = limits;
      this.sink = sink;
      setLineSeparator("\n");
      setStartPage(0); // it is we who count
    }

    @Override
    protected void processPages(PDPageTree pages) throws IOException {
      for (PDPage page : pages) {
        if (number == limits.pages()) {
          throw Collected.tooManyPages(limits);
        }
        number++;
        requireThere(page);
        text = new Bounded(number, limits);
        if (page.hasContents()) {
          processPage(page);
        }
        try {
          sink.page(text.toString());
        } catch (IOException e) {
          throw new PipeException(e);
        }
      }
    }

    /** What stands for a page that is not in the file says nothing but that it is one. */
    private void requireThere(PDPage page) {
      COSDictionary entries = page.getCOSObject();
      if (entries.size() == 0 || (entries.size() == 1 && entries.containsKey(COSName.TYPE))) {
        throw new RefusedException("it is damaged: page " + number + " is missing", MEND);
      }
    }

    @Override
    protected void writePage() throws IOException {
      lines = 0;
      upwards = 0;
      last = Float.NEGATIVE_INFINITY;
      output = text;
      super.writePage();
      if (lines > 3 && upwards * 3 > lines) {
        text = new Bounded(number, limits);
        output = text;
        setSortByPosition(true);
        super.writePage();
        setSortByPosition(false);
      }
    }

    @Override
    protected void writeString(String string, List<TextPosition> positions) throws IOException {
      if (!positions.isEmpty()) {
        TextPosition first = positions.get(0);
        float at = first.getYDirAdj();
        float height = Math.max(1, first.getHeightDir());
        if (Math.abs(at - last) > height / 2) {
          lines++;
          upwards += at < last ? 1 : 0;
          last = at;
        }
      }
      super.writeString(string, positions);
    }
  }

  /** The text of one page, and no more of it than a page may have. */
  private static final class Bounded extends StringWriter {
    private final int page;
    private final Limits limits;

    Bounded(int page, Limits limits) {
      this.page = page;
      this.limits = limits;
    }

    @Override
    public void write(String more) {
      if (getBuffer().length() + more.length() > limits.pageCharacters()) {
        throw Collected.tooLargeAPage(page, limits);
      }
      super.write(more);
    }
  }
}
