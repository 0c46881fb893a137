package merese.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One published form of a work: what notes hang on and what is cited. Where an answer speaks of a
 * source, it means this.
 *
 * @param key what a user types to name the source; also its BibTeX key
 * @param received the records of it that other programs gave
 */
public record Edition(
    String key,
    Imprint imprint,
    Optional<Lineage> lineage,
    Optional<Container> container,
    Optional<Occasion> occasion,
    Optional<Archive> archive,
    Optional<Online> online,
    Optional<Scope> scope,
    List<Part> parts,
    List<Copy> copies,
    List<Note> notes,
    List<Check> checks,
    List<ReceivedRecord> received) {

  public Edition {
    Require.text(key, "an edition's key");
    parts = List.copyOf(parts);
    copies = List.copyOf(copies);
    notes = List.copyOf(notes);
    checks = List.copyOf(checks);
    received = List.copyOf(received);
  }

  /** Whether the user has a copy of their own, on the shelf or lent. */
  public boolean owned() {
    return copies.stream().anyMatch(Copy::own);
  }

  /** The same edition without its notes and its check log. */
  public Edition withoutNotes() {
    return new Edition(
        key, imprint, lineage, container, occasion, archive, online, scope, parts, copies,
        List.of(), List.of(), received);
  }

  public Edition withKey(String other) {
    return new Edition(
        other, imprint, lineage, container, occasion, archive, online, scope, parts, copies, notes,
        checks, received);
  }

  public Edition withImprint(Imprint other) {
    return new Edition(
        key, other, lineage, container, occasion, archive, online, scope, parts, copies, notes,
        checks, received);
  }

  public Edition withLineage(Lineage other) {
    return new Edition(
        key,
        imprint,
        Optional.of(other),
        container,
        occasion,
        archive,
        online,
        scope,
        parts,
        copies,
        notes,
        checks,
        received);
  }

  public Edition withNotes(List<Note> others) {
    return new Edition(
        key, imprint, lineage, container, occasion, archive, online, scope, parts, copies, others,
        checks, received);
  }

  public Edition withChecks(List<Check> others) {
    return new Edition(
        key, imprint, lineage, container, occasion, archive, online, scope, parts, copies, notes,
        others, received);
  }

  public Edition withCopies(List<Copy> others) {
    return new Edition(
        key, imprint, lineage, container, occasion, archive, online, scope, parts, others, notes,
        checks, received);
  }

  public Edition withReceived(List<ReceivedRecord> records) {
    return new Edition(
        key, imprint, lineage, container, occasion, archive, online, scope, parts, copies, notes,
        checks, records);
  }

  /**
   * What the title page and its back say.
   *
   * @param title the edition's own where it differs from the work's
   * @param statement the edition as printed, such as "2nd edn"
   * @param year the year of publication; empty for an undated source
   * @param yearPrinted the year as printed or as bracketed by the user, such as "[c. 1926]"
   * @param volumes number of volumes; empty for one
   * @param series title and number of the series, as printed
   * @param notedAs anything else a citation should carry, as a sentence
   */
  public record Imprint(
      Optional<OwnTitle> title,
      Optional<String> statement,
      OptionalInt number,
      OptionalInt year,
      Optional<String> yearPrinted,
      List<String> places,
      Optional<String> publisher,
      OptionalInt volumes,
      Optional<String> series,
      List<Identifier> identifiers,
      Optional<String> notedAs) {
    public Imprint {
      places = List.copyOf(places);
      identifiers = List.copyOf(identifiers);
    }

    /** An imprint under the work's title. */
    public Imprint(
        Optional<String> statement,
        OptionalInt number,
        OptionalInt year,
        Optional<String> yearPrinted,
        List<String> places,
        Optional<String> publisher,
        OptionalInt volumes,
        Optional<String> series,
        List<Identifier> identifiers,
        Optional<String> notedAs) {
      this(
          Optional.empty(),
          statement,
          number,
          year,
          yearPrinted,
          places,
          publisher,
          volumes,
          series,
          identifiers,
          notedAs);
    }

    public Imprint withTitle(Optional<OwnTitle> other) {
      return new Imprint(
          other,
          statement,
          number,
          year,
          yearPrinted,
          places,
          publisher,
          volumes,
          series,
          identifiers,
          notedAs);
    }

    public Imprint withIdentifiers(List<Identifier> others) {
      return new Imprint(
          title,
          statement,
          number,
          year,
          yearPrinted,
          places,
          publisher,
          volumes,
          series,
          others,
          notedAs);
    }

    /** The identifiers of one kind, in their order. */
    public List<Identifier> identifiers(Identifier.Scheme scheme) {
      return identifiers.stream().filter(i -> i.scheme() == scheme).toList();
    }
  }

  /** The title of an edition that was published under another than the work's. */
  public record OwnTitle(String title, Optional<String> subtitle) {
    public OwnTitle {
      Require.text(title, "an edition's own title");
    }

    /** Title and subtitle in one line. */
    public String whole() {
      return subtitle.map(s -> title + ": " + s).orElse(title);
    }
  }

  /**
   * Where an edition comes from.
   *
   * @param parent key of the edition that this one repeats or revises
   * @param originalYear the year of the first publication of what is reprinted
   * @param newMatter what was added and by whom, as printed
   */
  public record Lineage(
      Form form,
      Optional<String> parent,
      OptionalInt originalYear,
      Optional<String> newMatter,
      List<PlateChange> plates) {
    public Lineage {
      plates = List.copyOf(plates);
    }

    /** How an edition stands to its parent. */
    public enum Form implements Coded {
      REVISED,
      REPRINT,
      FACSIMILE,
      TRANSLATION,
      TWIN
    }
  }

  /**
   * What became of one picture in this edition.
   *
   * @param picture the picture id, the same in every edition
   * @param locator where it is here; empty where it was dropped
   */
  public record PlateChange(
      String picture, Optional<Locator> locator, Fate fate, Optional<String> words) {
    /** Whether the picture is still there. */
    public enum Fate implements Coded {
      KEPT,
      DROPPED,
      OTHER_OBJECT
    }
  }

  /**
   * The journal, volume of essays or newsletter that an article is in.
   *
   * @param coverYear the year on the cover where it differs from the real one
   * @param pages the extent of the article
   */
  public record Container(
      String title,
      Optional<String> society,
      Optional<String> volume,
      Optional<String> part,
      Optional<String> issue,
      OptionalInt coverYear,
      Optional<Locator> pages) {
    public Container {
      Require.text(title, "the title of a journal or volume");
    }
  }

  /**
   * A sale or an exhibition.
   *
   * @param house the auction house or the organiser
   * @param dates as printed
   */
  public record Occasion(
      Optional<String> house,
      Optional<String> city,
      Optional<String> dates,
      Optional<String> code,
      Optional<String> consignor,
      List<String> venues) {
    public Occasion {
      venues = List.copyOf(venues);
    }
  }

  /**
   * Where an unpublished source is kept; for a thesis, the university.
   *
   * @param foliatedBy whose numbering the folios follow
   */
  public record Archive(
      String repository,
      Optional<String> shelfMark,
      Optional<String> firm,
      Optional<String> foliatedBy,
      Optional<String> degree) {
    public Archive {
      Require.text(repository, "a repository");
    }
  }

  /** Where a source is on the web. */
  public record Online(String url, Optional<String> accessed, Optional<String> archived) {
    public Online {
      Require.text(url, "an address on the web");
    }
  }

  /**
   * An entry, chapter or essay with an author of its own.
   *
   * @param extent the pages or entries that it takes up
   */
  public record Part(String id, String title, List<Name> authors, Optional<Locator> extent) {
    public Part {
      Require.text(id, "a part's id");
      Require.text(title, "a part's title");
      authors = List.copyOf(authors);
    }
  }
}
