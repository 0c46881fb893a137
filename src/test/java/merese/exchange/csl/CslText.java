package merese.exchange.csl;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import merese.exchange.Outgoing;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;

/** Sources as CSL-JSON text. */
final class CslText {
  private CslText() {}

  static String of(Collection<Outgoing> sources) {
    StringWriter out = new StringWriter();
    try {
      new CslJsonWriter().write(sources, List.of(), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  static List<Work> works(LibraryFolder library) throws IOException {
    List<Work> all = new ArrayList<>();
    for (Path file : DemoLibrary.works(library)) {
      all.add(library.readWork(file).value());
    }
    return all;
  }
}
