package merese.answer.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Covers;
import merese.answer.Topic;
import merese.answer.identify.Identification.Fitting;
import merese.answer.identify.Identification.KeyLine;
import merese.answer.identify.Identification.PartReading;
import merese.answer.identify.Identification.Piece;
import merese.answer.identify.Sorting.Kept;
import merese.model.CharacterKey;
import merese.model.Concept;
import merese.model.KeyCharacter;
import merese.model.KeyedKind;
import merese.model.Nearest;
import merese.model.OwnObject;
import merese.shelf.KeyInUse;
import merese.shelf.Shelf;
import merese.vocabulary.Folding;
import merese.vocabulary.Thesaurus;

/**
 * Answers which kinds fit what was seen and felt, as far as the key goes. It compares with the
 * literature, and authenticates nothing.
 */
public final class Identify {
  private static final int MOST_NEAR = 3;
  private static final Narrowing PICTURED =
      new Narrowing(true, false, Set.of(), Optional.empty(), Optional.empty());

  private final Shelf shelf;
  private final Thesaurus thesaurus;
  private final IdentifyQuestion question;
  private final KeyInUse inUse;
  private final CharacterKey key;
  private final List<KeyedKind> known = new ArrayList<>();
  private final KeyLine keyLine;

  private Identify(Shelf shelf, IdentifyQuestion question) {
    this.shelf = shelf;
    this.thesaurus = shelf.thesaurus();
    this.question = question;
    this.inUse = shelf.characters();
    this.key = inUse.key();
    List<String> lacking = new ArrayList<>();
    for (KeyedKind kind : key.kinds()) {
      if (thesaurus.concept(kind.concept()).isPresent()) {
        known.add(kind);
      } else {
        lacking.add(kind.concept());
      }
    }
    this.keyLine = new KeyLine(key.basis(), inUse.ofLibrary(), lacking);
  }

  /**
   * Answers a question.
   *
   * @throws IdentifyException for an unknown character, value, piece or part
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static Identification answer(Shelf shelf, IdentifyQuestion question) {
    return shelf.ask(s -> new Identify(s, question).answer());
  }

  /** What can be looked at, and the kinds that the key tells apart. */
  public static CharacterList characters(Shelf shelf) {
    return shelf.ask(s -> new Identify(s, IdentifyQuestion.of()).list());
  }

  private CharacterList list() {
    List<CharacterList.Line> lines = new ArrayList<>();
    for (KeyCharacter character : key.characters()) {
      lines.add(
          new CharacterList.Line(
              character.id(),
              character.label(),
              character.question(),
              character.look(),
              Remaining.senses(character),
              Remaining.values(character),
              (int) known.stream().filter(k -> k.of(character.id()).isPresent()).count()));
    }
    List<ConceptLine> kinds = new ArrayList<>();
    known.forEach(k -> kinds.add(line(k.concept())));
    return new CharacterList(keyLine, lines, kinds);
  }

  private Identification answer() {
    Sight sight = new Sight(key);
    TypedCharacters typed = new TypedCharacters(key);
    question.characters().forEach(c -> typed.read(c, sight));
    PieceReading reading = new PieceReading(key);
    Optional<Piece> piece = question.object().map(ref -> piece(ref, reading, sight));
    List<ConceptLine> compared = new ArrayList<>();
    List<ConceptLine> notInKey = new ArrayList<>();
    List<KeyedKind> kinds = asked(compared, notInKey);
    Sorting sorted = new Sorting(key, thesaurus, sight, kinds);
    Remaining remaining = new Remaining(key, thesaurus, sorted.remaining());
    boolean asks = sight.isTelling() || !compared.isEmpty();
    return new Identification(
        Identification.CAUTION,
        keyLine,
        piece,
        compared,
        notInKey,
        kinds.size(),
        sight.observed(),
        reading.unread(),
        asks ? fitting(sorted.fits()) : List.of(),
        asks ? fitting(sorted.open()) : List.of(),
        sorted.ruledOut(),
        remaining.notLookedAt(sight),
        asks ? remaining.tests() : List.of(),
        piece.isPresent() && piece.get().part().isEmpty() ? parts(sight, kinds) : List.of());
  }

