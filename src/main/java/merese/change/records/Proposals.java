package merese.change.records;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.change.records.KnownSources.Known;
import merese.model.Edition.Lineage.Form;
import merese.shelf.Fingerprint;

/**
 * Which work a new source may be an edition of: a later edition, a reprint, a facsimile, the same
 * book under another title abroad. Only ever a proposal.
 */
final class Proposals {
  /** Two titles of one book, one British and one American, share most of their words. */
  private static final double MOST_WORDS = 0.6;

  private Proposals() {}

  /**
   * A work that the source may belong to.
   *
   * @param form how the source stands to that which it is beside
   */
  record Proposed(Known beside, Form form, List<String> why) {}

  /**
   * @param said all that the record says, for the words "facsimile" and the titles of others
   */
  static Optional<Proposed> of(Fingerprint print, String said, List<Known> near) {
    Proposed best = null;
    int strongest = 0;
    String folded = " " + Fingerprint.folded(said) + " ";
    for (Known source : near) {
      List<String> why = new ArrayList<>();
      int strength = strength(print, folded, source.fingerprint(), why);
      if (strength > strongest) {
        best = new Proposed(source, form(print, folded, source.fingerprint()), why);
        strongest = strength;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int strength(Fingerprint print, String said, Fingerprint other, List<String> why) {
    if (print.contained() != other.contained() || !print.hasMakerOf(other)) {
      return 0;
    }
    boolean named = !print.maker().isEmpty();
    if (print.hasTitleOf(other) && (named || print.title().indexOf(' ') > 0)) {
      why.add(named ? "same title and author" : "same title");
      return 8;
    }
    if (print.hasOtherTitleOf(other)) {
      why.add("one gives the title of the other as its own other title");
      return 6;
    }
    if (!named) {
      return 0;
    }
    if (other.title().indexOf(' ') > 0 && speaksOf(said, other.title())) {
      why.add("the record speaks of the other title");
      return 4;
    }
    boolean near =
        print.year().isPresent()
            && other.year().isPresent()
            && Math.abs(print.year().getAsInt() - other.year().getAsInt()) <= 1;
    if (near && shared(print.title(), other.title()) >= MOST_WORDS) {
      why.add("same author, years beside each other, and most words of the title");
      return 2;
    }
    return 0;
  }

  /** Whether words stand in others as whole words; these have a space at either end. */
  private static boolean speaksOf(String said, String words) {
    int at = said.indexOf(words);
    while (at >= 0 && (said.charAt(at - 1) != ' ' || said.charAt(at + words.length()) != ' ')) {
      at = said.indexOf(words, at + 1);
    }
    return at >= 0;
  }

  /** Which part of the words of both that both have. */
  private static double shared(String one, String other) {
    Set<String> all = new HashSet<>(List.of(one.split(" ")));
    Set<String> common = new HashSet<>(List.of(other.split(" ")));
    int before = all.size() + common.size();
    common.retainAll(all);
    return 2.0 * common.size() / before;
  }

  private static Form form(Fingerprint print, String said, Fingerprint other) {
    if (said.contains(" facsimile ") || said.contains(" facs ")) {
      return Form.FACSIMILE;
    } else if (said.contains(" reprint ") || said.contains(" reprinted ")) {
      return Form.REPRINT;
    }
    return print.hasTitleOf(other) ? Form.REVISED : Form.TWIN;
  }
}
