package merese.answer.concordance;

import java.util.ArrayList;
import java.util.List;
import merese.answer.concordance.Concordance.Agreement;
import merese.answer.concordance.Concordance.Degree;
import merese.answer.concordance.Concordance.Lack;

/** Says what a measure of agreement means, or why there is none. */
public final class AgreementWords {
  private AgreementWords() {}

  /** One paragraph each. */
  public static List<String> of(Agreement agreement) {
    List<String> said = new ArrayList<>();
    if (agreement.lack().isPresent()) {
      said.add("No number can be given: " + lack(agreement.lack().get(), agreement));
      return said;
    }
    double alpha = agreement.alpha().getAsDouble();
    said.add(
        "Krippendorff's alpha (nominal) is "
            + decimal(alpha)
            + ". It rests on "
            + many(agreement.words(), "word")
            + ": those of "
            + many(agreement.works(), "independent work")
            + " for "
            + many(agreement.concepts(), "concept")
            + " that two or more of them name, one word for each work and concept.");
    said.add(
        "1 would mean that all who name a thing use the same word for it; 0, that they do so no"
            + " more often than by chance. "
            + degree(agreement.degree().get()));
    said.add(
        agreement.without().isPresent()
            ? "Leave any one work out, and it lies between "
                + decimal(agreement.without().get().least())
                + " and "
                + decimal(agreement.without().get().greatest())
                + "."
            : "It hangs on a single work, without which there would be no number: it says little.");
    return said;
  }

  private static String many(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  private static String degree(Degree degree) {
    return switch (degree) {
      case RELIABLE -> "From 0.8 up, Krippendorff takes data as reliable: the words are shared.";
      case TENTATIVE ->
          "Between 0.667 and 0.8, Krippendorff allows tentative conclusions and no more.";
      case LOW -> "Below 0.667 it is too low to rely on: say what you mean by a word.";
      case NONE -> "So low a number says that the sources share no words: say what you mean.";
    };
  }

  private static String lack(Lack lack, Agreement agreement) {
    return switch (lack) {
      case NO_WORDS -> "no note names any of these first.";
      case ONE_WORK -> "only one independent work has a word, and agreement takes two.";
      case NO_PAIRS ->
          "no concept is named by two independent works, so that no two words can be compared.";
      case ONE_CONCEPT ->
          "only one concept is named by two works or more, and alpha is then 0 whatever the words"
              + " are. Ask about several concepts.";
      case ONE_WORD ->
          "all "
              + agreement.words()
              + " words are the same. The works agree, but alpha compares them with chance, and"
              + " where there is one word nothing could differ.";
    };
  }

  /** To two places. */
  public static String decimal(double value) {
    long hundredths = Math.round(Math.abs(value) * 100);
    String sign = value < 0 && hundredths > 0 ? "−" : "";
    String rest = String.valueOf(hundredths % 100);
    return sign + hundredths / 100 + "." + (rest.length() < 2 ? "0" : "") + rest;
  }
}
