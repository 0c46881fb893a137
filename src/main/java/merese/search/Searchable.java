package merese.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a document can be found by.
 *
 * @param words in the order of the document
 * @param about ids of the concepts that it is about; for a note see {@link IndexedNote#meanings}
 * @param year of an edition
 * @param kind of a source, as its code
 * @param pictured of a note: whether a place of it is a picture of the kind
 */
public record Searchable(
    List<Words> words,
    Set<String> about,
    OptionalInt year,
    Optional<String> kind,
    Optional<Boolean> pictured) {

  public Searchable {
    words = List.copyOf(words);
    about = Set.copyOf(about);
  }

  /** Words that stand together: no phrase runs from one of these into the next. */
  public record Words(Part part, String text) {}

  /** Gathers them. */
  public static final class Builder {
    private final List<Words> words = new ArrayList<>();
    private final Set<String> about = new LinkedHashSet<>();
    private OptionalInt year = OptionalInt.empty();
    private Optional<String> kind = Optional.empty();
    private Optional<Boolean> pictured = Optional.empty();

    public Builder words(Part part, String text) {
      if (!text.isBlank()) {
        words.add(new Words(part, text));
      }
      return this;
    }

    public Builder words(Part part, Optional<String> text) {
      text.ifPresent(t -> words(part, t));
      return this;
    }

    public Builder words(Part part, Collection<String> texts) {
      texts.forEach(t -> words(part, t));
      return this;
    }

    public Builder about(String concept) {
      about.add(concept);
      return this;
    }

    public Builder year(OptionalInt of) {
      year = of;
      return this;
    }

    public Builder kind(String code) {
      kind = Optional.of(code.toLowerCase(Locale.ROOT));
      return this;
    }

    public Builder pictured(boolean is) {
      pictured = Optional.of(is);
      return this;
    }

    public Searchable build() {
      return new Searchable(words, about, year, kind, pictured);
    }
  }
}
