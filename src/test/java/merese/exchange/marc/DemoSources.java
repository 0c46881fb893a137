package merese.exchange.marc;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.model.Edition;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;

/** The editions of the demo library, and the parts of them that somebody signed. */
final class DemoSources {
  private DemoSources() {}

  static List<Outgoing> all() {
    List<Outgoing> sources = new ArrayList<>();
    LibraryFolder folder = LibraryFolder.open(Path.of("library"));
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        add(folder.readWork(file.path()).value(), sources);
      }
    }
    return sources;
  }

  private static void add(Work work, List<Outgoing> to) {
    for (Edition edition : work.editions()) {
      to.add(new Outgoing(work, edition, Optional.empty(), edition.notes()));
      for (Edition.Part part : edition.parts()) {
        if (!part.authors().isEmpty()) {
          to.add(new Outgoing(work, edition, Optional.of(part), List.of()));
        }
      }
    }
  }
}
