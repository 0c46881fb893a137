package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Imprint;
import merese.model.Identifier;

/** What the fields of edition, publication, extent and series say (250, 260, 264, 300, 490). */
final class ImprintMeaning {
  /** Before the text of a 500 that a citation should carry. */
  static final String FOR_CITATION = "For citation";

  private static final Pattern VOLUMES =
      Pattern.compile(
          "^\\[?(\\d{1,4})\\]?"
              + " ?(?:v\\.?|vols?\\.?|volumes?|bde?\\.?|bände|t\\.|tomes?|dln?\\.?|delen)(?=$|["
              + " ;:,.(\\[])",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  private static final Pattern NO_PLACE =
      Pattern.compile(
          "\\[?(?:s\\. ?l\\.|place of (?:publication|production|distribution) not identified"
              + "|s\\. ?l|n\\.p\\.|lieu de publication non identifié"
              + "|erscheinungsort nicht ermittelbar)\\]?");
  private static final Pattern NO_PUBLISHER =
      Pattern.compile(
          "\\[?(?:s\\. ?n\\.|(?:publisher|producer|distributor) not identified|s\\. ?n"
              + "|éditeur non identifié|verlag nicht ermittelbar)\\]?");
  private static final Pattern YEARS = Pattern.compile("[12]\\d{3}");

  private final MarcRecord record;
  private final boolean punctuated;

  ImprintMeaning(MarcRecord record) {
    this.record = record;
    this.punctuated = record.isPunctuated();
  }

  Imprint of(List<Identifier> identifiers, OptionalInt yearOfHost) {
    List<MarcField> published = published(record);
    Optional<String> statement = statement();
    MarcDate date = date(published, yearOfHost);
    return new Imprint(
        statement,
        statement.isPresent() ? EditionNumber.of(statement.get()) : OptionalInt.empty(),
        date.year(),
        date.printed(),
        names(published, 'a', NO_PLACE),
        Optional.of(String.join("; ", names(published, 'b', NO_PUBLISHER)))
            .filter(p -> !p.isEmpty()),
        volumes(),
        series(),
        identifiers,
        notedAs());
  }

  /** The first statement of publication, whether it is of AACR2 or of RDA. */
  static List<MarcField> published(MarcRecord record) {
    for (MarcField field : record.allOf("260", "264")) {
      if (field.is("260") || field.two() == '1') {
        return List.of(field);
      }
    }
    return List.of();
  }

  private Optional<String> statement() {
    List<String> statements = new ArrayList<>();
    for (MarcField field : record.all("250")) {
      String a = field.first('a').orElse("");
      String b = field.first('b').map(t -> MarcText.bare(t, punctuated)).orElse("");
      boolean parallel = a.endsWith("=");
      String bare = MarcText.bare(a, punctuated);
      String whole = b.isEmpty() ? bare : bare + (parallel ? " = " : " / ") + b;
      if (!whole.isBlank()) {
        statements.add(whole);
      }
    }
    return statements.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", statements));
  }

  private List<String> names(List<MarcField> fields, char code, Pattern nothing) {
    List<String> names = new ArrayList<>();
    for (MarcField field : fields) {
      for (String text : field.all(code)) {
        String name = MarcText.withPairedBrackets(MarcText.bare(text, punctuated));
        boolean named = !nothing.matcher(name.toLowerCase(Locale.ROOT)).matches();
        if (named && !name.isEmpty() && !names.contains(name)) {
          names.add(name);
        }
      }
    }
    return names;
  }

  private MarcDate date(List<MarcField> published, OptionalInt yearOfHost) {
    List<MarcField> fields = new ArrayList<>(published);
    for (char function : new char[] {'0', '4', '2'}) {
      record.all("264").stream().filter(f -> f.two() == function).forEach(fields::add);
    }
    for (MarcField field : fields) {
      MarcDate date = MarcDate.of(String.join(", ", bareDates(field)), punctuated);
      if (date.year().isPresent()) {
        return date;
      }
      if (date.printed().isPresent()) {
        return new MarcDate(codedYear("sret"), date.printed());
      }
    }
    OptionalInt year = codedYear("strcpmeikd");
    if (year.isEmpty()) {
      year = record.first("502").flatMap(f -> f.first('d')).map(MarcDate::year).orElse(year);
    }
    return new MarcDate(year.isPresent() ? year : yearOfHost, Optional.empty());
  }

  private List<String> bareDates(MarcField field) {
    return field.all('c').stream().map(c -> MarcText.bare(c, punctuated)).toList();
  }

  /** The first date of field 008, where it is of one of these kinds (position 6). */
  private OptionalInt codedYear(String kinds) {
    String fixed = record.control("008");
    boolean known = fixed.length() > 14 && kinds.indexOf(fixed.charAt(6)) >= 0;
    String year = known ? fixed.substring(7, 11) : "";
    return YEARS.matcher(year).matches()
        ? OptionalInt.of(Integer.parseInt(year))
        : OptionalInt.empty();
  }

  private OptionalInt volumes() {
    for (MarcField field : record.all("300")) {
      Matcher volumes = VOLUMES.matcher(field.first('a').orElse(""));
      if (volumes.find() && Integer.parseInt(volumes.group(1)) > 1) {
        return OptionalInt.of(Integer.parseInt(volumes.group(1)));
      }
    }
    return OptionalInt.empty();
  }

  /** As the book prints it (490), failing that as catalogues file it. */
  private Optional<String> series() {
    for (String tag : new String[] {"490", "440", "830"}) {
      List<String> all = new ArrayList<>();
      for (MarcField field : record.all(tag)) {
        field.first('a').map(a -> series(field, a)).filter(s -> !s.isEmpty()).ifPresent(all::add);
      }
      if (!all.isEmpty()) {
        return Optional.of(String.join("; ", all));
      }
    }
    return Optional.empty();
  }

  private String series(MarcField field, String title) {
    StringBuilder whole = new StringBuilder(MarcText.bare(title, punctuated));
    if (!field.is("490")) {
      field.first('n').ifPresent(n -> whole.append(". ").append(MarcText.bare(n, punctuated)));
      field.first('p').ifPresent(p -> whole.append(". ").append(MarcText.bare(p, punctuated)));
    }
    field.first('v').ifPresent(v -> whole.append(", ").append(MarcText.bare(v, punctuated)));
    return whole.toString();
  }

  private Optional<String> notedAs() {
    for (MarcField field : record.all("500")) {
      if (isForCitation(field)) {
        return field.first('a');
      }
    }
    return Optional.empty();
  }

  static boolean isForCitation(MarcField field) {
    return field.is("500") && field.first('3').equals(Optional.of(FOR_CITATION));
  }
}
