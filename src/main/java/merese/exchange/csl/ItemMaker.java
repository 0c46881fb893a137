package merese.exchange.csl;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import merese.citation.CslRecord;
import merese.citation.Source;
import merese.exchange.Outgoing;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/**
 * The variables of an item, from the library alone: those by which a style cites a source, and what
 * no style asks of us but the schema has.
 */
final class ItemMaker {
  private ItemMaker() {}

  /** In their order, without what is our own. */
  static Members make(Outgoing source) {
    Source cited = new Source(source.work(), source.edition(), source.part());
    Map<String, Object> item = new LinkedHashMap<>(CslRecord.of(cited));
    Imprint imprint = source.edition().imprint();
    if (!imprint.places().isEmpty()) {
      item.put("publisher-place", String.join("; ", imprint.places()));
    }
    date(item, imprint.year());
    for (Scheme scheme : Scheme.values()) {
      identifiers(item, scheme, imprint);
    }
    if (source.part().isEmpty()) {
      imprint.notedAs().ifPresent(words -> item.put("note", words));
    }
    if (item.containsKey("container-title")) {
      locatedPages(item, source.edition());
    }
    List<Member> members = new ArrayList<>();
    item.forEach((name, value) -> members.add(new Member(name, Json.of(value))));
    members.sort(
        Comparator.comparingInt((Member m) -> Variables.rank(m.name()))
            .thenComparing(Member::name));
    return new Members(members);
  }

  /** A date in words gets the year too, by which other programs sort. */
  @SuppressWarnings("unchecked")
  private static void date(Map<String, Object> item, OptionalInt year) {
    if (item.get("issued") instanceof Map<?, ?> issued
        && !issued.containsKey("date-parts")
        && year.isPresent()) {
      Map<String, Object> both = new LinkedHashMap<>();
      both.put("date-parts", List.of(List.of(year.getAsInt())));
      both.putAll((Map<String, Object>) issued);
      item.put("issued", both);
    }
  }

  /** Several of a scheme stand in one text. */
  private static void identifiers(Map<String, Object> item, Scheme scheme, Imprint imprint) {
    List<Identifier> all = imprint.identifiers(scheme);
    if (!all.isEmpty()) {
      item.put(
          scheme.name(), all.stream().map(Identifier::value).collect(Collectors.joining(", ")));
    }
  }

  /** Where an article stands, in words where it is not pages. */
  private static void locatedPages(Map<String, Object> item, Edition edition) {
    if (!item.containsKey("page")) {
      edition
          .container()
          .flatMap(Edition.Container::pages)
          .ifPresent(pages -> item.put("page", pages.printed()));
    }
  }
}
