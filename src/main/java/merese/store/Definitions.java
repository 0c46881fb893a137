package merese.store;

import java.util.List;
import java.util.Map;
import merese.store.Ids.Kind;

/** The ids that a file defines: each once, and that of the file itself in the file's name. */
final class Definitions {
  private final LibraryFile file;
  private final Reading reading;
  private final Map<Kind, Ids> ids;

  Definitions(LibraryFile file, Reading reading, Map<Kind, Ids> ids) {
    this.file = file;
    this.reading = reading;
    this.ids = ids;
  }

  void visit(Spot top) {
    switch (file.kind()) {
      case WORK -> work(top);
      case VOCABULARY -> vocabulary(top);
      case OBJECT -> object(top);
      case PAGES -> PagesFolder.check(file, top.at(PageTextCodec.SOURCE), reading);
      default -> {}
    }
  }

  private void work(Spot top) {
    requireNameOfFile(top.at("id"), "work");
    ids.get(Kind.WORK).define(top.at("id"), reading);
    for (Spot edition : top.each("editions")) {
      ids.get(Kind.EDITION).define(edition.at("key"), reading);
      defineWithin(Kind.PART, edition.each("parts"));
      defineWithin(Kind.COPY, edition.each("copies"));
      defineWithin(Kind.NOTE, edition.each("notes"));
    }
  }

  private void vocabulary(Spot top) {
    requireNameOfFile(top.at("facet"), "facet");
    for (Spot concept : top.each("concepts")) {
      ids.get(Kind.CONCEPT).define(concept.at("id"), reading);
    }
  }

  private void object(Spot top) {
    requireNameOfFile(top.at("ref"), "object");
    ids.get(Kind.OBJECT).define(top.at("ref"), reading);
    defineWithin(Kind.PHOTOGRAPH, top.each("photographs"));
  }

  private void defineWithin(Kind kind, List<Spot> objects) {
    Ids local = new Ids(kind);
    for (Spot object : objects) {
      local.define(object.at("id"), reading);
    }
  }

  private void requireNameOfFile(Spot id, String noun) {
    if (id != null && id.text() != null && !id.text().equals(file.name())) {
      reading.error(
          id.value().start(),
          id.where(),
          "the " + noun + " " + Quote.of(id.text()) + " stands in a file of another name",
          "write " + Quote.of(file.name()) + " here, or rename the file");
    }
  }
}
