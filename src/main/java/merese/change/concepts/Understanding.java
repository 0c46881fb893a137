package merese.change.concepts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.exchange.skos.OwnLabels;
import merese.exchange.skos.SkosAddresses;
import merese.exchange.skos.SkosConcept;
import merese.exchange.skos.SkosText;
import merese.model.Concept;
import merese.model.ReceivedRecord.Field;
import merese.vocabulary.Skos;

/**
 * Chooses what of a concept is in the library's language. A text in just that tag comes first, then
 * one in the language without a region, one without a tag, and one of another region.
 */
final class Understanding {
  private static final int NEVER = Integer.MAX_VALUE;

  private final String language;
  private final SkosAddresses addresses;

  Understanding(String language, SkosAddresses addresses) {
    this.language = language.toLowerCase(Locale.ROOT);
    this.addresses = addresses;
  }

  /** Empty for a concept without a preferred label in the language. */
  Optional<Understood> of(SkosConcept concept) {
    List<SkosText> preferred = inLanguage(concept.preferred());
    if (preferred.isEmpty()) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>();
    List<Field> kept = new ArrayList<>(concept.rest());
    Set<String> taken = new LinkedHashSet<>();
    taken.add(preferred.get(0).text());
    List<Concept.Label> alternatives = new ArrayList<>();
    for (SkosText other : preferred.subList(1, preferred.size())) {
      if (taken.add(other.text())) {
        alternatives.add(OwnLabels.read(other.text(), concept));
        remarks.add(
            "the preferred label “"
                + other.text()
                + "” ("
                + other.language().orElse("no language")
                + ") is taken as an alternative one");
      }
    }
    for (SkosText label : inLanguage(concept.alternative())) {
      if (taken.add(label.text())) {
        alternatives.add(OwnLabels.read(label.text(), concept));
      }
    }
    List<Concept.Label> hidden = new ArrayList<>();
    for (SkosText label : inLanguage(concept.hidden())) {
      if (taken.add(label.text())) {
        hidden.add(OwnLabels.read(label.text(), concept));
      }
    }
    foreign(concept.preferred(), Skos.PREF_LABEL, kept);
    foreign(concept.alternative(), Skos.ALT_LABEL, kept);
    foreign(concept.hidden(), Skos.HIDDEN_LABEL, kept);
    Optional<String> ownId = addresses.conceptId(concept.uri());
    return Optional.of(
        new Understood(
            concept,
            ownId,
            OwnLabels.read(preferred.get(0).text(), concept),
            alternatives,
            hidden,
            definition(concept, kept),
            rest(concept, ownId, kept),
            remarks));
  }

  private Optional<String> definition(SkosConcept concept, List<Field> kept) {
    List<SkosText> ours = inLanguage(concept.definitions());
    for (SkosText other : concept.definitions()) {
      if (ours.isEmpty() || !other.equals(ours.get(0))) {
        kept.add(new Field(Skos.DEFINITION, other.printed()));
      }
    }
    return ours.isEmpty() ? Optional.empty() : Optional.of(ours.get(0).text());
  }

  /** Of another's concept, its codes and what it is related to are kept too. */
  private static List<Field> rest(SkosConcept concept, Optional<String> ownId, List<Field> kept) {
    if (ownId.isEmpty()) {
      String notation = Skos.NAMESPACE + "notation";
      for (String code : concept.notations()) {
        String plain = new SkosText(code, Optional.empty()).printed();
        boolean there =
            kept.stream().anyMatch(f -> f.name().equals(notation) && f.value().startsWith(plain));
        if (!there) {
          kept.add(new Field(notation, plain));
        }
      }
      for (String other : concept.related()) {
        if (!other.startsWith("_:")) {
          kept.add(new Field(Skos.RELATED, "<" + other + ">"));
        }
      }
    }
    return kept;
  }

  private void foreign(List<SkosText> texts, String property, List<Field> kept) {
    for (SkosText text : texts) {
      if (rank(text) == NEVER) {
        kept.add(new Field(property, text.printed()));
      }
    }
  }

  private List<SkosText> inLanguage(List<SkosText> texts) {
    return texts.stream()
        .filter(text -> rank(text) != NEVER)
        .sorted(Comparator.comparingInt(this::rank)) // the file's order where equal
        .toList();
  }

  private int rank(SkosText text) {
    String tag = text.language().orElse("").toLowerCase(Locale.ROOT);
    if (tag.equals(language)) {
      return 0;
    }
    if (tag.isEmpty()) {
      return 2;
    }
    if (!primary(tag).equals(primary(language))) {
      return NEVER;
    }
    return tag.indexOf('-') < 0 ? 1 : 3;
  }

  private static String primary(String tag) {
    int dash = tag.indexOf('-');
    return dash < 0 ? tag : tag.substring(0, dash);
  }
}
