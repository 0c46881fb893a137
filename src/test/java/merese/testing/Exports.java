package merese.testing;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Exported;
import merese.answer.Exported.Format;
import merese.answer.SourceChoice;
import merese.shelf.Shelf;

/** Exports as texts. */
public final class Exports {
  private Exports() {}

  /**
   * @param keys of the sources; none for all
   */
  public static String of(Shelf shelf, Format format, List<String> keys) {
    StringWriter out = new StringWriter();
    try {
      SourceChoice choice = new SourceChoice(keys, Optional.empty(), Narrowing.NONE);
      Exported.write(shelf, choice, format, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  public static String bibtex(Shelf shelf, List<String> keys) {
    return of(shelf, Format.BIBTEX, keys);
  }
}
