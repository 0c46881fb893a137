package merese.answer.claims;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.ExperienceLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.claims.ClaimsAnswer.Bar;
import merese.answer.claims.ClaimsAnswer.Denial;
import merese.answer.claims.ClaimsAnswer.Group;
import merese.answer.claims.ClaimsAnswer.OfKind;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Section;
import merese.answer.claims.ClaimsAnswer.Standing;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.Mine.Experience;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.time.DateProfile;
import merese.time.DateWords;

/**
 * Answers who claims what of a feature, one row a claim (R1, R3, R8). Nothing is averaged, and what
 * is said of copies never reaches what is said of the feature.
 */
public final class Claims {
  private final Shelf shelf;
  private final ClaimsQuestion question;
  private final SourceLines lines;
  private final DateProfile profile;
  private final RowMaker rows;
  private final Map<String, Source> sources = new HashMap<>();
  private final Comparator<Row> order =
      Comparator.<Row, Source>comparing(row -> source(row), Source.BY_YEAR)
          .thenComparing(Row::narrower)
          .thenComparing(Claims::firstPlace)
          .thenComparing(Row::words);

  private Claims(Shelf shelf, ClaimsQuestion question) {
    this.shelf = shelf;
    this.question = question;
    this.lines = new SourceLines();
    this.profile = DateProfile.of(shelf.settings().dateProfile());
    this.rows =
        new RowMaker(
            shelf.thesaurus(),
            lines,
            new DateLines(new DateWords(profile)),
            new PlaceLines(question.place()));
    for (Source source : shelf.sources()) {
      sources.put(source.key(), source);
    }
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   */
  public static ClaimsAnswer answer(Shelf shelf, ClaimsQuestion question) {
    return shelf.ask(asked -> new Claims(asked, question).answer());
  }

  /** The rules by which words become years in this library. */
  public static DateProfile profile(Shelf shelf) {
    return DateProfile.of(shelf.settings().dateProfile());
  }

  private ClaimsAnswer answer() {
    List<Section> sections = new ArrayList<>();
    for (Topic topic : Topic.of(shelf, question.terms(), question.facet())) {
      sections.add(section(topic));
    }
    return new ClaimsAnswer(profile, sections);
  }

  private Source source(Row row) {
    return sources.get(row.source().key());
  }

  private static Locator firstPlace(Row row) {
    return row.pictured().isEmpty() ? row.inWords().get(0) : row.pictured().get(0);
  }

  private Section section(Topic topic) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    List<Classified> claiming = coverage.in(Coverage.Group.COUNTED, Coverage.Group.HOW_IT_IS_MADE);
    Set<Source> covering = new LinkedHashSet<>();
    for (Classified classified : coverage.in(Coverage.Group.COUNTED)) {
      covering.add(classified.sourced().source());
    }
    Map<Claim.Kind, List<Row>> feature = new EnumMap<>(Claim.Kind.class);
    List<Row> objects = new ArrayList<>();
    List<Row> copies = new ArrayList<>();
    for (Row row : rows(claiming, coverage)) {
      boolean ofCopies = row.about() == Claim.About.COPIES || row.kind() == Claim.Kind.COPY_WARNING;
      if (ofCopies) {
        copies.add(row);
      } else if (question.wants(row.kind())) {
        (row.about() == Claim.About.OBJECT
                ? objects
                : feature.computeIfAbsent(row.kind(), k -> new ArrayList<>()))
            .add(row);
      }
    }
    List<OfKind> kinds = kinds(feature, covering);
    return new Section(
        topic.heading(),
        covering.size(),
        works(covering).size(),
        kinds,
        objects,
        cautions() ? copies : List.of(),
        wanted(rows(coverage.in(Coverage.Group.OWN_WORK), coverage)),
        denials(coverage),
        experience(coverage.wanted()),
        Disagreements.among(all(kinds), workOf()),
        bars(kinds, objects));
  }

  /** Every answer about dates has the warnings of copies with it. */
  private boolean cautions() {
    return question.wants(Claim.Kind.DATE) || question.wants(Claim.Kind.COPY_WARNING);
  }

  /** One row a claim of a note, however many of its namings count; the exact one first. */
  private List<Row> rows(List<Classified> notes, ConceptCoverage coverage) {
    Map<SourcedNote, Classified> byNote = new LinkedHashMap<>();
    for (Classified classified : notes) {
      Classified known = byNote.get(classified.sourced());
      if (known == null || classified.naming().means(coverage.concept())) {
        byNote.put(classified.sourced(), classified);
      }
    }
    List<Row> made = new ArrayList<>();
    for (Classified classified : byNote.values()) {
      for (Claim claim : classified.sourced().note().claims()) {
        made.add(rows.row(classified, claim, coverage.concept(), coverage.wanted()));
      }
    }
    made.sort(order);
    return made;
  }

