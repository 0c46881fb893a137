package merese.answer.gaps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.answer.Coverage.CheckLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.gaps.GapList.Looked;
import merese.answer.gaps.GapList.State;
import merese.answer.gaps.GapList.Use;
import merese.model.Locator;
import merese.model.Mine.Coinage;

/**
 * How to say what is not found: what the library has no note of, where it was looked for and how,
 * and where it was not. Never that a thing is unrecorded.
 */
final class Wording {
  private Wording() {}

  /** Whole sentences, to be used one after another. */
  static List<String> of(
      State state,
      List<Use> uses,
      List<Use> own,
      List<Use> notShown,
      List<Use> mayMeanIt,
      Gaps.Silent silent,
      boolean owned) {
    List<String> sentences = new ArrayList<>();
    String none =
        (own.isEmpty() ? "No note " : "My own work apart, no note ")
            + (owned ? "on a source that I own" : "in this library");
    switch (state) {
      case NOTHING -> sentences.add(none + " names or pictures it.");
      case NAMED_ONLY -> sentences.add("Named in " + cited(uses) + ". " + none + " pictures it.");
      case WITHOUT_A_NAME ->
          sentences.add(none + " names it. Without a name in " + cited(uses) + ".");
      case NAMED_AND_PICTURED -> sentences.add("In " + cited(uses) + ".");
    }
    add(
        sentences,
        "Said not to be shown",
        notShown.isEmpty() ? List.of() : List.of(cited(notShown)));
    add(sentences, "May mean it", mayMeanIt.isEmpty() ? List.of() : List.of(cited(mayMeanIt)));
    add(sentences, "Checked", silent.inVain().stream().map(Wording::checked).toList());
    add(sentences, "Found, not yet noted", silent.toNote.stream().map(Wording::found).toList());
    add(
        sentences,
        "Set apart",
        silent.outOfScope.stream().map(s -> s.source().reference() + ", " + s.remark()).toList());
    add(sentences, "Not checked", silent.notChecked.stream().map(SourceLine::reference).toList());
    return sentences;
  }

  private static void add(List<String> sentences, String head, List<String> parts) {
    if (!parts.isEmpty()) {
      sentences.add(head + ": " + String.join("; ", parts) + ".");
    }
  }

  private static String found(Looked looked) {
    return looked.source().reference()
        + looked.checks().stream()
            .flatMap(check -> check.extent().stream())
            .map(extent -> ", " + extent)
            .collect(Collectors.joining());
  }

  /** "Quenby 1926, pp. 38–60 (read)". */
  private static String checked(Looked looked) {
    List<String> parts = new ArrayList<>();
    for (CheckLine check : looked.checks()) {
      boolean plain = check.result().equals("nothing found");
      parts.add(
          (check.extent().isPresent() ? ", " + check.extent().get() : "")
              + " ("
              + check.method()
              + (plain ? "" : "; " + check.result())
              + (check.scope().isPresent() ? "; " + check.scope().get() : "")
              + ")");
    }
    return looked.source().reference() + String.join("", parts);
  }

  private static String cited(List<Use> uses) {
    List<String> parts = new ArrayList<>();
    for (Use use : uses) {
      List<Locator> places = new ArrayList<>(use.pictured());
      places.addAll(use.inWords());
      List<String> words = new ArrayList<>();
      for (Locator place : places) {
        words.add(place.toString());
      }
      String printed =
          use.printed().isEmpty() ? "" : " (“" + String.join("”, “", use.printed()) + "”)";
      parts.add(use.source().reference() + ", " + String.join("; ", words) + printed);
    }
    return String.join("; ", parts);
  }

  /** The user's own labels with their evidence; variants, once a source has a word. */
  static List<String> ofMine(List<Coinage> coinages, Pieces pieces, List<Use> uses) {
    boolean named = uses.stream().anyMatch(use -> !use.printed().isEmpty());
    List<String> wordings = new ArrayList<>();
    for (Coinage coinage : coinages) {
      Optional<String> evidence = coinage.evidence().or(pieces::asEvidence);
      String since =
          named && coinage.on().isPresent()
              ? ", a variant of mine since " + coinage.on().get()
              : "";
      wordings.add(
          "“"
              + coinage.label()
              + "” (my term)"
              + since
              + (evidence.isPresent() ? ", evidence " + evidence.get() : ""));
    }
    return wordings;
  }
}
