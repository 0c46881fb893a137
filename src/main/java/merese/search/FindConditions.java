package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.model.SourceKind;
import merese.search.FindQuery.Condition;
import merese.vocabulary.Folding;

/** Reads the values of the fields that are no text, and refuses what can mean nothing. */
final class FindConditions {
  private static final List<String> KINDS_OF_HIT =
      List.of("note", "source", "concept", "piece", "mine", "page");

  private final FindQueryParser parser;
  private final String text;

  FindConditions(FindQueryParser parser, String text) {
    this.parser = parser;
    this.text = text;
  }

  Condition of(FindField field, String typed, int start) {
    if (typed.isEmpty()) {
      throw parser.wrong(start, field.code() + ": has no value", "put one right after the colon");
    }
    String value =
        switch (field) {
          case YEAR -> years(typed, start);
          case KIND -> kind(typed, start);
          case PICTURE -> oneOf(field, typed, start, List.of("yes", "no"));
          case IS -> oneOf(field, typed, start, KINDS_OF_HIT);
          default -> typed;
        };
    return new Condition(start, Math.min(start + typed.length(), text.length()), field, value);
  }

  /** As "1900..1950" with either side empty where it is open. */
  private String years(String typed, int start) {
    int dots = typed.indexOf("..");
    if (dots < 0) {
      String year = year(typed, typed, start);
      return year + ".." + year;
    }
    if (typed.length() == 2) {
      throw parser.wrong(
          start,
          "this span has neither a first nor a last year",
          "write 1900..1950, 1900.. or ..1950");
    }
    String from = dots == 0 ? "" : year(typed.substring(0, dots), typed, start);
    String rest = typed.substring(dots + 2);
    String to = rest.isEmpty() ? "" : year(rest, typed, start + dots + 2);
    if (!from.isEmpty() && !to.isEmpty() && from.compareTo(to) > 0) {
      throw parser.wrong(
          start, "this span runs backwards", "write the earlier year first: " + to + ".." + from);
    }
    return from + ".." + to;
  }

  private String year(String part, String typed, int start) {
    boolean digits = !part.isEmpty() && part.length() <= 4;
    for (int i = 0; i < part.length(); i++) {
      digits &= part.charAt(i) >= '0' && part.charAt(i) <= '9';
    }
    if (!digits) {
      throw parser.wrong(
          start,
          "\"" + shown(part.isEmpty() ? typed : part) + "\" is no year",
          "write 1926, 1900..1950, 1900.. or ..1950");
    }
    return SearchFields.year(Integer.parseInt(part));
  }

  private String kind(String typed, int start) {
    String key = Folding.key(typed);
    List<String> codes = new ArrayList<>();
    for (SourceKind kind : SourceKind.values()) {
      if (key.equals(Folding.key(kind.code())) || key.equals(Folding.key(kind.words()))) {
        return kind.code();
      }
      codes.add(kind.code());
    }
    throw parser.wrong(
        start,
        "there is no kind of source \"" + shown(typed) + "\"",
        NearNames.remedy(typed, codes));
  }

  private String oneOf(FindField field, String typed, int start, List<String> values) {
    String lower = typed.toLowerCase(Locale.ROOT);
    Optional<String> value = values.stream().filter(lower::equals).findFirst();
    return value.orElseThrow(
        () ->
            parser.wrong(
                start,
                field.code() + ": cannot be \"" + shown(typed) + "\"",
                "write one of " + String.join(", ", values)));
  }

  static String shown(String value) {
    return value.length() <= 40 ? value : value.substring(0, 40) + "…";
  }
}
