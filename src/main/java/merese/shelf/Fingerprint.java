package merese.shelf;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.zip.CRC32;
import merese.exchange.identifier.Identifiers;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;
import merese.model.Name;
import merese.model.Work;

/**
 * What tells a source from others, folded so that spelling does not matter. Small, since a library
 * has one for each of its sources.
 *
 * @param title without its subtitle
 * @param wholeTitle with it
 * @param otherTitles of the same work
 * @param maker the family name, or the body, that is named first; "" where nobody is
 * @param edition the number of the edition; 1 where none is given
 * @param contained whether it is an article or a chapter
 */
public record Fingerprint(
    String title,
    String wholeTitle,
    Set<String> otherTitles,
    String maker,
    OptionalInt year,
    int edition,
    boolean contained,
    Set<String> isbns,
    Set<String> dois) {
  private static final Set<String> ARTICLES = Set.of("the", "a", "an");

  /**
   * @param work with one edition
   */
  public static Fingerprint of(Work work) {
    Edition edition = work.editions().get(0);
    Set<String> others = new HashSet<>();
    work.alternateTitles().forEach(title -> others.add(folded(title)));
    String title = folded(work.title());
    Optional<String> subtitle = work.subtitle();
    return new Fingerprint(
        title,
        subtitle.isEmpty() ? title : folded(work.title() + " " + subtitle.get()),
        Set.copyOf(others),
        maker(work, edition),
        edition.imprint().year(),
        edition.imprint().number().orElse(1),
        edition.container().isPresent(),
        numbers(edition, Scheme.ISBN),
        numbers(edition, Scheme.DOI));
  }

  private static String maker(Work work, Edition edition) {
    List<Contributor> makers = work.makers();
    if (!makers.isEmpty()) {
      Name name = makers.get(0).name();
      return folded(name instanceof Name.Person person ? person.family() : name.full());
    }
    return folded(
        edition
            .occasion()
            .flatMap(Edition.Occasion::house)
            .or(() -> edition.archive().flatMap(Edition.Archive::firm))
            .orElse(""));
  }

  private static Set<String> numbers(Edition edition, Scheme scheme) {
    Set<String> numbers = new LinkedHashSet<>();
    for (Identifier identifier : edition.imprint().identifiers(scheme)) {
      if (!identifier.wrongInPrint()) {
        numbers.add(Identifiers.compared(identifier));
      }
    }
    return numbers.size() < 2 ? Set.copyOf(numbers) : Collections.unmodifiableSet(numbers);
  }

  /** The words in small letters without accents, and without the article that leads them. */
  public static String folded(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    String plain = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT) + " ";
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (Character.isLetterOrDigit(c) || Character.isSurrogate(c)) {
        word.append(c);
      } else if (c == '&') {
        if (!word.isEmpty()) {
          words.add(word.toString());
        }
        word.setLength(0);
        words.add("and");
      } else if (Character.getType(c) != Character.NON_SPACING_MARK && c != '\'' && c != '’') {
        if (!word.isEmpty()) {
          words.add(word.toString());
        }
        word.setLength(0);
      }
    }
    if (words.size() > 1 && ARTICLES.contains(words.get(0))) {
      words.remove(0);
    }
    return String.join(" ", words);
  }

  public boolean hasTitleOf(Fingerprint other) {
    return !title.isEmpty()
        && (title.equals(other.title)
            || wholeTitle.equals(other.wholeTitle)
            || title.equals(other.wholeTitle)
            || wholeTitle.equals(other.title));
  }

  public boolean hasMakerOf(Fingerprint other) {
    return maker.equals(other.maker);
  }

  /**
   * What it may have in common with others: two sources that share a number, or have one title and
   * one maker, share a mark, and two that share one nearly always do. The numbers come first.
   */
  Set<String> marks() {
    Set<String> marks = new LinkedHashSet<>();
    for (String isbn : isbns) {
      marks.add("isbn " + isbn);
    }
    for (String doi : dois) {
      marks.add("doi " + doi);
    }
    Set<String> titles = new LinkedHashSet<>(List.of(title, wholeTitle));
    titles.addAll(otherTitles);
    for (String each : titles) {
      if (!each.isEmpty()) {
        marks.add("title " + sum(each + '\n' + maker));
      }
    }
    return marks;
  }

  /** A title is long, and every source has two or three. */
  private static String sum(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toString(sum.getValue() << Integer.SIZE | text.hashCode() & 0xFFFFFFFFL, 36);
  }

  public boolean hasOtherTitleOf(Fingerprint other) {
    return otherTitles.contains(other.title)
        || otherTitles.contains(other.wholeTitle)
        || other.otherTitles.contains(title)
        || other.otherTitles.contains(wholeTitle);
  }

  public boolean sharesIsbnWith(Fingerprint other) {
    return isbns.stream().anyMatch(other.isbns::contains);
  }

  public boolean sharesDoiWith(Fingerprint other) {
    return dois.stream().anyMatch(other.dois::contains);
  }
}
