package merese.answer;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.SourceLine;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.ShortReference;
import merese.shelf.Source;

/** How an answer names sources: by author and year, with the title where that is not enough. */
final class SourceLines {
  private final Map<String, Integer> uses = new HashMap<>();

  SourceLines(List<Source> all) {
    for (Source source : all) {
      uses.merge(plain(source), 1, Integer::sum);
    }
  }

  SourceLine of(Source source) {
    return new SourceLine(
        source.key(),
        reference(source),
        source.work().title(),
        source.work().kind(),
        source.year(),
        source.edition().owned(),
        whereabouts(source.edition()));
  }

  String reference(Source source) {
    String plain = plain(source);
    return uses.getOrDefault(plain, 1) == 1 ? plain : plain + ", " + source.work().title();
  }

  private static String plain(Source source) {
    return ShortReference.of(source.work(), source.edition());
  }

  private static Optional<String> whereabouts(Edition edition) {
    if (edition.copies().isEmpty()) {
      return Optional.empty();
    }
    if (edition.copies().stream().anyMatch(c -> c.own() && !c.missing() && c.lentTo().isEmpty())) {
      return Optional.empty();
    }
    Copy copy =
        edition.copies().stream().filter(Copy::own).findFirst().orElse(edition.copies().get(0));
    if (copy.missing()) {
      return Optional.of("missing");
    } else if (copy.lentTo().isPresent()) {
      return Optional.of("lent to " + copy.lentTo().get());
    }
    return copy.holder().map(holder -> "at " + holder);
  }
}
