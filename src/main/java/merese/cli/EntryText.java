package merese.cli;

import java.util.List;
import merese.answer.Coverage.CaptionConflict;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SharedPicture;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;
import merese.model.LocatorKind;

/** Lays out what one source has: where, by what name, and what is to be said against it. */
final class EntryText {
  private final Page page;

  /** The label that a concept goes by, marked where it is the user's own. */
  static String label(Heading heading) {
    return heading.label() + (heading.myTerm() ? " (my term)" : "");
  }

  EntryText(Page page) {
    this.page = page;
  }

  /**
   * Prints an entry.
   *
   * @param wide the columns that the names of the group's sources take
   */
  void print(String lead, Entry entry, int wide, Group group) {
    SourceLine source = entry.source();
    Page.Columns columns = page.columns(lead, source.reference(), wide);
    for (Passage passage : entry.passages()) {
      columns.line(places(passage, group), terms(passage, group));
    }
    if (source.whereabouts().isPresent()) {
      columns.line("[" + source.whereabouts().get() + "]");
    }
    for (CaptionConflict conflict : entry.conflicts()) {
      columns.line("⚠ caption “" + conflict.caption() + "” against " + against(conflict));
    }
    for (String reading : entry.readings()) {
      columns.line("my reading: " + reading);
    }
    for (String claim : entry.claims()) {
      columns.line("place: “" + claim + "”");
    }
    for (SharedPicture picture : entry.sameAs()) {
      columns.line(
          locator(picture.here())
              + ": the same picture as "
              + Wrap.together(picture.otherReference())
              + ", "
              + locator(picture.there()));
    }
  }

  /** What a source has of one concept, on one line. */
  static String passage(Passage passage) {
    return (places(passage, Group.COUNTED) + " " + terms(passage, Group.COUNTED)).strip();
  }

  private static String against(CaptionConflict conflict) {
    return conflict.text().isPresent()
        ? "text " + conflict.text().get() + " “" + conflict.words().get() + "”"
        : "your reading";
  }

  private static String terms(Passage passage, Group group) {
    String printed = printed(passage.printed());
    String label = passage.concept().isPresent() ? passage.concept().get().label() : "";
    return switch (group) {
      case NOT_THIS -> "⚠ uses " + printed + " for " + label;
      case LOOK_ALIKES, GENERAL_ONLY -> printed + " (" + label + ")";
      case MEANING_NOT_STATED -> printed;
      default -> passage.narrower() ? printed + " (narrower: " + label + ")" : printed;
    };
  }

  private static String places(Passage passage, Group group) {
    String pictured = locators(passage.pictured());
    String inWords = locators(passage.inWords());
    if (pictured.isEmpty()) {
      return group == Group.COUNTED || group == Group.SAME_FEATURE
          ? inWords + " " + Wrap.together("(text only)")
          : inWords;
    }
    return inWords.isEmpty() ? pictured : pictured + " (" + Wrap.together("text ") + inWords + ")";
  }

  private static String locators(List<Locator> locators) {
    StringBuilder text = new StringBuilder();
    for (Locator locator : locators) {
      text.append(text.isEmpty() ? "" : "; ").append(locator(locator));
    }
    return text.toString();
  }

  /** As printed; where something is excepted, what is left and how many that are. */
  private static String locator(Locator locator) {
    Locator left = locator.withExceptionsApplied();
    String text = Wrap.together(left.toString());
    return left.equals(locator)
        ? text
        : text + " " + Wrap.together("(" + locator.count() + " " + kinds(left.labelKind()) + ")");
  }

  private static String kinds(LocatorKind kind) {
    return switch (kind) {
      case PLATE -> "plates";
      case COLOUR_PLATE -> "colour plates";
      case FIGURE -> "figures";
      case PAGE -> "pages";
      case FOLIO -> "folios";
      case CATALOGUE_NUMBER -> "catalogue numbers";
      default -> kind.plural();
    };
  }

  private static String printed(List<String> terms) {
    return terms.isEmpty() ? "not named" : "“" + String.join("”, “", terms) + "”";
  }
}
