package merese.answer.claims;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.model.Claim;
import merese.model.Locator;
import merese.time.DateProfile;

/**
 * The answer to a {@link ClaimsQuestion}.
 *
 * @param profile the rules by which words became years
 * @param sections one a feature, in the order in which they were asked
 */
public record ClaimsAnswer(DateProfile profile, List<Section> sections) {

  public boolean isEmpty() {
    for (Section section : sections) {
      if (!section.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /**
   * What is claimed of one feature.
   *
   * @param sources how many sources cover it (R1, R3); the user's own are not among them
   * @param works how many works those are editions of
   * @param kinds the claims about the feature, by kind, in the order of {@link Claim.Kind}
   * @param objects claims about a single piece
   * @param copies warnings of copies, and whatever else is said of copies: a caution, never a date
   *     or place of the original
   * @param ownWork what the user's own articles and films claim; never a witness
   * @param saysNotShown sources that only say it is not shown (R3), with what those notes claim
   * @param experience the user's own, never counted
   * @param contradictions who is against whom
   * @param timeline the dates as bars
   */
  public record Section(
      Heading heading,
      int sources,
      int works,
      List<OfKind> kinds,
      List<Row> objects,
      List<Row> copies,
      List<Row> ownWork,
      List<Denial> saysNotShown,
      List<ExperienceLine> experience,
      Contradictions contradictions,
      List<Bar> timeline) {
    public boolean isEmpty() {
      for (OfKind kind : kinds) {
        if (!kind.groups().isEmpty()) {
          return false;
        }
      }
      return objects.isEmpty() && copies.isEmpty() && ownWork.isEmpty() && experience.isEmpty();
    }

    /** The claims of a kind. */
    public Optional<OfKind> kind(Claim.Kind wanted) {
      for (OfKind kind : kinds) {
        if (kind.kind() == wanted) {
          return Optional.of(kind);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * The claims of one kind.
   *
   * @param groups those that hold something, in the order of {@link Standing}
   * @param silent sources that cover the feature and claim nothing of the kind
   */
  public record OfKind(Claim.Kind kind, List<Group> groups, List<SourceLine> silent) {
    public List<Row> rows(Standing standing) {
      for (Group group : groups) {
        if (group.standing() == standing) {
          return group.rows();
        }
      }
      return List.of();
    }
  }

  /** The claims that stand alike to what was asked. */
  public record Group(Standing standing, List<Row> rows) {}

  /** How a claim stands to the year or place that was asked for. */
  public enum Standing {
    /** None was asked for. */
    CLAIMED,
    SUPPORTS,
    BORDERLINE,
    DOES_NOT,
    /** It dates a registration or a publication, not the making. */
    DATES_SOMETHING_ELSE,
    /** Its words are not read, so that it cannot be sorted. */
    NOT_READ
  }

  /**
   * One claim.
   *
   * @param note the note's id in its source
   * @param alsoOf what else the note is about, so that the claim may be of that
   * @param words verbatim
   * @param inCaption whether only a caption says it
   * @param object the user's own piece that the note is about, and how it is
   * @param reason why it stands where it stands, where that is not plain
   */
  public record Row(
      SourceLine source,
      String note,
      ConceptLine concept,
      boolean narrower,
      List<ConceptLine> alsoOf,
      Claim.Kind kind,
      Claim.About about,
      String words,
      Optional<String> hedge,
      Optional<String> bracket,
      Optional<String> value,
      List<Locator> pictured,
      List<Locator> inWords,
      boolean inCaption,
      Optional<DateLine> date,
      Optional<PlaceLine> place,
      Optional<String> object,
      Optional<String> reason) {
    Row because(Optional<String> other) {
      return new Row(
          source, note, concept, narrower, alsoOf, kind, about, words, hedge, bracket, value,
          pictured, inWords, inCaption, date, place, object, other);
    }
  }

  /**
   * What a date claim comes to in years.
   *
   * @param core the plain reading; empty where the words are not read
   * @param outer a generous reading
   * @param computed false where the years of the core are the printed ones
   * @param circaYears how far "about" reaches, where that is why the outer years differ
   * @param period the period word
   * @param fromValue whether it was computed from the date that the note gives in EDTF
   * @param wordsAlone what the words say by themselves, where that differs from the note's date
   * @param choices what the words may mean, where that has to be asked
   * @param dates what it dates, where that is not the making
   */
  public record DateLine(
      Optional<YearSpan> core,
      Optional<YearSpan> outer,
      boolean computed,
      OptionalInt circaYears,
      Optional<String> period,
      boolean fromValue,
      Optional<YearSpan> wordsAlone,
      List<String> choices,
      Optional<String> dates) {
    public boolean isRead() {
      return core.isPresent();
    }
  }

  /** Years from and to; an end without a year is open, or else unknown. */
  public record YearSpan(OptionalInt from, OptionalInt to, boolean openStart, boolean openEnd) {}

  /**
   * What a place claim says.
   *
   * @param places the places it names, by the names that the vocabulary of places has, or its own
   * @param denied those that it says it is not from
   * @param sense how it names them
   */
  public record PlaceLine(List<String> places, List<String> denied, Sense sense) {}

  /** How a claim ties a feature to a place. "Irish" and "found in Ireland" are two claims. */
  public enum Sense {
    /** "Irish". */
    PLAIN,
    /** "Only Irish". */
    ONLY,
    /** "Mainly Irish". */
    MAINLY,
    /** "Perhaps Irish". */
    HEDGED,
    /** "Irish or in Irish style". */
    STYLE,
    /** "Found in Ireland". */
    FOUND,
    /** "No reason to call it Irish". */
    DENIED
  }

  /** A source that only says it is not shown. */
  public record Denial(SourceLine source, List<Locator> where, List<String> words) {}

  /**
   * Claims that can't all be right.
   *
   * @param listed at most {@value #MOST} of them
   * @param count how many pairs there are
   */
  public record Contradictions(List<Contradiction> listed, int count) {
    static final int MOST = 100;
  }

  /**
   * One claim against others.
   *
   * @param sameWork whether all are editions of one work
   */
  public record Contradiction(Claim.Kind kind, Row one, List<Row> against, boolean sameWork) {}

  /** One date as a bar; a date that is not read has none. */
  public record Bar(Row row, YearSpan core, YearSpan outer) {}
}
