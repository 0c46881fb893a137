package merese.answer.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import merese.answer.Coverage.ConceptLine;
import merese.answer.claims.ClaimsAnswer.DateLine;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.model.Claim;
import merese.model.Locator;

/** What stands beside a claim: where it is from, its years, and what limits it. */
public final class ClaimWords {
  private final UnaryOperator<String> together;

  /**
   * @param together keeps words on one line
   */
  public ClaimWords(UnaryOperator<String> together) {
    this.together = together;
  }

  /** As in "pl. XII (text p. 41)". */
  public String places(Row row) {
    String pictured = locators(row.pictured());
    String inWords = locators(row.inWords());
    if (pictured.isEmpty()) {
      return inWords;
    }
    return inWords.isEmpty() ? pictured : pictured + " (" + together.apply("text ") + inWords + ")";
  }

  public String locators(List<Locator> locators) {
    List<String> all = new ArrayList<>();
    for (Locator locator : locators) {
      all.add(together.apply(locator.toString()));
    }
    return String.join("; ", all);
  }

  /** Source, place and words on one line. */
  public String brief(Row row) {
    return together.apply(row.source().reference())
        + ", "
        + places(row)
        + " “"
        + row.words()
        + "”"
        + (row.bracket().isPresent() ? " [" + row.bracket().get() + "]" : "");
  }

  /** What limits it or is computed of it, a line each. */
  public List<String> remarks(Row row) {
    List<String> remarks = new ArrayList<>();
    if (row.date().isPresent()) {
      addDate(row, row.date().get(), remarks);
    }
    if (row.kind() == Claim.Kind.METHOD && row.value().isPresent()) {
      remarks.add("method: " + method(row.value().get()));
    }
    if (row.kind() == Claim.Kind.PLACE && row.value().isPresent()) {
      remarks.add("place: " + row.value().get());
    }
    if (row.reason().isPresent()) {
      remarks.add("(" + row.reason().get() + ")");
    }
    if (row.hedge().isPresent()) {
      remarks.add("hedge: " + row.hedge().get());
    }
    if (row.bracket().isPresent()) {
      remarks.add("limited: " + row.bracket().get());
    }
    if (row.narrower()) {
      remarks.add("narrower: " + row.concept().label());
    }
    if (row.inCaption()) {
      remarks.add("said in a caption only");
    }
    if (!row.alsoOf().isEmpty()) {
      List<String> labels = new ArrayList<>();
      for (ConceptLine other : row.alsoOf()) {
        labels.add(other.label());
      }
      remarks.add("the note is also about: " + String.join(", ", labels));
    }
    if (row.object().isPresent()) {
      remarks.add("my own piece, " + row.object().get());
    }
    return remarks;
  }

  private static String method(String value) {
    return switch (value) {
      case "cut" -> "cut from the solid";
      case "blown" -> "blown out or mould-blown";
      default -> value;
    };
  }

  private void addDate(Row row, DateLine date, List<String> remarks) {
    boolean warning = row.kind() == Claim.Kind.COPY_WARNING;
    if (!date.choices().isEmpty()) {
      remarks.add("which is meant? " + String.join(", or ", date.choices()));
    } else if (!date.isRead()) {
      if (!warning) {
        remarks.add("not read as a date");
      }
      return;
    }
    if (!date.isRead()) {
      return;
    }
    String years = years(date);
    if (!years.isEmpty()) {
      remarks.add(years);
    }
    if (date.wordsAlone().isPresent()) {
      remarks.add("its words alone: computed " + years(date.wordsAlone().get()));
    }
    if (date.dates().isPresent() && row.reason().isEmpty()) {
      remarks.add("dates the " + date.dates().get() + ", not the making");
    }
  }

  /** What is computed of a date; nothing where its years are the printed ones. */
  public String years(DateLine date) {
    YearSpan core = date.core().orElseThrow();
    YearSpan outer = date.outer().orElseThrow();
    StringBuilder text = new StringBuilder();
    if (date.computed() || date.fromValue()) {
      text.append(date.computed() ? "computed " : "").append(years(core));
    }
    if (!core.equals(outer)) {
      text.append(text.isEmpty() ? "" : ", ")
          .append(date.computed() ? "outer " : "computed outer ");
      text.append(years(outer));
    }
    List<String> why = new ArrayList<>();
    if (date.period().isPresent()) {
      why.add("period word");
    }
    if (date.circaYears().isPresent()) {
      why.add(together.apply("circa ±" + date.circaYears().getAsInt()));
    }
    if (date.fromValue()) {
      why.add("from the note’s date");
    }
    return text + (why.isEmpty() || text.isEmpty() ? "" : " (" + String.join(", ", why) + ")");
  }

  public static String years(YearSpan span) {
    if (span.from().isEmpty()) {
      return "up to " + number(span.to()) + (span.openStart() ? "" : ", start unknown");
    } else if (span.to().isEmpty()) {
      return "from " + number(span.from()) + (span.openEnd() ? ", no end" : ", end unknown");
    }
    return span.from().equals(span.to())
        ? number(span.from())
        : number(span.from()) + "–" + number(span.to());
  }

  private static String number(OptionalInt year) {
    return year.isPresent() ? Integer.toString(year.getAsInt()) : "?";
  }
}
