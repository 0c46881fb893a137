package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.exchange.Incoming;
import merese.model.Edition;
import merese.model.Edition.Container;
import merese.model.Identifier;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * What a MARC 21 record says of a source, in the library's terms; marc.md lists field by field what
 * is understood.
 *
 * <p>Guarantees: the same record has the same meaning; a field that is not understood adds nothing.
 * The title is as it is printed, with its article: the number of characters that a catalogue skips
 * when it files a title (245, second indicator) takes nothing away, and filing is left to
 * merese.vocabulary, which knows the articles.
 *
 * @param work named {@link Incoming#UNNAMED}, with one edition that has the record
 * @param remarks what was noticed and taken as it stands
 */
public record MarcMeaning(Work work, List<String> remarks) {
  private static final String NOT_OF_SOURCES = "zuvxyqw";

  public MarcMeaning {
    remarks = List.copyOf(remarks);
  }

  /** Whether it is of a source, and not of a name, a subject, a class or a library's holdings. */
  static boolean isOfSource(MarcRecord record) {
    return NOT_OF_SOURCES.indexOf(record.code(MarcField.LEADER, 6)) < 0;
  }

  /** Empty for a record without a title, or of something else than a source. */
  public static Optional<MarcMeaning> of(ReceivedRecord received) {
    return of(received, MarcRecord.of(received));
  }

  static Optional<MarcMeaning> of(ReceivedRecord received, MarcRecord record) {
    TitleMeaning.Titles titles = TitleMeaning.of(record);
    if (titles.title().isBlank() || !isOfSource(record)) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>();
    if (record.code(MarcField.LEADER, 5) == 'd') {
      remarks.add("the catalogue marks this record as deleted");
    }
    SourceKind kind = KindMeaning.of(record, remarks);
    Work work =
        new Work(
            Incoming.UNNAMED,
            kind,
            titles.title(),
            titles.subtitle(),
            titles.others(),
            PeopleMeaning.of(record),
            language(record),
            false,
            List.of(edition(record, received, kind, remarks)),
            List.of());
    return Optional.of(new MarcMeaning(work, remarks));
  }

  private static Edition edition(
      MarcRecord record, ReceivedRecord received, SourceKind kind, List<String> remarks) {
    List<Identifier> identifiers = IdentifierMeaning.of(record, remarks);
    Optional<Container> container = WhereMeaning.container(record);
    OptionalInt yearOfHost =
        WhereMeaning.host(record).map(host -> HostPlace.of(host).year).orElse(OptionalInt.empty());
    return new Edition(
        Incoming.UNNAMED,
        new ImprintMeaning(record).of(identifiers, yearOfHost),
        DescentMeaning.of(record),
        container,
        WhereMeaning.occasion(record),
        WhereMeaning.archive(record, kind),
        WhereMeaning.online(record),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(received));
  }

  /** A tag of BCP 47 in field 041 first, then field 008, then a code in field 041. */
  private static Optional<String> language(MarcRecord record) {
    for (MarcField field : record.all("041")) {
      if (isTagged(field)) {
        return field.first('a');
      }
    }
    String fixed = record.control("008");
    Optional<String> coded =
        fixed.length() >= 38 ? LanguageCodes.tag(fixed.substring(35, 38)) : Optional.empty();
    boolean several = fixed.length() >= 38 && fixed.startsWith("mul", 35);
    if (coded.isPresent() || several) {
      return coded;
    }
    for (MarcField field : record.all("041")) {
      Optional<String> first = field.first('a').filter(a -> a.length() >= 3 && field.two() != '7');
      if (first.isPresent()) {
        return LanguageCodes.tag(first.get().substring(0, 3));
      }
    }
    return Optional.empty();
  }

  static boolean isTagged(MarcField field) {
    return field.is("041")
        && field.two() == '7'
        && field.first('a').isPresent()
        && field.first('2').filter(s -> s.startsWith("rfc") || s.equals("bcp47")).isPresent();
  }
}
