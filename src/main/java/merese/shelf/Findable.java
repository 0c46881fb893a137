package merese.shelf;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import merese.model.Claim;
import merese.model.Concept;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Mine;
import merese.model.Name;
import merese.model.Naming;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Place;
import merese.model.QuotedText;
import merese.model.Work;
import merese.search.Part;
import merese.search.Searchable;
import merese.vocabulary.Thesaurus;

/** What each thing in a library can be found by. */
final class Findable {
  private final Thesaurus thesaurus;

  Findable(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  /**
   * @param authors family names of those who wrote the source
   */
  Searchable note(Note note, Collection<String> authors) {
    Searchable.Builder by = new Searchable.Builder();
    for (Naming naming : note.namings()) {
      by.words(Part.TERM, naming.printed());
    }
    by.words(Part.QUOTATION, note.quotation().map(q -> QuotedText.of(q).words()));
    for (Claim claim : note.claims()) {
      by.words(Part.CLAIM, claim.words());
      if (claim.kind() == Claim.Kind.PLACE) {
        by.words(Part.PLACE, claim.words());
        by.words(Part.PLACE, claim.value());
      }
    }
    by.words(Part.READING, note.reading());
    Set<String> meant = new HashSet<>();
    for (Naming naming : note.namings()) {
      if (naming.concept().isPresent() && meant.add(naming.concept().get())) {
        labels(by, naming.concept().get());
      }
    }
    by.words(Part.NOTED_FROM, authors);
    return by.pictured(note.places().stream().anyMatch(Place::isPictured)).build();
  }

  /** Not the words of the register of homonyms: those are many concepts' and tell nothing. */
  private void labels(Searchable.Builder by, String id) {
    thesaurus
        .concept(id)
        .ifPresent(
            concept -> {
              by.words(Part.MEANING, concept.preferred().text());
              concept.alternatives().forEach(l -> by.words(Part.MEANING, l.text()));
              concept.hidden().forEach(l -> by.words(Part.MEANING, l.text()));
            });
  }

  static Searchable source(Work work, Edition edition) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.TITLE, work.title());
    by.words(Part.SUBTITLE, work.subtitle());
    by.words(Part.SUBTITLE, work.alternateTitles());
    for (Contributor contributor : work.contributors()) {
      by.words(Part.AUTHOR, contributor.name().full());
    }
    for (Edition.Part part : edition.parts()) {
      by.words(Part.SUBTITLE, part.title());
      part.authors().forEach(a -> by.words(Part.AUTHOR, a.full()));
    }
    by.words(Part.IMPRINT, work.kind().words());
    imprint(by, edition.imprint());
    edition.lineage().ifPresent(l -> by.words(Part.IMPRINT, l.newMatter()));
    edition.container().ifPresent(c -> container(by, c));
    edition.occasion().ifPresent(o -> occasion(by, o));
    edition.archive().ifPresent(a -> archive(by, a));
    edition.scope().ifPresent(s -> by.words(Part.IMPRINT, s.words()));
    return by.year(edition.imprint().year()).kind(work.kind().code()).build();
  }

  private static void imprint(Searchable.Builder by, Edition.Imprint imprint) {
    by.words(Part.IMPRINT, imprint.publisher());
    by.words(Part.IMPRINT, imprint.series());
    by.words(Part.IMPRINT, imprint.statement());
    by.words(Part.IMPRINT, imprint.notedAs());
    imprint.identifiers().forEach(i -> by.words(Part.IMPRINT, i.value()));
    imprint.year().ifPresent(y -> by.words(Part.IMPRINT, Integer.toString(y)));
    by.words(Part.PLACE, imprint.places());
  }

  private static void container(Searchable.Builder by, Edition.Container container) {
    by.words(Part.IMPRINT, container.title());
    by.words(Part.IMPRINT, container.society());
  }

  private static void occasion(Searchable.Builder by, Edition.Occasion occasion) {
    by.words(Part.IMPRINT, occasion.house());
    by.words(Part.IMPRINT, occasion.code());
    by.words(Part.IMPRINT, occasion.consignor());
    by.words(Part.PLACE, occasion.city());
    by.words(Part.PLACE, occasion.venues());
  }

  private static void archive(Searchable.Builder by, Edition.Archive archive) {
    by.words(Part.IMPRINT, archive.repository());
    by.words(Part.IMPRINT, archive.shelfMark());
    by.words(Part.AUTHOR, archive.firm());
    by.words(Part.IMPRINT, archive.degree());
  }

  /** Family names of those who wrote a work, which its notes are found by too. */
  static Collection<String> authors(Work work) {
    return work.makers().stream()
        .map(Contributor::name)
        .filter(Name.Person.class::isInstance)
        .map(n -> ((Name.Person) n).shortForm())
        .toList();
  }

  static Searchable concept(Concept concept) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.TERM, concept.preferred().text());
    concept.alternatives().forEach(l -> by.words(Part.TERM, l.text()));
    concept.hidden().forEach(l -> by.words(Part.TERM, l.text()));
    by.words(Part.DEFINITION, concept.definition());
    by.words(Part.DEFINITION, concept.lookAlikeRemark());
    concept.lookAlikes().forEach(l -> by.words(Part.DEFINITION, l.test()));
    return by.about(concept.id()).build();
  }

  Searchable piece(OwnObject object) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.PIECE, object.ref()).words(Part.PIECE, object.title());
    for (OwnObject.Evidence evidence : object.evidence()) {
      by.about(evidence.concept()).words(Part.OWN, evidence.words());
      labels(by, evidence.concept());
    }
    for (OwnObject.Observation seen : object.observations()) {
      by.words(Part.OWN, seen.words());
    }
    by.words(Part.OWN, object.provenance()).words(Part.OWN, object.measurements());
    return by.build();
  }

  Searchable coinage(Mine.Coinage coinage) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.TERM, coinage.label()).words(Part.OWN, coinage.coiner());
    by.words(Part.OWN, coinage.evidence()).about(coinage.concept());
    labels(by, coinage.concept());
    return by.build();
  }

  Searchable preference(Mine.Preference preference) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.TERM, preference.label()).words(Part.OWN, preference.reason());
    for (Mine.SetAside aside : preference.setAside()) {
      by.words(Part.OWN, aside.label()).words(Part.OWN, aside.reason());
    }
    return by.about(preference.concept()).build();
  }

  Searchable experience(Mine.Experience experience) {
    Searchable.Builder by = new Searchable.Builder();
    by.words(Part.OWN, experience.words()).about(experience.concept());
    labels(by, experience.concept());
    return by.build();
  }

  static Searchable untraced(Mine.Untraced untraced) {
    return new Searchable.Builder()
        .words(Part.TERM, untraced.word())
        .words(Part.OWN, untraced.words())
        .build();
  }
}
