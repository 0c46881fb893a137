package merese.exchange;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.Work;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;

/** Sources on their way out, from a library or as they have just come in. */
public final class Sources {
  private Sources() {}

  /** Every edition, and every part that somebody signed. */
  public static List<Outgoing> of(Iterable<Work> works) {
    List<Outgoing> all = new ArrayList<>();
    for (Work work : works) {
      for (Edition edition : work.editions()) {
        all.add(new Outgoing(work, edition, Optional.empty(), List.of()));
        for (Edition.Part part : edition.parts()) {
          if (!part.authors().isEmpty()) {
            all.add(new Outgoing(work, edition, Optional.of(part), List.of()));
          }
        }
      }
    }
    return all;
  }

  /** As a library would have them that names them by themselves. */
  public static List<Outgoing> of(Received received) {
    List<Outgoing> all = new ArrayList<>();
    for (Incoming each : received.sources()) {
      String key = each.key().orElse("source-" + all.size());
      Edition edition = named(each.edition(), key);
      all.add(
          new Outgoing(each.work().withOnly(edition), edition, Optional.empty(), List.of()));
    }
    return all;
  }

  private static Edition named(Edition edition, String key) {
    return new Edition(
        key,
        edition.imprint(),
        edition.lineage(),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope(),
        edition.parts(),
        edition.copies(),
        edition.notes(),
        edition.checks(),
        edition.received());
  }

  public static List<Work> works(LibraryFolder library) throws IOException {
    List<Work> all = new ArrayList<>();
    for (Path file : DemoLibrary.works(library)) {
      all.add(library.readWork(file).value());
    }
    return all;
  }

  public static String written(RecordWriter writer, Collection<Outgoing> sources) {
    StringWriter out = new StringWriter();
    try {
      writer.write(sources, List.of(), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }
}
