package merese.desk.web;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Says in the words of the desk what to do, where a message says it for the terminal. Changes and
 * answers are made for both, and name the commands that help.
 */
public final class Remedies {
  private Remedies() {}

  private record Remedy(Pattern terminal, String desk) {}

  private static Remedy remedy(String terminal, String desk) {
    return new Remedy(Pattern.compile(terminal), desk);
  }

  /** The longer ones first, since they hold the shorter. */
  private static final List<Remedy> ALL =
      List.of(
          remedy(
              "merese object add (\\S+ --title \"…\" )?(records it|makes one)",
              "“Add a piece” under My pieces $2"),
          remedy(
              "merese object describe (\\S+) says more of it",
              "“What it is” on the page of $1 says more of it"),
          remedy("merese object photograph records one", "“A photograph” on its page keeps one"),
          remedy("choose another --id", "call it something else"),
          remedy("\\(--instead replaces it\\)", "(“instead of what is recorded” replaces it)"),
          remedy("begin --value with one of", "begin what it is like with one of"),
          remedy("identify does not read this", "the key does not read this"),
          remedy(
              "name one with --facet, or a broader concept with --broader",
              "choose one, or a broader concept"),
          remedy("already; name it with --facet", "already; choose it"),
          remedy("and --new-facet makes another", "and “or a new facet” makes another"),
          remedy("merese concept add makes a new one", "“Add a concept” makes a new one"),
          remedy(
              "merese concept look-alike \\S+ \\S+ --none takes the look-alike away",
              "“A look-alike, and its test” takes the look-alike away"),
          remedy(
              "merese concept describe \\S+ --alternative \".*?\", or merese coin \".*?\" --for"
                  + " \\S+",
              "an alternative label under “Labels and definition”, or “Coin a word of your own”"),
          remedy("merese concept describe gives", "“Labels and definition” gives"),
          remedy("with --from, or --also to stay below all", "or that it stays below all"),
          remedy("with --scope, or choose", "under “Limited to”, or choose"),
          remedy(
              "merese concept rename gives it another",
              "“Another preferred label, or another id” gives it another"),
          remedy("merese check --fix", "“Put right what is safe”"),
          remedy("(run|see) merese check", "see “Check the library”"),
          remedy(
              "merese merge (\\S+) (\\S+) --one-edition", "merge $1 and $2, on the page of either"),
          remedy(
              "remove the other: merese remove (\\S+) --copy (\\S+)",
              "remove the copy $2 on the page of $1"),
          remedy("as with merese remove (\\S+) (\\S+)", "the note $2, on the page of $1"),
          remedy(", and --again writes it once more", ""),
          remedy(
              "'merese reading-list --style list' shows all",
              "the box “another CSL style” offers all"),
          remedy("; say --pictured or --drawing", "; say above that it is"),
          remedy("--as-printed keeps it", "“as printed” keeps it"),
          remedy(
              "; a source is named by the key of its edition, as in works/",
              "; the shelf has the key of each"),
          remedy(
              "; an object is named by its file in objects/",
              "; My pieces has the reference of each"),
          remedy("^--key: ", "Key: "));

  /** A message in the words of the desk. */
  public static String words(String message) {
    String words = message;
    for (Remedy each : ALL) {
      words = each.terminal().matcher(words).replaceAll(each.desk());
    }
    return words;
  }
}
