package merese.exchange.marc;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import merese.model.Contributor.Role;
import merese.model.Name;

/**
 * What the statement of responsibility (245 $c) says that somebody did, for headings that don't say
 * it themselves: "Mabel Quenby ; edited by Ivor Tressick". ISBD parts those who did different
 * things with " ; ". Where the words are others than these, nothing is said.
 */
final class Responsibility {
  private static final Map<Role, Pattern> LEADS = new LinkedHashMap<>();
  private static final Pattern BY = Pattern.compile("(?i)^(?:by|von|par|di|door|por|af|av)\\s+");
  private static final Pattern NAMES_ONLY =
      Pattern.compile(
          "(?:[\\p{Lu}\\[][\\p{L}\\p{M}.'’\\-\\]]*|and|und|et|e|y|en|og|och|&|,|de|la|du|des|di|da"
              + "|van|von|der|den|of|the|\\s)+\\.?");

  static {
    lead(
        Role.EDITOR,
        "(?:general |joint |volume )?(?:edited|editors?|eds?\\.|hrsg\\.|hg\\.|herausgegeben"
            + "|herausgeber|sous la direction|a cura di|onder redactie|redigert)");
    lead(
        Role.TRANSLATOR,
        "(?:english )?(?:translated|translation|transl\\.|trans\\.|tr\\.|übers|traduit|traduction"
            + "|trad\\.|traduzione|vertaald)|aus dem .* (?:von|übers)");
    lead(
        Role.ILLUSTRATOR,
        "(?:with )?(?:line )?(?:illustrated|illustrations?|ill\\.|illus\\.|drawings|illustriert"
            + "|zeichnungen|dessins)");
    lead(
        Role.PHOTOGRAPHER,
        "(?:with )?(?:photograph|photos|fotograf|fotos|aufnahmen|photographies)");
  }

  private Responsibility() {}

  private static void lead(Role role, String words) {
    LEADS.put(
        role,
        Pattern.compile("^\\[?(?:" + words + ")", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
  }

  static Optional<Role> of(String statement, Name name) {
    String[] parts = statement.split("\\s;\\s", -1);
    for (int i = 0; i < parts.length; i++) {
      String part = parts[i].strip();
      if (names(part, name)) {
        for (Map.Entry<Role, Pattern> lead : LEADS.entrySet()) {
          if (lead.getValue().matcher(part).find()) {
            return Optional.of(lead.getKey());
          }
        }
        boolean author = i == 0 && NAMES_ONLY.matcher(BY.matcher(part).replaceFirst("")).matches();
        return author ? Optional.of(Role.AUTHOR) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static boolean names(String part, Name name) {
    if (name instanceof Name.Person person) {
      String given = person.given().orElse("");
      boolean initial = given.isEmpty() || part.indexOf(given.charAt(0)) >= 0;
      return initial && hasWord(part, person.family());
    }
    return hasWord(part, name.full());
  }

  private static boolean hasWord(String part, String word) {
    int at = part.indexOf(word);
    int end = at + word.length();
    return at >= 0
        && (at == 0 || !Character.isLetter(part.charAt(at - 1)))
        && (end == part.length() || !Character.isLetter(part.charAt(end)));
  }
}
