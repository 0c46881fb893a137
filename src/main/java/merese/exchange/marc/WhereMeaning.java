package merese.exchange.marc;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Occasion;
import merese.model.Edition.Online;
import merese.model.Locator;
import merese.model.SourceKind;

/** What a source is part of, where it is kept and where it is on the web. */
final class WhereMeaning {
  /** The source of what the library itself puts in a field of notes. */
  static final String LOCAL = "local";

  static final String ACCESSED = "Accessed ";
  static final String HOUSE = "House";
  static final String CODE = "Code";
  static final String CONSIGNOR = "Consignor";
  static final String VENUE = "Venue";
  static final String FIRM = "Firm";
  static final String FOLIATED_BY = "Foliated by";
  static final String DEGREE = "Degree";

  private static final Set<SourceKind> UNPUBLISHED =
      Set.of(SourceKind.MANUSCRIPT, SourceKind.STATEMENT);
  private static final List<String> ABOUT_ONLY =
      List.of(
          "table of contents",
          "publisher description",
          "contributor biographical",
          "sample text",
          "book review",
          "cover image",
          "inhaltsverzeichnis",
          "inhaltstext",
          "klappentext",
          "rezension");

  private WhereMeaning() {}

  /** The first field that links to a host (773) and names it. */
  static Optional<MarcField> host(MarcRecord record) {
    return record.all("773").stream().filter(f -> !title(f).isEmpty()).findFirst();
  }

  private static String title(MarcField host) {
    return MarcText.bare(host.first('t').orElse(""), true);
  }

  static Optional<Container> container(MarcRecord record) {
    return host(record).map(host -> container(record, host));
  }

  private static Container container(MarcRecord record, MarcField host) {
    HostPlace place = HostPlace.of(host);
    boolean body = host.first('7').orElse("").startsWith("c");
    return new Container(
        title(host),
        body ? host.first('a').map(a -> MarcText.bare(a, true)) : Optional.empty(),
        place.volume,
        place.part,
        place.issue,
        place.coverYear,
        place.pages.or(
            () -> record.first("300").flatMap(f -> f.first('a')).flatMap(WhereMeaning::pages)));
  }

  /** The extent of an article is where it stands only if it starts with the label: "p. 22-38". */
  private static Optional<Locator> pages(String extent) {
    String small = extent.toLowerCase(Locale.ROOT);
    boolean labelled =
        small.startsWith("p.") || small.startsWith("pages ") || small.startsWith("s.");
    return labelled ? HostPlace.pages(MarcText.bare(extent, true)) : Optional.empty();
  }

  static boolean isLocal(MarcField field) {
    return field.first('2').filter(LOCAL::equals).isPresent();
  }

  static Optional<Archive> archive(MarcRecord record, SourceKind kind) {
    for (MarcField note : record.all("502")) {
      Optional<Archive> university = ThesisNote.archive(note);
      if (university.isPresent()) {
        return university;
      }
    }
    for (MarcField place : record.all("852")) {
      if (isArchive(place, kind)) {
        return Optional.of(kept(place, MarcText.bare(place.first('a').orElse(""), true)));
      }
    }
    return Optional.empty();
  }

  /** A library's copy of a book is none of the book's own. */
  static boolean isArchive(MarcField place, SourceKind kind) {
    return place.is("852")
        && !MarcText.bare(place.first('a').orElse(""), true).isEmpty()
        && (isLocal(place) || UNPUBLISHED.contains(kind));
  }

  private static Archive kept(MarcField place, String repository) {
    String whole =
        isLocal(place)
            ? repository
            : place
                .first('b')
                .map(b -> repository + ", " + MarcText.bare(b, true))
                .orElse(repository);
    Optional<String> mark = place.first('j').or(() -> place.first('h'));
    return new Archive(
        whole,
        mark.map(m -> MarcText.bare(m, true)),
        NamedText.get(place, 'z', FIRM),
        NamedText.get(place, 'z', FOLIATED_BY),
        NamedText.get(place, 'z', DEGREE));
  }

  static Optional<Occasion> occasion(MarcRecord record) {
    return record.all("518").stream()
        .filter(WhereMeaning::isLocal)
        .findFirst()
        .map(
            event ->
                new Occasion(
                    NamedText.get(event, 'o', HOUSE),
                    event.first('p'),
                    event.first('d'),
                    NamedText.get(event, 'o', CODE),
                    NamedText.get(event, 'o', CONSIGNOR),
                    NamedText.all(event, 'o', VENUE)));
  }

  static Optional<Online> online(MarcRecord record) {
    Optional<MarcField> found = Optional.empty();
    for (MarcField field : record.all("856")) {
      boolean better = found.isEmpty() || (found.get().two() == '1' && field.two() != '1');
      if (isOfSource(field) && better) {
        found = Optional.of(field);
      }
    }
    return found.map(
        field ->
            new Online(
                field.first('u').orElseThrow(),
                accessed(field),
                record.all("857").stream().flatMap(f -> f.all('u').stream()).findFirst()));
  }

  /** The resource itself or a version of it, not something about it. */
  static boolean isOfSource(MarcField field) {
    boolean itself = field.two() == ' ' || field.two() == '0' || field.two() == '1';
    return field.is("856") && itself && field.first('u').isPresent() && !isAbout(field);
  }

  private static boolean isAbout(MarcField field) {
    for (Subfield subfield : field.subfields()) {
      if ("3yz".indexOf(subfield.code()) >= 0) {
        String small = subfield.text().toLowerCase(Locale.ROOT);
        if (ABOUT_ONLY.stream().anyMatch(small::contains)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Optional<String> accessed(MarcField field) {
    return field.all('z').stream()
        .filter(z -> z.startsWith(ACCESSED) && z.length() > ACCESSED.length())
        .map(z -> z.substring(ACCESSED.length()))
        .findFirst();
  }
}