  private List<Row> wanted(List<Row> all) {
    List<Row> wanted = new ArrayList<>();
    for (Row row : all) {
      if (question.wants(row.kind()) || row.kind() == Claim.Kind.COPY_WARNING && cautions()) {
        wanted.add(row);
      }
    }
    return wanted;
  }

  private List<OfKind> kinds(Map<Claim.Kind, List<Row>> feature, Set<Source> covering) {
    List<OfKind> kinds = new ArrayList<>();
    for (Claim.Kind kind : Claim.Kind.values()) {
      if (kind == Claim.Kind.COPY_WARNING || !question.wants(kind)) {
        continue;
      }
      List<Row> of = feature.getOrDefault(kind, List.of());
      kinds.add(new OfKind(kind, groups(of), silent(of, covering)));
    }
    return kinds;
  }

  private List<Group> groups(List<Row> of) {
    Sorting sorting = new Sorting(question);
    Map<Standing, List<Row>> byStanding = new EnumMap<>(Standing.class);
    for (Row row : of) {
      Sorting.Sorted sorted = sorting.of(row);
      byStanding
          .computeIfAbsent(sorted.standing(), s -> new ArrayList<>())
          .add(row.because(sorted.reason()));
    }
    List<Group> groups = new ArrayList<>();
    for (Map.Entry<Standing, List<Row>> each : byStanding.entrySet()) {
      groups.add(new Group(each.getKey(), each.getValue()));
    }
    return groups;
  }

  /** The sources that cover the feature and claim nothing of the kind about it. */
  private List<SourceLine> silent(List<Row> claims, Set<Source> covering) {
    Set<Source> silent = new LinkedHashSet<>(covering);
    for (Row row : claims) {
      silent.remove(source(row));
    }
    List<SourceLine> named = new ArrayList<>();
    for (Source source : lines.sorted(silent)) {
      named.add(lines.of(source));
    }
    return named;
  }

  private static Set<String> works(Set<Source> of) {
    Set<String> works = new LinkedHashSet<>();
    for (Source source : of) {
      works.add(source.workId());
    }
    return works;
  }

  private Map<String, String> workOf() {
    Map<String, String> works = new HashMap<>();
    for (Source source : sources.values()) {
      works.put(source.key(), source.workId());
    }
    return works;
  }

  /** Without what was sorted away: contradictions are there whatever was asked. */
  private List<Row> all(List<OfKind> kinds) {
    List<Row> all = new ArrayList<>();
    for (OfKind kind : kinds) {
      List<Row> of = new ArrayList<>();
      for (Group group : kind.groups()) {
        of.addAll(group.rows());
      }
      of.sort(order);
      all.addAll(of);
    }
    return all;
  }

  private List<Denial> denials(ConceptCoverage coverage) {
    Map<Source, List<Classified>> bySource = new LinkedHashMap<>();
    for (Classified classified : coverage.in(Coverage.Group.SAYS_NOT_SHOWN)) {
      bySource
          .computeIfAbsent(classified.sourced().source(), s -> new ArrayList<>())
          .add(classified);
    }
    List<Denial> denials = new ArrayList<>();
    for (Source source : lines.sorted(bySource.keySet())) {
      Set<Locator> where = new TreeSet<>();
      Set<String> words = new LinkedHashSet<>();
      for (Classified classified : bySource.get(source)) {
        for (Place place : classified.places()) {
          if (PlaceTest.ABSENCE.holds(place)) {
            where.add(place.locator());
          }
        }
        for (Claim claim : classified.sourced().note().claims()) {
          words.add(claim.words());
        }
      }
      denials.add(new Denial(lines.of(source), List.copyOf(where), List.copyOf(words)));
    }
    return denials;
  }

  private List<ExperienceLine> experience(Set<String> wanted) {
    List<ExperienceLine> found = new ArrayList<>();
    for (Experience each : shelf.mine().experience()) {
      boolean asked =
          question.wants(each.kind()) || each.kind() == Claim.Kind.COPY_WARNING && cautions();
      if (asked && wanted.contains(each.concept())) {
        ConceptLine concept =
            new ConceptLine(each.concept(), shelf.thesaurus().label(each.concept()));
        found.add(
            new ExperienceLine(concept, each.kind(), each.words(), each.pieces(), each.until()));
      }
    }
    return found;
  }

  /** The dates of the feature, then those of single pieces; never those of copies. */
  private List<Bar> bars(List<OfKind> kinds, List<Row> objects) {
    List<Row> dated = new ArrayList<>();
    for (OfKind kind : kinds) {
      if (kind.kind() == Claim.Kind.DATE) {
        dated.addAll(all(List.of(kind)));
      }
    }
    for (Row row : objects) {
      if (row.kind() == Claim.Kind.DATE) {
        dated.add(row);
      }
    }
    List<Bar> bars = new ArrayList<>();
    for (Row row : dated) {
      if (row.date().get().isRead()) {
        bars.add(new Bar(row, row.date().get().core().get(), row.date().get().outer().get()));
      }
    }
    return bars;
  }
}
