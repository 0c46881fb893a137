package merese.desk.look;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.HowToTell;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Showing;
import merese.answer.OnPages;
import merese.model.Locator;

/** Short words between the parts of an answer. */
public final class CoverageWords {
  private static final int LONGEST_UNBROKEN = 22;

  private CoverageWords() {}

  /** Those of a list that are shown. */
  public static <T> List<T> first(List<T> list, Showing showing) {
    return list.subList(0, Math.min(showing.of(list.size()), list.size()));
  }

  /** "3 sources picture it", of editions of fewer works. */
  public static String count(Section section, boolean pictured) {
    if (section.letter().isPresent()) {
      return ofOneWord(section, pictured);
    }
    String verb = pictured ? "picture" : "cover";
    if (section.count() == 0) {
      return "No source " + verb + "s it";
    }
    String works =
        section.works() < section.count()
            ? " (editions of " + many(section.works(), "work") + ")"
            : "";
    return many(section.count(), "source")
        + " "
        + (section.count() == 1 ? verb + "s" : verb)
        + " it"
        + works;
  }

  /** A word of several meanings: others have the same thing without the word. */
  private static String ofOneWord(Section section, boolean pictured) {
    int count = section.count();
    String uses =
        count == 0 ? "No source uses" : many(count, "source") + (count == 1 ? " uses" : " use");
    String works =
        section.works() < count ? " (editions of " + many(section.works(), "work") + ")" : "";
    String said =
        uses
            + " this word for it"
            + (pictured ? " and " + (count > 1 ? "picture" : "pictures") + " it" : "")
            + works;
    int others = 0;
    for (Grouped group : section.groups()) {
      if (group.group() == Group.SAME_FEATURE) {
        others += group.all();
      }
    }
    if (others == 0) {
      return said;
    }
    String verb = pictured ? "picture" : "have";
    String verbOfOne = pictured ? "pictures" : "has";
    return said
        + "; "
        + others
        + (count == 0 ? " " : " more ")
        + (others == 1 ? verbOfOne : verb)
        + " it under another name";
  }

  public static String many(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  public static String places(List<Locator> places) {
    List<String> printed = new ArrayList<>();
    places.forEach(place -> printed.add(place(place)));
    return String.join("; ", printed);
  }

  /**
   * The pages without a number on which a name stands, and how many more there are.
   *
   * @param showing how many of the pages with a number are shown, and of the others
   */
  public static String otherPages(OnPages.Name name, Showing showing) {
    List<String> pages = first(name.unnumbered(), showing);
    int numbered = name.at().size() - first(name.at(), showing).size();
    int more = numbered + name.unnumbered().size() - pages.size();
    return String.join("; ", pages) + (more > 0 ? " and " + many(more, "page") + " more" : "");
  }

  /** As printed; no line ends between "fig." and its number. */
  public static String place(Locator place) {
    String printed = place.printed();
    return printed.length() > LONGEST_UNBROKEN ? printed : printed.replace(' ', '\u00A0');
  }

  /** Which two are told apart, as far as it is not plain from the heading. */
  public static String between(Section section, HowToTell pair) {
    return between(section.heading().id(), pair);
  }

  /**
   * @param heading the id of the concept that stands above
   */
  public static String between(String heading, HowToTell pair) {
    return pair.concept().id().equals(heading)
        ? pair.other().label()
        : pair.concept().label() + " and " + pair.other().label();
  }

  /** A test that stands under the other concept describes this one. */
  public static String test(HowToTell pair) {
    String test = pair.test().orElse("");
    return pair.statedUnder().id().equals(pair.concept().id())
        ? test
        : pair.concept().label() + ": " + test;
  }

  /** How many pieces an opinion rests on, and until when. */
  public static String handled(ExperienceLine line) {
    List<String> from = new ArrayList<>();
    line.pieces().ifPresent(n -> from.add(many(n, "piece") + " handled"));
    line.until().ifPresent(n -> from.add("until " + n));
    return from.isEmpty() ? "" : " (" + String.join(", ", from) + ")";
  }

  /** A reason that is one of the recorded ones in words; others as they were written. */
  public static String reason(String recorded) {
    return switch (recorded) {
      case "ambiguous" -> "the other words are ambiguous";
      case "describes-better" -> "it describes the thing better";
      case "usage" -> "it is in common use";
      case "first-learnt" -> "it was the first one learnt";
      default -> recorded;
    };
  }

  /** The class by which the style tells a group from others. */
  public static String style(Group group) {
    return switch (group) {
      case COUNTED, SAME_FEATURE -> "counted";
      case SAYS_NOT_SHOWN, NOT_THIS -> "against";
      default -> "aside";
    };
  }
}
