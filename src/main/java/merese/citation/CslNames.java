package merese.citation;

import de.undercouch.citeproc.csl.CSLItemDataBuilder;
import de.undercouch.citeproc.csl.CSLName;
import de.undercouch.citeproc.csl.CSLNameBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Name;
import merese.model.ShortReference;
import merese.model.SourceKind;
import merese.model.Work;

/** The names in a CSL item. A photographer has no place in one. */
final class CslNames {
  private final Source source;
  private final Work work;
  private final Edition edition;
  private final boolean particles;
  private final UnaryOperator<String> text;

  /**
   * @param text how a word of the library is handed over
   */
  CslNames(Source source, boolean particles, UnaryOperator<String> text) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.particles = particles;
    this.text = text;
  }

  void addTo(CSLItemDataBuilder item) {
    List<CSLName> makers = new ArrayList<>(names(Role.AUTHOR));
    boolean alone = makers.isEmpty() && names(Role.EDITOR).isEmpty();
    if (alone) {
      makersOfThings().map(this::body).ifPresent(makers::add);
    }
    if (source.part().isPresent()) {
      set(source.part().get().authors().stream().map(this::name).toList(), item::author);
      set(makers, item::containerAuthor);
    } else {
      set(makers, item::author);
    }
    set(names(Role.EDITOR), item::editor);
    set(names(Role.TRANSLATOR), item::translator);
    set(names(Role.ILLUSTRATOR), item::illustrator);
    set(names(Role.INTERVIEWER), item::interviewer);
    set(names(Role.ORGANISER), item::organizer);
  }

  /** Sale catalogues file under the house, price lists under the firm (common practice). */
  private Optional<String> makersOfThings() {
    return work.kind() == SourceKind.SALE_CATALOGUE
        ? edition.occasion().flatMap(Edition.Occasion::house)
        : edition.archive().flatMap(Edition.Archive::firm);
  }

  private List<CSLName> names(Role role) {
    return work.withRole(role).stream().map(c -> name(c.name())).toList();
  }

  private static void set(List<CSLName> names, Consumer<CSLName[]> field) {
    if (!names.isEmpty()) {
      field.accept(names.toArray(CSLName[]::new));
    }
  }

  private CSLName name(Name name) {
    if (name instanceof Name.Person person) {
      CSLNameBuilder builder = new CSLNameBuilder().family(text.apply(person.family()));
      person.given().flatMap(this::some).ifPresent(builder::given);
      if (particles) {
        person.particle().flatMap(this::some).ifPresent(builder::nonDroppingParticle);
      }
      person.suffix().flatMap(this::some).ifPresent(builder::suffix);
      return builder.build();
    }
    return body(name.full());
  }

  private CSLName body(String name) {
    return new CSLNameBuilder().literal(text.apply(name)).build();
  }

  private Optional<String> some(String words) {
    return Optional.of(text.apply(words)).filter(w -> !w.isEmpty());
  }

  /** "Quen49", for the few styles that cite so. */
  String label() {
    String letters =
        ShortReference.names(work, edition)
            .codePoints()
            .filter(Character::isLetter)
            .limit(4)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    int year = edition.imprint().year().orElse(-1);
    return year < 0 ? letters : letters + year / 10 % 10 + year % 10;
  }
}
