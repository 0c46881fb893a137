package merese.change.records;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.records.KnownSources.Known;
import merese.change.records.KnownSources.Name;
import merese.exchange.Incoming;
import merese.shelf.Fingerprint;

/**
 * Finds the source of the library that a record describes. Each source is found once in a file: of
 * two records that describe it, the second is somebody else's word for another thing, or a double
 * that only the user can join.
 */
final class Matcher {
  private final KnownSources known;
  private final Set<String> found = new HashSet<>();

  Matcher(KnownSources known) {
    this.known = known;
  }

  /** A source with what shows that it is the one. */
  record Match(Known source, List<String> why) {}

  /** The source that this record came from before, word for word. */
  Optional<Match> again(Incoming record) {
    Optional<Known> same = known.sameRecord(record.received());
    same.ifPresent(source -> found.add(source.key()));
    return same.map(source -> new Match(source, List.of("the same record, word for word")));
  }

  /** The best of the sources that were there before this import and are not yet found. */
  Optional<Match> find(Incoming record, Fingerprint print) {
    Match best = null;
    int strongest = 0;
    for (Known source : known.near(print, record.key())) {
      List<String> why = new ArrayList<>();
      int strength = strength(record, print, source, why);
      if (strength > strongest && source.place().isEmpty() && !found.contains(source.key())) {
        best = new Match(source, why);
        strongest = strength;
      }
    }
    if (best != null) {
      found.add(best.source().key());
    }
    return Optional.ofNullable(best);
  }

  /** What else is so like the record that it may be the same: found already, or new as well. */
  List<Match> doubles(Incoming record, Fingerprint print) {
    List<Match> doubles = new ArrayList<>();
    for (Known source : known.near(print, record.key())) {
      List<String> why = new ArrayList<>();
      if (strength(record, print, source, why) > 0) {
        doubles.add(new Match(source, why));
      }
    }
    return doubles;
  }

  /** 0 where nothing shows that they are the same. */
  private static int strength(Incoming record, Fingerprint print, Known source, List<String> why) {
    Fingerprint other = source.fingerprint();
    boolean title = print.hasTitleOf(other);
    boolean alike = print.contained() == other.contained();
    int strength = 0;
    Name name = new Name(record.key().orElse(""), Name.of(record.received()).by());
    if (record.key().isPresent() && title && !source.isNamedByOthers(name)) {
      if (source.key().equals(record.key().get())) {
        why.add("same key and title");
        strength += 16;
      } else if (source.isNamed(name)) {
        why.add("came in as " + record.key().get() + " before, same title");
        strength += 12;
      }
    }
    if (print.sharesDoiWith(other)) {
      why.add("same DOI");
      strength += 8;
    }
    if (alike && print.sharesIsbnWith(other) && (title || print.hasOtherTitleOf(other))) {
      why.add("same ISBN and title");
      strength += 4;
    }
    if (title
        && alike
        && print.year().isPresent()
        && print.year().equals(other.year())
        && print.edition() == other.edition()
        && print.hasMakerOf(other)) {
      why.add("same title, edition, year and author");
      strength += 2;
    }
    return strength;
  }
}
