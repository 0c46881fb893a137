package merese.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.Found.Hit;
import merese.answer.Found.Kind;
import merese.answer.Found.Passage;
import merese.answer.Found.Role;
import merese.answer.Found.Text;
import merese.answer.HitTexts.HitText;
import merese.model.Concept;
import merese.model.Locator;
import merese.model.Mine;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.search.Highlights;
import merese.search.Part;
import merese.shelf.Finding.OfConcept;
import merese.shelf.Finding.OfMine;
import merese.shelf.Finding.OfNote;
import merese.shelf.Finding.OfPiece;
import merese.shelf.Finding.OfSource;
import merese.shelf.Finding.Thing;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.Thesaurus;

/** Makes of a thing that was found what an answer says of it. */
final class HitMaker {
  private static final List<Locator> NOWHERE = List.of();

  private final Thesaurus thesaurus;
  private final SourceLines lines;
  private final Snippets snippets;

  HitMaker(Shelf shelf, Highlights highlights) {
    this.thesaurus = shelf.thesaurus();
    this.lines = new SourceLines();
    this.snippets = new Snippets(highlights);
  }

  Hit hit(Thing thing) {
    List<HitText> texts = HitTexts.of(thing);
    if (thing instanceof OfNote found) {
      return note(found.note(), found.all(), texts);
    } else if (thing instanceof OfSource found) {
      SourceLine line = lines.of(found.source());
      Text heading = snippets.whole(Part.AUTHOR, line.reference());
      return new Hit(
          Kind.SOURCE,
          line.key(),
          found.all(),
          Optional.of(line),
          NOWHERE,
          NOWHERE,
          List.of(),
          heading,
          titleFirst(texts));
    } else if (thing instanceof OfConcept found) {
      Concept concept = found.concept();
      Text heading = snippets.whole(Part.TERM, Thesaurus.display(concept.preferred()));
      return new Hit(
          Kind.CONCEPT,
          concept.id(),
          found.all(),
          Optional.empty(),
          NOWHERE,
          NOWHERE,
          List.of(line(concept.id())),
          heading,
          snippets.marked(texts, Role.DEFINITION));
    } else if (thing instanceof OfPiece found) {
      OwnObject piece = found.piece();
      Set<String> concepts = new LinkedHashSet<>();
      piece.evidence().forEach(e -> concepts.add(e.concept()));
      List<Passage> passages = new ArrayList<>(snippets.marked(texts, null));
      passages.addAll(labels(concepts, passages));
      return new Hit(
          Kind.OWN_PIECE,
          piece.ref(),
          found.all(),
          Optional.empty(),
          NOWHERE,
          NOWHERE,
          lines(concepts),
          snippets.whole(Part.PIECE, piece.ref() + ": " + piece.title()),
          passages);
    }
    OfMine found = (OfMine) thing;
    Optional<String> concept = concept(found.entry());
    List<Passage> passages = new ArrayList<>(snippets.marked(texts, Role.MY_WORDS));
    if (kind(found.entry()) != Kind.PREFERENCE) {
      passages.addAll(labels(concept.stream().toList(), passages));
    }
    return new Hit(
        kind(found.entry()),
        id(found.entry()),
        found.all(),
        Optional.empty(),
        NOWHERE,
        NOWHERE,
        lines(concept.stream().toList()),
        snippets.whole(Part.TERM, word(found.entry())),
        passages);
  }

  private Hit note(SourcedNote sourced, boolean all, List<HitText> texts) {
    Note note = sourced.note();
    Set<String> concepts = new LinkedHashSet<>();
    note.namings().forEach(n -> n.concept().ifPresent(concepts::add));
    TreeSet<Locator> pictured = new TreeSet<>();
    TreeSet<Locator> inWords = new TreeSet<>();
    for (Place place : note.places()) {
      (place.medium().isPicture() ? pictured : inWords).add(place.locator());
    }
    inWords.removeAll(pictured);
    Text heading =
        snippets.joined(Part.TERM, note.namings().stream().map(Naming::printed).toList());
    List<Passage> passages = new ArrayList<>(snippets.marked(texts, Role.QUOTATION));
    if (heading.marks().isEmpty()) {
      passages.addAll(labels(concepts, passages));
    }
    SourceLine source = lines.of(sourced.source());
    return new Hit(
        Kind.NOTE,
        source.key() + "/" + note.id(),
        all,
        Optional.of(source),
        List.copyOf(pictured),
        List.copyOf(inWords),
        lines(concepts),
        heading,
        passages);
  }

  /** The label by which something was found whose own words have nothing that was looked for. */
  private List<Passage> labels(Iterable<String> concepts, List<Passage> passages) {
    if (passages.stream().anyMatch(p -> !p.text().marks().isEmpty())) {
      return List.of();
    }
    List<Passage> labels = new ArrayList<>();
    for (String id : concepts) {
      thesaurus.concept(id).flatMap(this::bestLabel).ifPresent(labels::add);
    }
    return labels;
  }

  private Optional<Passage> bestLabel(Concept concept) {
    List<Concept.Label> all = new ArrayList<>();
    all.add(concept.preferred());
    all.addAll(concept.alternatives());
    all.addAll(concept.hidden());
    Passage best = null;
    int most = 0;
    for (Concept.Label label : all) {
      Text text = snippets.whole(Part.MEANING, label.text());
      int marked = text.marks().stream().mapToInt(m -> m.end() - m.start()).sum();
      if (marked > most) {
        most = marked;
        best = new Passage(Role.LABEL, false, text);
      }
    }
    return Optional.ofNullable(best);
  }

  private List<Passage> titleFirst(List<HitText> texts) {
    List<Passage> passages = new ArrayList<>();
    HitText title = texts.get(0);
    passages.add(new Passage(Role.TITLE, false, snippets.whole(title.part(), title.words())));
    passages.addAll(snippets.marked(texts.subList(1, texts.size()), null));
    return passages;
  }

  private ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }

  private List<ConceptLine> lines(Iterable<String> concepts) {
    List<ConceptLine> lines = new ArrayList<>();
    concepts.forEach(c -> lines.add(line(c)));
    return lines;
  }

  private static Kind kind(Mine entry) {
    if (!entry.coinages().isEmpty()) {
      return Kind.COINAGE;
    } else if (!entry.preferences().isEmpty()) {
      return Kind.PREFERENCE;
    }
    return entry.experience().isEmpty() ? Kind.UNTRACED : Kind.EXPERIENCE;
  }

  private static String id(Mine entry) {
    return switch (kind(entry)) {
      case COINAGE -> "coinage:" + entry.coinages().get(0).label();
      case PREFERENCE -> "preference:" + entry.preferences().get(0).concept();
      case EXPERIENCE ->
          "experience:"
              + entry.experience().get(0).concept()
              + ":"
              + entry.experience().get(0).kind().code();
      default -> "untraced:" + entry.untraced().get(0).word();
    };
  }

  /** The word that an entry is about; none for an experience. */
  static String word(Mine entry) {
    return switch (kind(entry)) {
      case COINAGE -> entry.coinages().get(0).label();
      case PREFERENCE -> entry.preferences().get(0).label();
      case EXPERIENCE -> "";
      default -> entry.untraced().get(0).word();
    };
  }

  private static Optional<String> concept(Mine entry) {
    return switch (kind(entry)) {
      case COINAGE -> Optional.of(entry.coinages().get(0).concept());
      case PREFERENCE -> Optional.of(entry.preferences().get(0).concept());
      case EXPERIENCE -> Optional.of(entry.experience().get(0).concept());
      default -> Optional.empty();
    };
  }
}
