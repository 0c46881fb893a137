package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * Who an entry is filed under. Where nobody is named, a sale catalogue has its house as author, a
 * price list its firm and a catalogue the body that organised it (common practice, no source).
 *
 * @param authors who the entry is by
 * @param editors who put it together
 * @param host who the book is by that a part stands in
 */
record Makers(Optional<String> authors, Optional<String> editors, List<Name> host) {
  static Makers of(Outgoing source) {
    List<Name> writers = names(source.work(), Role.AUTHOR);
    Optional<String> editors = BibtexNames.list(names(source.work(), Role.EDITOR));
    if (source.part().isPresent()) {
      Optional<String> authors = BibtexNames.list(source.part().get().authors());
      return new Makers(authors, editors, writers);
    }
    if (writers.isEmpty() && editors.isEmpty()) {
      writers = bodies(source.work(), source.edition());
    }
    return new Makers(BibtexNames.list(writers), editors, List.of());
  }

  static List<Name> names(Work work, Role role) {
    return work.withRole(role).stream().map(Contributor::name).toList();
  }

  private static List<Name> bodies(Work work, Edition edition) {
    Optional<String> body =
        work.kind() == SourceKind.SALE_CATALOGUE
            ? edition.occasion().flatMap(Edition.Occasion::house)
            : edition.archive().flatMap(Edition.Archive::firm);
    List<Name> bodies = new ArrayList<>();
    body.filter(b -> !b.isBlank()).ifPresent(b -> bodies.add(new Name.Body(b)));
    return bodies.isEmpty() ? names(work, Role.ORGANISER) : bodies;
  }

  /** What a sale was, where, when and by which code. */
  static String sale(Edition edition) {
    List<String> words = new ArrayList<>(List.of("Sale catalogue"));
    edition
        .occasion()
        .ifPresent(
            sale -> {
              sale.house().or(edition.imprint()::publisher).ifPresent(words::add);
              sale.city().ifPresent(words::add);
              sale.dates().ifPresent(words::add);
              sale.code().ifPresent(code -> words.add("sale " + code));
            });
    return String.join(", ", words);
  }

  /** What something stands in and where, in words. */
  static String within(Edition.Container container) {
    List<String> words = new ArrayList<>(List.of(container.title()));
    container.volume().ifPresent(v -> words.add("vol. " + v));
    container.part().ifPresent(p -> words.add("part " + p));
    container.issue().ifPresent(i -> words.add("no. " + i));
    container.pages().ifPresent(e -> words.add(e.printed()));
    return String.join(", ", words);
  }

  boolean hasAuthors() {
    return authors.isPresent();
  }

  boolean hasAny() {
    return authors.isPresent() || editors.isPresent();
  }
}
