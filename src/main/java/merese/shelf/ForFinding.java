package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Concept;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.search.HitKind;
import merese.search.IndexedFile.Found;
import merese.search.IndexedFile.IndexedRecord;
import merese.search.Searchable;
import merese.vocabulary.Thesaurus;

/**
 * What the index holds of concepts and of the user's own words and pieces. The latter are found by
 * the labels of their concepts too, and so are made again when the vocabulary changes.
 */
final class ForFinding {
  private ForFinding() {}

  /** A concept, whose facet is stored whole elsewhere, by its id. */
  static IndexedRecord concept(Concept concept) {
    return new IndexedRecord(
        RecordTypes.CONCEPT,
        Optional.of(new Found(HitKind.CONCEPT, Findable.concept(concept))),
        concept.id().getBytes(StandardCharsets.UTF_8));
  }

  static IndexedRecord piece(Thesaurus thesaurus, OwnObject object) {
    return new IndexedRecord(
        RecordTypes.OBJECT,
        Optional.of(new Found(HitKind.PIECE, new Findable(thesaurus).piece(object))),
        PackedMine.pack(object));
  }

  /** All of it for answers, and each entry alone to be found. */
  static List<IndexedRecord> mine(Thesaurus thesaurus, Mine mine) {
    Findable by = new Findable(thesaurus);
    List<IndexedRecord> records = new ArrayList<>();
    records.add(new IndexedRecord(RecordTypes.MINE, PackedMine.pack(mine)));
    for (Mine.Preference each : mine.preferences()) {
      Mine alone = new Mine(List.of(each), List.of(), List.of(), List.of());
      records.add(entry(by.preference(each), alone));
    }
    for (Mine.Coinage each : mine.coinages()) {
      Mine alone = new Mine(List.of(), List.of(each), List.of(), List.of());
      records.add(entry(by.coinage(each), alone));
    }
    for (Mine.Experience each : mine.experience()) {
      Mine alone = new Mine(List.of(), List.of(), List.of(each), List.of());
      records.add(entry(by.experience(each), alone));
    }
    for (Mine.Untraced each : mine.untraced()) {
      Mine alone = new Mine(List.of(), List.of(), List.of(), List.of(each));
      records.add(entry(Findable.untraced(each), alone));
    }
    return records;
  }

  private static IndexedRecord entry(Searchable by, Mine alone) {
    return new IndexedRecord(
        RecordTypes.MINE_ENTRY, Optional.of(new Found(HitKind.MINE, by)), PackedMine.pack(alone));
  }
}
