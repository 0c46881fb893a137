package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.HowToTell;
import merese.answer.identify.Identification;
import merese.answer.identify.Identification.Against;
import merese.answer.identify.Identification.NotLookedAt;
import merese.answer.identify.Identification.RuledOut;
import merese.answer.identify.Identification.Side;
import merese.answer.identify.Identification.ValueLine;

/** Lays out what rules kinds out, which tests remain and what was not looked at. */
final class StillToLookText {
  private static final String INDENT = "    ";

  /** Characters that are told whole; the others are named. */
  private static final int WHOLE = 5;

  /** Where no more kinds than this are left, it is said which is which. */
  private static final int FEW = 8;

  private final Page page;

  StillToLookText(Page page) {
    this.page = page;
  }

  void print(Identification answer) {
    tests(answer.tests());
    notLookedAt(answer);
    ruledOut(answer.ruledOut());
  }

  private void tests(List<HowToTell> tests) {
    if (tests.isEmpty()) {
      return;
    }
    page.heading("Tests that remain");
    for (HowToTell test : tests) {
      page.hanging(
          INDENT,
          test.concept().label()
              + " or "
              + test.other().label()
              + ": "
              + (test.test().isPresent()
                  ? test.test().get() + " (under “" + test.statedUnder().label() + "”)"
                  : "the vocabulary has no test"));
    }
    page.blank();
  }

  private void notLookedAt(Identification answer) {
    List<NotLookedAt> telling = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (NotLookedAt each : answer.notLookedAt()) {
      if (each.tellsApart() > 0) {
        telling.add(each);
      } else {
        others.add(each.id());
      }
    }
    if (!telling.isEmpty()) {
      page.heading("Not looked at; what tells most kinds apart first");
      boolean few =
          answer.fits().size() + answer.open().size() <= FEW && !answer.asksWhatToLookAt();
      for (NotLookedAt each : telling.subList(0, Math.min(WHOLE, telling.size()))) {
        whole(each, few);
      }
      if (telling.size() > WHOLE) {
        List<String> rest = new ArrayList<>();
        for (NotLookedAt each : telling.subList(WHOLE, telling.size())) {
          rest.add(
              Wrap.together(
                  each.id() + " (" + each.tellsApart() + (rest.isEmpty() ? " kinds)" : ")")));
        }
        page.hanging(INDENT, "then " + String.join(", ", rest));
      }
      page.hanging(INDENT, "What to type for each: merese identify --list");
      page.blank();
    }
    if (!others.isEmpty() && !answer.leavesNoKind()) {
      page.text(
          "Not looked at, and telling none of these kinds apart: "
              + String.join(", ", others)
              + ".");
      page.blank();
    }
  }

  private void whole(NotLookedAt character, boolean few) {
    page.hanging(
        INDENT,
        character.id()
            + ": "
            + character.question()
            + " ("
            + character.senses()
            + "; tells "
            + character.tellsApart()
            + " kinds apart)");
    String deeper = INDENT + "  ";
    page.hanging(deeper, character.look());
    if (few) {
      for (Side side : character.sides()) {
        page.hanging(
            deeper, allowed(side.allows()) + ": " + IdentificationText.names(side.kinds()));
      }
    } else {
      page.hanging(deeper, values(character));
    }
  }

  private static String values(NotLookedAt character) {
    if (character.values().isEmpty()) {
      return Wrap.together(character.id() + "=NUMBER");
    }
    List<String> values = new ArrayList<>();
    for (ValueLine value : character.values()) {
      values.add(Wrap.together(character.id() + "=" + value.id()));
    }
    return String.join(", ", values);
  }

  private static String allowed(List<String> allows) {
    return allows.isEmpty() ? "never found" : String.join(" or ", allows);
  }

  private void ruledOut(List<RuledOut> kinds) {
    if (kinds.isEmpty()) {
      return;
    }
    page.heading("Ruled out by what was found (" + kinds.size() + ")");
    Map<String, List<ConceptLine>> byReason = new LinkedHashMap<>();
    for (RuledOut kind : kinds) {
      List<String> against = new ArrayList<>();
      for (Against each : kind.against()) {
        against.add(
            each.character()
                + ": "
                + String.join(", ", each.observed())
                + " (the key: "
                + (each.allows().isEmpty() ? "none" : String.join(" or ", each.allows()))
                + ")");
      }
      byReason
          .computeIfAbsent(String.join("; ", against), r -> new ArrayList<>())
          .add(kind.concept());
    }
    byReason.forEach(
        (reason, of) -> page.hanging(INDENT, reason + ": " + IdentificationText.names(of)));
    page.blank();
  }
}
