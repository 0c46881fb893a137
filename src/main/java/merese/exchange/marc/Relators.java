package merese.exchange.marc;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import merese.model.Contributor.Role;

/**
 * What someone did, by the MARC code list of relators and the terms that stand in subfield e: those
 * of the list, of RDA, the abbreviations of AACR2 (rule 21.0D) and the usual words of French and
 * German cataloguing (from memory). Others are not understood.
 */
final class Relators {
  private static final Map<String, Role> BY_CODE =
      Map.ofEntries(
          Map.entry("aut", Role.AUTHOR),
          Map.entry("cre", Role.AUTHOR),
          Map.entry("dis", Role.AUTHOR),
          Map.entry("edt", Role.EDITOR),
          Map.entry("edc", Role.EDITOR),
          Map.entry("trl", Role.TRANSLATOR),
          Map.entry("ill", Role.ILLUSTRATOR),
          Map.entry("pht", Role.PHOTOGRAPHER),
          Map.entry("orm", Role.ORGANISER),
          Map.entry("ivr", Role.INTERVIEWER));

  private static final Map<String, Role> BY_TERM =
      Map.ofEntries(
          Map.entry("author", Role.AUTHOR),
          Map.entry("joint author", Role.AUTHOR),
          Map.entry("jt. author", Role.AUTHOR),
          Map.entry("creator", Role.AUTHOR),
          Map.entry("dissertant", Role.AUTHOR),
          Map.entry("auteur", Role.AUTHOR),
          Map.entry("verfasser", Role.AUTHOR),
          Map.entry("verfasserin", Role.AUTHOR),
          Map.entry("autor", Role.AUTHOR),
          Map.entry("autore", Role.AUTHOR),
          Map.entry("editor", Role.EDITOR),
          Map.entry("joint editor", Role.EDITOR),
          Map.entry("ed", Role.EDITOR),
          Map.entry("jt. ed", Role.EDITOR),
          Map.entry("editor of compilation", Role.EDITOR),
          Map.entry("hrsg", Role.EDITOR),
          Map.entry("herausgeber", Role.EDITOR),
          Map.entry("herausgeberin", Role.EDITOR),
          Map.entry("éditeur scientifique", Role.EDITOR),
          Map.entry("directeur de la publication", Role.EDITOR),
          Map.entry("translator", Role.TRANSLATOR),
          Map.entry("tr", Role.TRANSLATOR),
          Map.entry("übersetzer", Role.TRANSLATOR),
          Map.entry("übersetzerin", Role.TRANSLATOR),
          Map.entry("traducteur", Role.TRANSLATOR),
          Map.entry("illustrator", Role.ILLUSTRATOR),
          Map.entry("ill", Role.ILLUSTRATOR),
          Map.entry("illus", Role.ILLUSTRATOR),
          Map.entry("illustratorin", Role.ILLUSTRATOR),
          Map.entry("illustrateur", Role.ILLUSTRATOR),
          Map.entry("photographer", Role.PHOTOGRAPHER),
          Map.entry("fotograf", Role.PHOTOGRAPHER),
          Map.entry("fotografin", Role.PHOTOGRAPHER),
          Map.entry("photographe", Role.PHOTOGRAPHER),
          Map.entry("organizer", Role.ORGANISER),
          Map.entry("organiser", Role.ORGANISER),
          Map.entry("interviewer", Role.INTERVIEWER));

  private static final Map<Role, String> CODES = new EnumMap<>(Role.class);
  private static final Map<Role, String> TERMS = new EnumMap<>(Role.class);

  static {
    CODES.put(Role.AUTHOR, "aut");
    CODES.put(Role.EDITOR, "edt");
    CODES.put(Role.TRANSLATOR, "trl");
    CODES.put(Role.ILLUSTRATOR, "ill");
    CODES.put(Role.PHOTOGRAPHER, "pht");
    CODES.put(Role.ORGANISER, "orm");
    CODES.put(Role.INTERVIEWER, "ivr");
    TERMS.put(Role.AUTHOR, "author");
    TERMS.put(Role.EDITOR, "editor");
    TERMS.put(Role.TRANSLATOR, "translator");
    TERMS.put(Role.ILLUSTRATOR, "illustrator");
    TERMS.put(Role.PHOTOGRAPHER, "photographer");
    TERMS.put(Role.ORGANISER, "organizer");
    TERMS.put(Role.INTERVIEWER, "interviewer");
  }

  private Relators() {}

  static boolean areGiven(MarcField field) {
    return field.has('4') || field.has(field.is("111", "711") ? 'j' : 'e');
  }

  /** The roles that are understood, each once. */
  static List<Role> of(MarcField field) {
    List<Role> roles = new ArrayList<>();
    for (String term : field.all(field.is("111", "711") ? 'j' : 'e')) {
      add(byTerm(term), roles);
    }
    for (String code : field.all('4')) {
      String bare = code.substring(code.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
      add(Optional.ofNullable(BY_CODE.get(bare)), roles);
    }
    return roles;
  }

  private static Optional<Role> byTerm(String term) {
    String bare = term.toLowerCase(Locale.ROOT);
    while (bare.endsWith(",") || bare.endsWith(".") || bare.endsWith(";")) {
      bare = bare.substring(0, bare.length() - 1).strip();
    }
    return Optional.ofNullable(BY_TERM.get(bare));
  }

  private static void add(Optional<Role> role, List<Role> to) {
    role.filter(r -> !to.contains(r)).ifPresent(to::add);
  }

  static String code(Role role) {
    return CODES.get(role);
  }

  static String term(Role role) {
    return TERMS.get(role);
  }
}
