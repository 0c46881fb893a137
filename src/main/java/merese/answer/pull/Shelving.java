package merese.answer.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.pull.Pull.Stand;
import merese.model.Copy;
import merese.shelf.Source;

/**
 * Which copy of a source is to be taken: the user's own on its shelf; else what is online; else,
 * flagged, one of another holder; else none.
 *
 * @param flag why the user's own copy cannot simply be taken; empty where it can
 * @param remark what to know of the user's other copies
 * @param obtainable whether some copy can be had
 */
record Shelving(Stand stand, Optional<String> flag, Optional<String> remark, boolean obtainable) {

  /** Whether the source is at hand without asking anyone. */
  boolean atHand() {
    return flag.isEmpty();
  }

  static Shelving of(Source source) {
    List<Copy> copies = source.edition().copies();
    Optional<Copy> own = first(copies, true);
    List<String> away = new ArrayList<>();
    for (Copy copy : copies) {
      if (copy.own() && !isThere(copy)) {
        away.add(why(copy));
      }
    }
    if (own.isPresent()) {
      return new Shelving(
          stand(own.get()),
          Optional.empty(),
          away.isEmpty()
              ? own.get().remark()
              : Optional.of("another copy is " + String.join(", another ", away)),
          true);
    }
    if (source.edition().online().isPresent()) {
      return new Shelving(
          new Stand(
              Optional.of(source.edition().online().get().url()),
              Optional.empty(),
              Optional.empty(),
              true),
          Optional.empty(),
          away.isEmpty() ? Optional.empty() : Optional.of("your copy is " + away.get(0)),
          true);
    }
    Optional<Copy> elsewhere = first(copies, false);
    if (elsewhere.isPresent()) {
      String at = "at " + elsewhere.get().holder().get();
      return new Shelving(
          stand(elsewhere.get()),
          Optional.of(away.isEmpty() ? at : away.get(0) + "; another copy " + at),
          elsewhere.get().remark(),
          true);
    }
    return none(source, copies, away);
  }

  private static Shelving none(Source source, List<Copy> copies, List<String> away) {
    if (!away.isEmpty()) {
      Copy copy = copies.stream().filter(Copy::own).findFirst().orElseThrow();
      return new Shelving(
          stand(copy), Optional.of(String.join("; another ", away)), copy.remark(), false);
    } else if (!copies.isEmpty()) {
      Copy copy = copies.get(0);
      String why = "at " + copy.holder().get() + ", but " + why(copy);
      return new Shelving(stand(copy), Optional.of(why), copy.remark(), false);
    } else if (source.edition().archive().isPresent()) {
      String at = source.edition().archive().get().repository();
      return new Shelving(
          new Stand(
              source.edition().archive().get().shelfMark(),
              Optional.of(at),
              Optional.empty(),
              false),
          Optional.of("at " + at),
          Optional.empty(),
          true);
    }
    return new Shelving(
        new Stand(Optional.empty(), Optional.empty(), Optional.empty(), false),
        Optional.of("no copy is recorded"),
        Optional.empty(),
        false);
  }

  private static Optional<Copy> first(List<Copy> copies, boolean own) {
    return copies.stream().filter(copy -> copy.own() == own && isThere(copy)).findFirst();
  }

  private static boolean isThere(Copy copy) {
    return !copy.missing() && copy.lentTo().isEmpty();
  }

  private static String why(Copy copy) {
    return copy.missing() ? "missing" : "lent to " + copy.lentTo().orElseThrow();
  }

  private static Stand stand(Copy copy) {
    return new Stand(copy.shelfMark(), copy.holder(), Optional.of(copy.id()), false);
  }
}
