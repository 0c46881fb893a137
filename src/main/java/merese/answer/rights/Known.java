package merese.answer.rights;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Note.ObjectLink;
import merese.model.Note.ObjectLink.Sameness;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** What a library says of a picture's layers without speaking of rights. */
final class Known {
  private Known() {}

  /** Whoever published it, and the year as printed. */
  static Optional<String> ofBook(Source source) {
    Edition edition = source.edition();
    Optional<String> who =
        edition
            .imprint()
            .publisher()
            .or(() -> edition.container().map(Edition.Container::title))
            .or(() -> edition.archive().map(Edition.Archive::repository))
            .or(() -> edition.occasion().flatMap(Edition.Occasion::house));
    List<String> words = new ArrayList<>();
    who.ifPresent(words::add);
    edition
        .imprint()
        .yearPrinted()
        .filter(year -> !year.isBlank())
        .or(
            () ->
                source.year().isPresent()
                    ? Optional.of(Integer.toString(source.year().getAsInt()))
                    : Optional.empty())
        .ifPresent(words::add);
    return words.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", words));
  }

  /** Whom the work names as its photographer, or for a drawing its illustrator. */
  static Optional<String> ofPhotograph(Source source, boolean drawn) {
    return maker(source, drawn)
        .map(names -> names + (drawn ? ", the illustrator named" : ", the photographer named"));
  }

  /** The names of those alone. */
  static Optional<String> maker(Source source, boolean drawn) {
    Set<String> names = new LinkedHashSet<>();
    for (Contributor contributor : source.work().contributors()) {
      if (contributor.role() == (drawn ? Role.ILLUSTRATOR : Role.PHOTOGRAPHER)) {
        names.add(contributor.name().full());
      }
    }
    return names.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", names));
  }

  /** The user's own piece, where the note calls it the same with its evidence. */
  static Optional<String> ofOwner(Set<SourcedNote> notes) {
    Set<String> pieces = new LinkedHashSet<>();
    for (SourcedNote note : notes) {
      Optional<ObjectLink> link = note.note().object();
      if (link.isPresent() && link.get().sameness() == Sameness.SAME) {
        pieces.add(
            "my own "
                + link.get().ref()
                + link.get().evidence().map(e -> " (" + e + ")").orElse(""));
      }
    }
    return pieces.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", pieces));
  }
}
