package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import merese.search.FindQuery;
import merese.search.FoundHits;
import merese.search.FoundHits.FoundHit;
import merese.search.Hits.NoteHit;
import merese.search.NoteIndex;
import merese.search.PageHits;

/** Asks the index questions in words and unpacks what it finds. */
final class FindingMaker {
  private final Shelf shelf;
  private final NoteIndex index;

  FindingMaker(Shelf shelf, NoteIndex index) {
    this.shelf = shelf;
    this.index = index;
  }

  Finding find(FindQuery asked, int limit) {
    FoundHits found = index.find(asked, limit, shelf.thesaurus());
    List<Finding.Thing> things = new ArrayList<>();
    found.hits().forEach(hit -> things.add(thing(hit)));
    PageHits pages = index.findPages(asked, limit, shelf.thesaurus());
    return new Finding(
        things, found.withAll(), found.withSome(), shelf.pages(pages.best()), pages.all());
  }

  private Finding.Thing thing(FoundHit hit) {
    byte[] payload = hit.payload();
    return switch (hit.kind()) {
      case NOTE ->
          new Finding.OfNote(shelf.note(new NoteHit(hit.owner(), hit.order(), payload)), hit.all());
      case SOURCE -> new Finding.OfSource(shelf.source(hit.owner().edition()), hit.all());
      case CONCEPT -> {
        String id = new String(payload, StandardCharsets.UTF_8);
        yield new Finding.OfConcept(shelf.thesaurus().concept(id).orElseThrow(), hit.all());
      }
      case PIECE -> new Finding.OfPiece(PackedMine.unpackObject(payload), hit.all());
      case PAGE -> throw new IllegalStateException("pages are found apart");
      case MINE -> new Finding.OfMine(PackedMine.unpack(payload), hit.all());
    };
  }
}
