package merese.change.vocabulary;

import java.util.List;
import java.util.Optional;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Status;
import merese.model.Facet;

/** What is to become of the vocabulary. Concepts are named by their ids. */
public sealed interface ConceptRequest {
  /** In a few words, for the history. */
  String words();

  /**
   * A new concept.
   *
   * @param facet an id or noun; empty for that of the first broader concept
   * @param newFacet a facet that is made for it, in place of {@code facet}
   * @param scope of the label, as in "bell (body)"
   */
  record Add(
      String id,
      Optional<String> facet,
      Optional<Facet> newFacet,
      String label,
      Optional<String> scope,
      String definition,
      List<String> broader,
      List<String> alternatives,
      List<String> hidden,
      List<LookAlike> lookAlikes,
      Status status)
      implements ConceptRequest {
    @Override
    public String words() {
      return "concept " + id + " (“" + label + "”) added";
    }
  }

  /**
   * Another preferred label, another id, or both.
   *
   * @param dropOld whether the label that was preferred is not to stay as an alternative
   */
  record Rename(
      String concept,
      Optional<String> label,
      Optional<String> scope,
      Optional<String> id,
      boolean dropOld)
      implements ConceptRequest {
    @Override
    public String words() {
      return "concept "
          + concept
          + " renamed"
          + id.map(i -> " " + i).orElse("")
          + label.map(l -> " “" + l + "”").orElse("");
    }
  }

  /** Other labels and another definition. */
  record Describe(
      String concept,
      Optional<String> definition,
      Optional<Status> status,
      List<String> alternatives,
      List<String> hidden,
      List<String> without)
      implements ConceptRequest {
    @Override
    public String words() {
      return "labels and definition of concept " + concept;
    }
  }

  /** One concept becomes part of another. */
  record Merge(String gone, String kept) implements ConceptRequest {
    @Override
    public String words() {
      return "concept " + gone + " merged into " + kept;
    }
  }

  /**
   * A new concept out of one, with some of its notes.
   *
   * @param definition empty for the same
   * @param broader empty for the same
   * @param printed the terms whose namings go over; empty for all, where sources are named
   * @param sources keys of editions that this is limited to; empty for no limit
   * @param notes that go over whatever they print, as "quenby-1949/n3"
   * @param test that tells the two apart; makes them look-alikes
   */
  record Split(
      String concept,
      String id,
      String label,
      Optional<String> scope,
      Optional<String> definition,
      List<String> broader,
      List<String> alternatives,
      List<String> printed,
      List<String> sources,
      List<String> notes,
      Optional<String> test)
      implements ConceptRequest {
    @Override
    public String words() {
      return "concept " + id + " (“" + label + "”) split from " + concept;
    }
  }

  /**
   * Another place in the hierarchy, or another facet.
   *
   * @param broader what it goes below
   * @param from what it is no longer below
   * @param also whether it stays below all else that it is below
   * @param top whether it is below nothing any more
   * @param facet the id or noun of the facet that it goes to, with what is narrower
   * @param newFacet a facet that is made for it, in place of {@code facet}
   */
  record Move(
      String concept,
      Optional<String> broader,
      Optional<String> from,
      boolean also,
      boolean top,
      Optional<String> facet,
      Optional<Facet> newFacet)
      implements ConceptRequest {
    @Override
    public String words() {
      return "concept "
          + concept
          + " moved"
          + broader.map(b -> " below " + b).orElse("")
          + facet
              .or(() -> newFacet.map(Facet::id))
              .map(f -> " to the facet " + f)
              .orElse(top ? " to the top" : "");
    }
  }

  /**
   * That two concepts are mistaken for one another, or, where {@code none}, no longer are.
   *
   * @param test that tells them apart
   */
  record Mistaken(String one, String other, Optional<String> test, boolean none)
      implements ConceptRequest {
    @Override
    public String words() {
      return one + " and " + other + (none ? " no longer look-alikes" : " are look-alikes");
    }
  }
}
