package merese.desk.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.claims.ClaimWords;
import merese.answer.claims.ClaimsAnswer.Sense;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.answer.concordance.Concordance.Safety;
import merese.answer.concordance.Concordance.Why;
import merese.desk.web.Site;

/** Short words between the parts of a drawing's answer, and what its script reads. */
public final class ChartWords {
  /** What stands beside a claim. */
  public static final ClaimWords CLAIMS = new ClaimWords(UnaryOperator.identity());

  private ChartWords() {}

  /** Why notes stand apart. */
  public static String why(Why why) {
    return switch (why) {
      case OWN_WORK -> "Your own articles and films, not counted";
      case SAYS_NOT_SHOWN -> "Says not shown, not counted";
      case HOW_IT_IS_MADE -> "Shows only how it is made, not counted";
      case MEANING_NOT_STATED -> "Meaning not stated, not counted";
    };
  }

  /** Whether words can be used without saying what is meant. */
  public static String safety(Safety safety) {
    return switch (safety) {
      case NOT_SAFE -> "Not safe: several meanings in this library";
      case NOT_CERTAIN -> "Not certain: left open, or seen used for something else";
      case SAFE -> "Safe: one meaning in this library";
    };
  }

  /** How a claim ties a feature to a place, before the place's name. */
  public static String sense(Sense sense) {
    return switch (sense) {
      case PLAIN -> "of";
      case ONLY -> "only of";
      case MAINLY -> "mainly of";
      case HEDGED -> "perhaps of";
      case STYLE -> "of, or in the style of,";
      case FOUND -> "found in";
      case DENIED -> "not only of";
    };
  }

  public static String ids(List<ConceptLine> concepts) {
    List<String> ids = new ArrayList<>();
    concepts.forEach(concept -> ids.add(concept.id()));
    return String.join(" ", ids);
  }

  /** Years as an EDTF interval: "1767/1799", "1780/.." without an end, "/1799" start unknown. */
  public static String interval(YearSpan span) {
    return end(span.from(), span.openStart()) + "/" + end(span.to(), span.openEnd());
  }

  private static String end(OptionalInt year, boolean open) {
    return year.isPresent() ? String.valueOf(year.getAsInt()) : open ? ".." : "";
  }

  public static String year(SourceLine source) {
    return source.year().isPresent() ? String.valueOf(source.year().getAsInt()) : "";
  }

  /** Words as printed, between quotation marks. */
  public static String quoted(List<String> words) {
    return "“" + String.join("”, “", words) + "”";
  }

  /** A file below /pictures/, fit for an address. */
  public static String picture(String file) {
    List<String> names = new ArrayList<>();
    for (String name : file.split("/", -1)) {
      names.add(Site.encoded(name).replace("+", "%20"));
    }
    return "/pictures/" + String.join("/", names);
  }
}
