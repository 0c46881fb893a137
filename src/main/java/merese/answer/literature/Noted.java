package merese.answer.literature;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.answer.Correction;
import merese.answer.Corrections;
import merese.answer.SourceLines;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** Notes by their source's key and their own id, with what corrects them. */
final class Noted {
  private final Shelf shelf;
  private final Corrections corrections;
  private final Map<String, Source> sources = new HashMap<>();
  private final Map<String, Map<String, SourcedNote>> notes = new HashMap<>();

  Noted(Shelf shelf, SourceLines lines) {
    this.shelf = shelf;
    this.corrections = new Corrections(shelf, lines);
    shelf.sources().forEach(source -> sources.put(source.key(), source));
  }

  Source source(String key) {
    return sources.get(key);
  }

  List<Correction> corrections(SourcedNote note) {
    return corrections.of(note);
  }

  List<Correction> corrections(String source, String note) {
    Map<String, SourcedNote> known = notes.get(source);
    if (known == null) {
      known = new HashMap<>();
      for (SourcedNote each : shelf.notesOf(sources.get(source))) {
        known.put(each.note().id(), each);
      }
      notes.put(source, known);
    }
    return corrections.of(known.get(note));
  }
}
