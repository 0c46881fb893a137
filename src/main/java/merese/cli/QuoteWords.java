package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Correction;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Group;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;

/** What stands beside a quotation, in whatever form. */
final class QuoteWords {
  private QuoteWords() {}

  static String heading(Section section) {
    return section
        .heading()
        .map(EntryText::label)
        .orElseGet(() -> section.source().map(s -> s.reference() + ", " + s.title()).orElseThrow());
  }

  static String count(Section section) {
    boolean onFeature = section.heading().isPresent();
    String with = Page.given(" with “", section.words(), "”");
    if (section.count() == 0) {
      return "No quotation" + with + (onFeature ? " is noted on it." : " is noted from it.");
    }
    List<String> from = new ArrayList<>();
    if (onFeature && section.sources() > 0) {
      from.add(Page.many(section.sources(), "source"));
    }
    if (onFeature && section.groups().stream().anyMatch(g -> g.group() == Group.OWN_WORK)) {
      from.add("your own work");
    }
    return Page.many(section.count(), "quotation")
        + with
        + (from.isEmpty() ? "" : " from " + String.join(" and ", from))
        + (section.words().isPresent() ? "" : without(section.without()))
        + ".";
  }

  private static String without(int notes) {
    return notes == 0
        ? ""
        : "; " + Page.many(notes, "note") + (notes == 1 ? " is" : " are") + " without one";
  }

  static String group(Group group) {
    return switch (group) {
      case HOW_IT_IS_MADE -> "How it is made";
      case SAYS_NOT_SHOWN -> "Says not shown";
      case MEANING_NOT_STATED -> "Prints the word, meaning not stated";
      case OWN_WORK -> "Your own articles and films, no witnesses";
      default -> "";
    };
  }

  static List<String> remarks(Quotation quotation) {
    List<String> remarks = new ArrayList<>();
    if (!quotation.concepts().isEmpty()) {
      List<String> labels = new ArrayList<>();
      for (ConceptLine concept : quotation.concepts()) {
        labels.add(concept.label());
      }
      remarks.add((quotation.narrower() ? "narrower: " : "on: ") + String.join(", ", labels));
    }
    if (quotation.doubt().isPresent()) {
      remarks.add("(" + quotation.doubt().get() + ")");
    }
    if (!quotation.corrects().isEmpty()) {
      remarks.add("corrects " + Labels.together(String.join("; ", quotation.corrects())));
    } else if (quotation.correction()) {
      remarks.add("a correction; what it corrects is not noted");
    }
    for (Correction correction : quotation.corrected()) {
      remarks.add(correction(correction));
    }
    return remarks;
  }

  /** As in: corrected by Quenby 1949, p. 70, n. 1, of p. 61: “…”. */
  static String correction(Correction correction) {
    return "⚠ corrected by "
        + Wrap.together(correction.by().reference())
        + (correction.mine() ? " (my own)" : "")
        + ", "
        + ClaimRows.locators(correction.at())
        + (correction.corrected().isEmpty() ? ", which names no page" : "")
        + (correction.words().isEmpty()
            ? ""
            : ": “" + String.join("”; “", correction.words()) + "”");
  }
}
