package merese.change.records;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Name;
import merese.model.Work;

/** Keys for sources and ids for works that nothing in the library has yet. */
public final class NewNames {
  private static final int LONGEST = 60;

  private NewNames() {}

  /** The file's own name for a source where it can be typed and is free, else one like it. */
  public static String key(Optional<String> given, Work work, Predicate<String> taken) {
    String wanted = given.map(NewNames::typeable).filter(k -> !k.isEmpty()).orElse(byMaker(work));
    String key = wanted;
    for (int n = 1; taken.test(key); n++) {
      key = wanted + (n <= 25 ? "-" + (char) ('a' + n) : "-" + (n + 1));
    }
    return key;
  }

  /** The maker's name and the first words of the title: "quenby-neck-and-stopper". */
  public static String work(Work work, Predicate<String> taken) {
    String wanted = slug(maker(work) + " " + work.title());
    String id = wanted;
    for (int n = 2; taken.test(id); n++) {
      id = wanted + "-" + n;
    }
    return id;
  }

  /** The same without what would have to be quoted, or would name a part of a source. */
  private static String typeable(String given) {
    StringBuilder key = new StringBuilder();
    given
        .strip()
        .codePoints()
        .limit(200)
        .forEach(
            c -> {
              boolean plain = Character.isLetterOrDigit(c) || "._+:/-".indexOf(c) >= 0;
              if (plain) {
                key.appendCodePoint(c);
              } else if (!key.isEmpty() && key.charAt(key.length() - 1) != '-') {
                key.append('-');
              }
            });
    while (!key.isEmpty() && (key.charAt(0) == '-' || key.charAt(key.length() - 1) == '-')) {
      key.deleteCharAt(key.charAt(0) == '-' ? 0 : key.length() - 1);
    }
    return key.toString();
  }

  private static String byMaker(Work work) {
    Edition edition = work.editions().get(0);
    String maker = maker(work);
    String year =
        edition.imprint().year().isPresent()
            ? " " + edition.imprint().year().getAsInt()
            : maker.isEmpty() ? "" : " n d";
    return slug((maker.isEmpty() ? work.title() : maker) + year);
  }

  private static String maker(Work work) {
    if (work.makers().isEmpty()) {
      return work.editions().get(0).occasion().flatMap(Edition.Occasion::house).orElse("");
    }
    Contributor first = work.makers().get(0);
    return first.name() instanceof Name.Person person ? person.family() : first.name().full();
  }

  /** Letters and digits of ASCII with hyphens between the words; whole words of the first. */
  static String slug(String text) {
    StringBuilder slug = new StringBuilder();
    String plain = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c < 128 && Character.isLetterOrDigit(c)) {
        slug.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK
          && c != '\''
          && c != '’'
          && !slug.isEmpty()
          && slug.charAt(slug.length() - 1) != '-') {
        slug.append('-');
      }
    }
    if (slug.length() > LONGEST) {
      int cut = slug.lastIndexOf("-", LONGEST);
      slug.setLength(cut > LONGEST / 2 ? cut : LONGEST);
    }
    while (!slug.isEmpty() && slug.charAt(slug.length() - 1) == '-') {
      slug.setLength(slug.length() - 1);
    }
    return slug.isEmpty() ? "source" : slug.toString();
  }
}
