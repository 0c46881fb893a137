package merese.answer.pull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import merese.answer.Coverage.ConceptLine;
import merese.answer.pull.Pull.Instead;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.model.Locator;

/** The words that a list of what to take has on a screen, on paper and at the desk alike. */
public final class PullWords {
  private PullWords() {}

  public static String heading(Pull answer, boolean byShelf) {
    return byShelf
        ? "As they stand on the shelf"
        : answer.fromScript() ? "In the order of the script" : "In the order of need";
  }

  public static String nothing(Pull answer) {
    return answer.fromScript()
        ? "The script names no source, object or term, or no source covers them."
        : "No source in this library covers it, and no piece shows it.";
  }

  /** Where it stands, without its holder: "A1", "cabinet 2, shelf 1". */
  public static String mark(Item item) {
    return item.stand()
        .mark()
        .orElse(item.piece().isPresent() ? "place not recorded" : "no shelf-mark");
  }

  /** Which copy it is, with what to know of it; empty for a piece and for what is online. */
  public static Optional<String> copy(Item item) {
    String remark = item.remark().orElse("");
    if (item.stand().copy().isEmpty()) {
      return item.remark();
    }
    String copy = "copy " + item.stand().copy().get();
    return Optional.of(remark.isEmpty() ? copy : copy + ": " + remark);
  }

  /** Where it stands: "A1", "at Osmere Museum Library, G 748 N", "online, https://…". */
  public static String stand(Item item) {
    String before =
        item.stand().online()
            ? "online, "
            : item.stand().holder().map(holder -> "at " + holder + ", ").orElse("");
    return before + mark(item);
  }

  /** What the things standing together stand under: one's own shelves, the web, or a holder. */
  public static String place(Item item) {
    return item.stand().online()
        ? "Online"
        : item.stand().holder().map(holder -> "At " + holder).orElse("Your own shelves");
  }

  public static String name(Item item) {
    return item.piece().isPresent()
        ? "my piece " + item.name() + ", " + item.title()
        : item.name() + ", " + item.title();
  }

  /** "3", or "3, 7" where a place is needed again. */
  public static String numbers(List<Integer> needs) {
    List<String> words = new ArrayList<>();
    for (Integer need : new TreeSet<>(needs)) {
      words.add(need.toString());
    }
    return String.join(", ", words);
  }

  /** "no. 3", "nos 3, 7". */
  public static String numbered(List<Integer> needs) {
    return (needs.size() == 1 ? "no. " : "nos ") + numbers(needs);
  }

  /** "slip at p. 40", or for a film "start at 03:15". */
  public static Optional<String> slip(Opening opening) {
    if (opening.slips().isEmpty()) {
      return Optional.empty();
    }
    String places = String.join("; ", opening.slips());
    boolean film = Character.isDigit(places.charAt(0));
    return Optional.of((film ? "start at " : "slip at ") + places);
  }

  /**
   * A slip for a book, or what to show of a piece.
   *
   * @param numbered which of the list of need it is for: "no. 3"
   */
  public record Slip(String what, String numbered) {}

  /** The slips for a book, or what to show of a piece, each once. */
  public static List<Slip> slips(Item item) {
    Map<String, List<Integer>> slips = new LinkedHashMap<>();
    for (Opening opening : item.openings()) {
      String what =
          slip(opening)
              .or(opening::pointAt)
              .orElse(item.piece().isPresent() ? "the piece" : "the book as a whole");
      slips.computeIfAbsent(what, w -> new ArrayList<>()).addAll(opening.needs());
    }
    List<Slip> all = new ArrayList<>();
    slips.forEach((what, needs) -> all.add(new Slip(what, numbered(needs))));
    return all;
  }

  /** The place and what is to be seen there. */
  public static String place(Opening opening) {
    StringBuilder words = new StringBuilder();
    if (opening.locator().isPresent()) {
      words.append(opening.locator().get().withExceptionsApplied());
      if (!opening.pictured() && !opening.concepts().isEmpty()) {
        words.append(" (text only)");
      }
    }
    String seen = seen(opening);
    return words.append(words.isEmpty() || seen.isEmpty() ? "" : ": ").append(seen).toString();
  }

  private static String seen(Opening opening) {
    List<String> labels = new ArrayList<>();
    for (ConceptLine line : opening.concepts()) {
      labels.add(line.label());
    }
    String concepts = String.join(", ", labels);
    if (opening.printed().isEmpty()) {
      return concepts;
    }
    String printed = "“" + String.join("”, “", opening.printed()) + "”";
    return concepts.isEmpty() ? printed : concepts + ", printed " + printed;
  }

  /** What else to know of an opening, a line each. */
  public static List<String> details(Opening opening) {
    List<String> lines = new ArrayList<>();
    opening.pointAt().ifPresent(what -> lines.add("point at: " + what));
    if (opening.others().isPresent()) {
      Pull.Others others = opening.others().get();
      lines.add(
          "beside "
              + (others.count() + (others.count() == 1 ? " other piece" : " other pieces"))
              + " there"
              + (others.called().isEmpty()
                  ? ""
                  : ": “" + String.join("”, “", others.called()) + "”"));
    }
    opening.turn().ifPresent(how -> lines.add("turn: " + how));
    if (!opening.texts().isEmpty()) {
      List<String> texts = new ArrayList<>();
      for (Locator text : opening.texts()) {
        texts.add(text.toString());
      }
      lines.add("text: " + String.join("; ", texts));
    }
    opening.insteadOf().ifPresent(other -> lines.add("taken instead of " + other));
    return lines;
  }

  public static String say(Opening opening) {
    return "say: “" + opening.spoken() + "”";
  }

  /** What to take instead; only of an opening of what is not at hand. */
  public static String instead(Opening opening) {
    if (opening.instead().isEmpty()) {
      return opening.concepts().isEmpty()
          ? "instead: no note says what is there"
          : "instead: nothing at hand covers it";
    }
    Instead other = opening.instead().get();
    return "instead: "
        + other.source().reference()
        + other.locator().map(place -> ", " + place).orElse("")
        + (other.samePicture() ? " (the same picture)" : "")
        + ", "
        + numbered(other.needs());
  }
}
