package merese.change.concepts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.exchange.skos.SkosReading;
import merese.exchange.skos.SkosScheme;
import merese.model.Homonym;
import merese.vocabulary.Folding;

/** What an export of ours says of the register of homonyms, compared with the library's. */
final class RegisterImport {
  private final Resolving resolving;
  private final boolean replace;
  private final List<Homonym> register;
  private final List<String> words = new ArrayList<>();
  private final List<String> stays = new ArrayList<>();

  RegisterImport(Vocabulary vocabulary, Resolving resolving, boolean replace) {
    this.resolving = resolving;
    this.replace = replace;
    this.register = new ArrayList<>(vocabulary.register.value());
  }

  void take(SkosReading reading) {
    for (SkosScheme scheme : reading.schemes()) {
      scheme.register().forEach(this::take);
    }
  }

  private void take(Homonym theirs) {
    Set<String> ids = new LinkedHashSet<>();
    theirs.concepts().forEach(id -> resolving.id(id).ifPresent(ids::add));
    if (ids.isEmpty()) {
      stays.add("the register's “" + theirs.word() + "” means no concept that is here; left out");
      return;
    }
    Homonym wanted = new Homonym(theirs.word(), List.copyOf(ids), theirs.remark());
    for (int i = 0; i < register.size(); i++) {
      Homonym ours = register.get(i);
      if (Folding.key(ours.word()).equals(Folding.key(wanted.word()))) {
        boolean says = ours.concepts().containsAll(ids) && !isOtherRemark(ours, wanted);
        if (!says && replace) {
          register.set(i, wanted);
          words.add("“" + wanted.word() + "” asks as the file has it");
        } else if (!says) {
          stays.add("the register's “" + ours.word() + "” stays; the file has it otherwise");
        }
        return;
      }
    }
    register.add(wanted);
    words.add("“" + wanted.word() + "” asks which is meant: " + String.join(", ", ids));
  }

  private static boolean isOtherRemark(Homonym ours, Homonym wanted) {
    return wanted.remark().isPresent() && !wanted.remark().equals(ours.remark());
  }

  List<Homonym> register() {
    return register;
  }

  List<String> words() {
    return words;
  }

  /** What is not taken, each as a sentence. */
  List<String> stays() {
    return stays;
  }
}
