package merese.answer;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Found.Role;
import merese.model.Claim;
import merese.model.Concept;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Mine;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.QuotedText;
import merese.model.Work;
import merese.search.Part;
import merese.shelf.Finding.OfConcept;
import merese.shelf.Finding.OfMine;
import merese.shelf.Finding.OfNote;
import merese.shelf.Finding.OfPiece;
import merese.shelf.Finding.OfSource;
import merese.shelf.Finding.Thing;

/** The texts of a thing that was found, each as what it can be found by and what it is shown as. */
final class HitTexts {
  private HitTexts() {}

  /** One text. */
  record HitText(Part part, Role role, boolean mine, String words) {}

  /** All that a thing says in itself, without its heading. */
  static List<HitText> of(Thing thing) {
    List<HitText> texts = new ArrayList<>();
    if (thing instanceof OfNote note) {
      note(texts, note.note().note());
    } else if (thing instanceof OfSource source) {
      source(texts, source.source().work(), source.source().edition());
    } else if (thing instanceof OfConcept found) {
      concept(texts, found.concept());
    } else if (thing instanceof OfPiece found) {
      piece(texts, found.piece());
    } else if (thing instanceof OfMine found) {
      mine(texts, found.entry());
    }
    return texts;
  }

  /** The words of a thing, heading and all. */
  static List<String> all(Thing thing) {
    List<String> words = new ArrayList<>();
    of(thing).forEach(t -> words.add(t.words()));
    if (thing instanceof OfNote note) {
      note.note().note().namings().forEach(n -> words.add(n.printed()));
    } else if (thing instanceof OfConcept found) {
      words.add(found.concept().preferred().text());
    } else if (thing instanceof OfPiece found) {
      words.add(found.piece().title());
    } else if (thing instanceof OfMine found) {
      words.add(HitMaker.word(found.entry()));
    }
    return words;
  }

  private static void note(List<HitText> texts, Note note) {
    note.quotation()
        .map(q -> QuotedText.of(q).words())
        .ifPresent(q -> add(texts, Part.QUOTATION, Role.QUOTATION, false, q));
    for (Claim claim : note.claims()) {
      add(texts, Part.CLAIM, Role.CLAIM, false, claim.words());
    }
    note.reading().ifPresent(r -> add(texts, Part.READING, Role.MY_READING, true, r));
  }

  private static void source(List<HitText> texts, Work work, Edition edition) {
    add(texts, Part.TITLE, Role.TITLE, false, work.title());
    work.subtitle().ifPresent(s -> add(texts, Part.SUBTITLE, Role.TITLE, false, s));
    work.alternateTitles().forEach(t -> add(texts, Part.SUBTITLE, Role.TITLE, false, t));
    edition.parts().forEach(p -> add(texts, Part.SUBTITLE, Role.TITLE, false, p.title()));
    for (Contributor contributor : work.contributors()) {
      add(texts, Part.AUTHOR, Role.AUTHOR, false, contributor.name().full());
    }
    edition
        .archive()
        .flatMap(Edition.Archive::firm)
        .ifPresent(f -> add(texts, Part.AUTHOR, Role.AUTHOR, false, f));
    Edition.Imprint imprint = edition.imprint();
    imprint.places().forEach(p -> add(texts, Part.PLACE, Role.IMPRINT, false, p));
    List<String> rest = new ArrayList<>();
    imprint.publisher().ifPresent(rest::add);
    imprint.series().ifPresent(rest::add);
    imprint.statement().ifPresent(rest::add);
    imprint.notedAs().ifPresent(rest::add);
    edition.container().ifPresent(c -> rest.add(c.title()));
    edition.container().flatMap(Edition.Container::society).ifPresent(rest::add);
    edition.occasion().flatMap(Edition.Occasion::house).ifPresent(rest::add);
    edition.occasion().flatMap(Edition.Occasion::consignor).ifPresent(rest::add);
    edition.occasion().ifPresent(o -> rest.addAll(o.venues()));
    edition.archive().ifPresent(a -> rest.add(a.repository()));
    edition.lineage().flatMap(Edition.Lineage::newMatter).ifPresent(rest::add);
    edition.scope().ifPresent(s -> rest.add(s.words()));
    rest.forEach(r -> add(texts, Part.IMPRINT, Role.IMPRINT, false, r));
  }

  private static void concept(List<HitText> texts, Concept concept) {
    concept.alternatives().forEach(l -> add(texts, Part.TERM, Role.LABEL, false, l.text()));
    concept.hidden().forEach(l -> add(texts, Part.TERM, Role.LABEL, false, l.text()));
    add(texts, Part.DEFINITION, Role.DEFINITION, false, concept.definition());
    concept
        .lookAlikeRemark()
        .ifPresent(r -> add(texts, Part.DEFINITION, Role.DEFINITION, false, r));
    for (Concept.LookAlike other : concept.lookAlikes()) {
      other.test().ifPresent(t -> add(texts, Part.DEFINITION, Role.DEFINITION, false, t));
    }
  }

  private static void piece(List<HitText> texts, OwnObject piece) {
    for (OwnObject.Evidence evidence : piece.evidence()) {
      evidence.words().ifPresent(w -> add(texts, Part.OWN, Role.MY_WORDS, true, w));
    }
    for (OwnObject.Observation seen : piece.observations()) {
      add(texts, Part.OWN, Role.MY_WORDS, true, seen.words());
    }
    piece.provenance().ifPresent(p -> add(texts, Part.OWN, Role.MY_WORDS, true, p));
    piece.measurements().ifPresent(m -> add(texts, Part.OWN, Role.MY_WORDS, true, m));
  }

  private static void mine(List<HitText> texts, Mine mine) {
    List<String> words = new ArrayList<>();
    for (Mine.Coinage coinage : mine.coinages()) {
      coinage.coiner().ifPresent(words::add);
      coinage.evidence().ifPresent(words::add);
    }
    for (Mine.Preference preference : mine.preferences()) {
      preference.reason().ifPresent(words::add);
      for (Mine.SetAside aside : preference.setAside()) {
        words.add(aside.label() + aside.reason().map(r -> " (" + r + ")").orElse(""));
      }
    }
    mine.experience().forEach(e -> words.add(e.words()));
    mine.untraced().forEach(u -> u.words().ifPresent(words::add));
    words.forEach(w -> add(texts, Part.OWN, Role.MY_WORDS, true, w));
  }

  private static void add(List<HitText> texts, Part part, Role role, boolean mine, String words) {
    if (!words.isBlank()) {
      texts.add(new HitText(part, role, mine, words));
    }
  }
}