  /** All kinds, or those that are what the terms mean or narrower (R1). */
  private List<KeyedKind> asked(List<ConceptLine> compared, List<ConceptLine> notInKey) {
    if (question.terms().isEmpty()) {
      return known;
    }
    List<Topic> topics = Topic.of(shelf, question.terms(), question.facet());
    List<KeyedKind> kinds = new ArrayList<>();
    for (Topic topic : topics) {
      List<KeyedKind> of = new ArrayList<>();
      for (KeyedKind kind : known) {
        if (thesaurus.covers(topic.concept(), kind.concept())) {
          of.add(kind);
        }
      }
      compared.add(line(topic.concept()));
      if (of.isEmpty()) {
        notInKey.add(line(topic.concept()));
      }
      of.removeAll(kinds);
      kinds.addAll(of);
    }
    return kinds;
  }

  private Piece piece(String ref, PieceReading reading, Sight sight) {
    OwnObject object = object(ref);
    Optional<String> part = question.part().map(p -> part(object, p));
    for (OwnObject.Observation observation : object.observations()) {
      if (part.isEmpty() || observation.part().equals(part.get())) {
        reading.read(observation, sight);
      }
    }
    List<PieceLine> evidence = new ArrayList<>();
    for (OwnObject.Evidence of : object.evidence()) {
      evidence.add(
          new PieceLine(
              object.ref(), object.title(), of.kind(), line(of.concept()), of.words(), of.photo()));
    }
    return new Piece(object.ref(), object.title(), part, evidence);
  }

  private OwnObject object(String ref) {
    List<String> refs = new ArrayList<>();
    for (OwnObject object : shelf.objects()) {
      if (object.ref().equalsIgnoreCase(ref.strip())) {
        return object;
      }
      refs.add(object.ref());
    }
    refs.sort(null);
    List<String> near = Nearest.to(ref, refs, MOST_NEAR);
    throw new IdentifyException(
        "no piece of yours has the reference \""
            + ref
            + "\""
            + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near)));
  }

  private static String part(OwnObject object, String typed) {
    List<String> parts = new ArrayList<>();
    for (OwnObject.Observation observation : object.observations()) {
      if (Folding.key(observation.part()).equals(Folding.key(typed))) {
        return observation.part();
      }
      if (!parts.contains(observation.part())) {
        parts.add(observation.part());
      }
    }
    throw new IdentifyException(
        "nothing is recorded of a part \""
            + typed
            + "\" of "
            + object.ref()
            + (parts.isEmpty() ? "" : "; its parts are " + String.join(", ", parts)));
  }

  private List<PartReading> parts(Sight sight, List<KeyedKind> kinds) {
    Map<String, Sight> byPart = sight.byPart();
    List<PartReading> parts = new ArrayList<>();
    byPart.forEach(
        (part, alone) -> {
          if (alone.isTelling()) {
            Sorting sorted = new Sorting(key, thesaurus, alone, kinds);
            List<ConceptLine> fits = new ArrayList<>();
            sorted.fits().forEach(k -> fits.add(line(k.kind().concept())));
            parts.add(new PartReading(part, alone.observed(), fits, sorted.ruledOut().size()));
          }
        });
    return parts.size() > 1 ? parts : List.of();
  }

  private List<Fitting> fitting(List<Kept> kept) {
    List<Fitting> fitting = new ArrayList<>();
    for (Kept each : kept) {
      Concept concept = thesaurus.concept(each.kind().concept()).orElseThrow();
      fitting.add(
          new Fitting(
              line(concept.id()),
              concept.definition(),
              concept.status() == Concept.Status.UNCERTAIN,
              each.agreements(),
              concept.lookAlikeRemark(),
              pictured(concept.id())));
    }
    return fitting;
  }

  /** Only what is a picture (R2); the words about it are another question. */
  private List<Entry> pictured(String concept) {
    List<Entry> entries = new ArrayList<>();
    for (Section section :
        Covers.answer(shelf, CoverageQuestion.ofConcept(concept).with(PICTURED)).sections()) {
      for (Entry entry : section.group(Group.COUNTED)) {
        List<Passage> passages = new ArrayList<>();
        for (Passage passage : entry.passages()) {
          if (!passage.pictured().isEmpty()) {
            passages.add(
                new Passage(
                    passage.concept(),
                    passage.narrower(),
                    passage.printed(),
                    passage.pictured(),
                    List.of(),
                    passage.photos()));
          }
        }
        entries.add(
            new Entry(
                entry.source(),
                passages,
                entry.conflicts(),
                entry.readings(),
                entry.claims(),
                entry.sameAs()));
      }
    }
    return entries;
  }

  private ConceptLine line(String concept) {
    return new ConceptLine(concept, thesaurus.label(concept));
  }
}
