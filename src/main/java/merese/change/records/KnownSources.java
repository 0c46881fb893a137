package merese.change.records;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.FilePlace;
import merese.model.Edition;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;
import merese.shelf.Fingerprint;

/** The sources that a record may be the same as: those of the library, and those just read. */
final class KnownSources {
  /** Nobody has written as many books; what is named first has the most in common. */
  private static final int MOST = 500;

  /**
   * A source by what tells it from others.
   *
   * @param file of its work; empty for one that is new in this import
   * @param place where a new one stands in its file
   * @param names by which its received records call it, each with who gave it
   */
  record Known(
      String key,
      String work,
      Optional<Path> file,
      Optional<FilePlace> place,
      Fingerprint fingerprint,
      Set<Name> names) {

    /** Whether a received record has called it so. */
    boolean isNamed(Name name) {
      return names.stream().anyMatch(name::mayBe);
    }

    /** Whether it is called so by somebody else alone. */
    boolean isNamedByOthers(Name name) {
      return !isNamed(name) && names.stream().anyMatch(n -> n.id().equals(name.id()));
    }
  }

  /**
   * What a record calls a source.
   *
   * @param by whose name it is; a number of a catalogue (MARC 21, 001) is that of one library alone
   *     (003); "" where the record does not say
   */
  record Name(String id, String by) {
    static Name of(ReceivedRecord record) {
      boolean marc = record.format().equals("marc");
      Optional<Field> giver =
          record.fields().stream().filter(f -> marc && f.name().equals("003")).findFirst();
      return new Name(record.id(), giver.map(f -> f.value().strip()).orElse(""));
    }

    boolean mayBe(Name other) {
      return id.equals(other.id) && (by.equals(other.by) || by.isEmpty() || other.by.isEmpty());
    }
  }

  /** Something that several sources may have in common. */
  private record Trait(Kind kind, String value) {
    private enum Kind {
      NAME,
      ISBN,
      DOI,
      TITLE,
      MAKER
    }
  }

  private final Map<String, Known> byKey = new HashMap<>();
  private final Map<String, String> byRecord = new HashMap<>();
  private final Map<Trait, Set<String>> byTrait = new HashMap<>();
  private final Set<String> takenKeys = new HashSet<>();
  private final Set<String> takenWorks = new HashSet<>();

  /** All editions of a work. */
  void add(Work work, Optional<Path> file, Optional<FilePlace> place) {
    for (Edition edition : work.editions()) {
      Work one = work.withOnly(edition);
      Set<Name> names = new HashSet<>();
      for (ReceivedRecord record : edition.received()) {
        names.add(Name.of(record));
        byRecord.putIfAbsent(digest(record), edition.key());
      }
      Known known =
          new Known(edition.key(), work.id(), file, place, Fingerprint.of(one), Set.copyOf(names));
      byKey.put(edition.key(), known);
      takenKeys.add(small(edition.key()));
      traits(known).stream()
          .distinct()
          .forEach(trait -> byTrait.merge(trait, Set.of(known.key()), KnownSources::both));
    }
    takenWorks.add(small(work.id()));
  }

  /** Most traits are of one source, so a set that can grow is made for the second. */
  private static Set<String> both(Set<String> before, Set<String> one) {
    Set<String> all =
        before instanceof LinkedHashSet<String> ? before : new LinkedHashSet<>(before);
    all.addAll(one);
    return all;
  }

  /** What a source and its double have in common, one at least. */
  private static List<Trait> traits(Known known) {
    List<Trait> traits = new ArrayList<>(traits(known.fingerprint()));
    known.names().forEach(name -> traits.add(new Trait(Trait.Kind.NAME, name.id())));
    traits.add(new Trait(Trait.Kind.NAME, known.key()));
    by(known.fingerprint()).ifPresent(traits::add);
    return traits;
  }

  private static List<Trait> traits(Fingerprint print) {
    List<Trait> traits = new ArrayList<>();
    print.isbns().forEach(isbn -> traits.add(new Trait(Trait.Kind.ISBN, isbn)));
    print.dois().forEach(doi -> traits.add(new Trait(Trait.Kind.DOI, doi)));
    Set<String> titles = new LinkedHashSet<>(List.of(print.title(), print.wholeTitle()));
    titles.addAll(print.otherTitles());
    titles.forEach(title -> traits.add(new Trait(Trait.Kind.TITLE, title)));
    return traits;
  }

  private static Optional<Trait> by(Fingerprint print) {
    return print.maker().isEmpty()
        ? Optional.empty()
        : Optional.of(new Trait(Trait.Kind.MAKER, print.maker()));
  }

  /**
   * Those that may be the source of a record: of its name, with a number of its own or with a title
   * of its own; {@value #MOST} at most.
   */
  List<Known> near(Fingerprint print, Optional<String> name) {
    List<Trait> traits = new ArrayList<>(traits(print));
    name.ifPresent(n -> traits.add(0, new Trait(Trait.Kind.NAME, n)));
    return having(traits);
  }

  /** Those that may be of the same work: the others by its maker too. */
  List<Known> akin(Fingerprint print) {
    List<Trait> traits = new ArrayList<>(traits(print));
    by(print).ifPresent(traits::add);
    return having(traits);
  }

  private List<Known> having(List<Trait> traits) {
    return traits.stream()
        .flatMap(trait -> byTrait.getOrDefault(trait, Set.of()).stream())
        .distinct()
        .limit(MOST)
        .map(byKey::get)
        .toList();
  }

  /** The source that came from the very same record. */
  Optional<Known> sameRecord(ReceivedRecord record) {
    return Optional.ofNullable(byRecord.get(digest(record))).map(byKey::get);
  }

  /** One that was added. */
  Known source(String key) {
    return byKey.get(key);
  }

  boolean isKeyTaken(String key) {
    return takenKeys.contains(small(key));
  }

  boolean isWorkTaken(String id) {
    return takenWorks.contains(small(id));
  }

  /** Files and BibTeX keys that differ in capitals alone are one to some systems. */
  private static String small(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static String digest(ReceivedRecord record) {
    StringBuilder all = new StringBuilder();
    add(all, record.format());
    add(all, record.type());
    add(all, record.id());
    for (Field field : record.fields()) {
      add(all, field.name());
      add(all, field.value());
    }
    try {
      byte[] bytes = all.toString().getBytes(StandardCharsets.UTF_8);
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new String(digest, 0, 16, StandardCharsets.ISO_8859_1);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static void add(StringBuilder all, String text) {
    all.append(text.length()).append(':').append(text);
  }
}
