package merese.exchange.marc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.exchange.Outgoing;
import merese.exchange.identifier.Identifiers;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Identifier;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * Makes the fields of a source from the model alone, in the order of their tags. ISBD punctuation
 * stands between subfields and not at the end of a field, as leader/18 "i" allows (PCC practice
 * since 2019; from memory).
 */
final class FieldMaker {
  private static final Pattern NUMBERED_SERIES =
      Pattern.compile("(.+?),\\s+((?:(?:no|vol)\\.?\\s*)?(?:\\d+|[IVXLC]+))");

  private final Outgoing source;
  private final Work work;
  private final Edition edition;
  private final boolean part;
  private final List<MarcField> fields = new ArrayList<>();

  private FieldMaker(Outgoing source) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.part = source.part().isPresent();
  }

  static List<MarcField> make(Outgoing source) {
    FieldMaker maker = new FieldMaker(source);
    maker.fixed();
    maker.identifiers();
    maker.people();
    maker.titles();
    maker.publication();
    maker.notes();
    maker.fields.addAll(WhereFields.make(source));
    maker.fields.sort(Comparator.comparing(FieldMaker::order));
    return maker.fields;
  }

  private static String order(MarcField field) {
    return field.isLeader() ? "" : field.place();
  }

  private void put(String tag, String indicators, Subfield... subfields) {
    fields.add(MarcField.data(tag, indicators, List.of(subfields)));
  }

  private static Subfield sub(char code, String text) {
    return new Subfield(code, text);
  }

  private void fixed() {
    fields.add(MarcField.control(MarcField.LEADER, FixedField.leader(work, edition, part)));
    fields.add(MarcField.control("001", source.id()));
    fields.add(MarcField.control("008", FixedField.general(work, edition, part)));
    work.language()
        .filter(
            tag -> !LanguageCodes.code(tag).flatMap(LanguageCodes::tag).equals(Optional.of(tag)))
        .ifPresent(tag -> put("041", " 7", sub('a', tag), sub('2', "rfc5646")));
  }

  private void identifiers() {
    if (part) {
      return;
    }
    for (Identifier identifier : edition.imprint().identifiers()) {
      boolean wrong = identifier.wrongInPrint();
      char code = wrong ? 'z' : 'a';
      String value = wrong ? identifier.value() : Identifiers.compact(identifier);
      switch (identifier.scheme()) {
        case ISBN -> {
          List<Subfield> subfields = new ArrayList<>(List.of(sub(code, value)));
          identifier.qualifier().ifPresent(q -> subfields.add(sub('q', "(" + q + ")")));
          fields.add(MarcField.data("020", "  ", subfields));
        }
        case ISSN -> {
          boolean ofHost = edition.container().isPresent() && !wrong;
          if (!ofHost) {
            put("022", "  ", sub(code, identifier.value()));
          }
        }
        case DOI -> put("024", "7 ", sub(code, identifier.value()), sub('2', "doi"));
      }
    }
  }

  private boolean hasMain() {
    return fields.stream().anyMatch(f -> f.is("100", "110"));
  }

  /** The main entry is an author who is named first; without one, it is the title. */
  private void people() {
    List<Contributor> people =
        part
            ? source.part().get().authors().stream()
                .map(name -> new Contributor(Role.AUTHOR, name))
                .toList()
            : work.contributors();
    int at = 0;
    while (at < people.size()) {
      Name name = people.get(at).name();
      boolean main = at == 0 && people.get(0).role() == Role.AUTHOR;
      List<Role> roles = new ArrayList<>();
      while (at < people.size() && people.get(at).name().equals(name)) {
        roles.add(people.get(at++).role());
      }
      person(name, main, roles);
    }
  }

  private void person(Name name, boolean main, List<Role> roles) {
    MarcField heading = MarcNames.field(name, main);
    List<Subfield> subfields = new ArrayList<>(heading.subfields());
    for (Role role : roles) {
      Subfield last = subfields.remove(subfields.size() - 1);
      subfields.add(sub(last.code(), last.text() + ","));
      subfields.add(sub('e', Relators.term(role)));
    }
    for (Role role : roles) {
      subfields.add(sub('4', Relators.code(role)));
    }
    fields.add(MarcField.data(heading.tag(), "" + heading.one() + heading.two(), subfields));
  }

  private void titles() {
    String title = source.part().map(Edition.Part::title).orElse(work.title());
    char added = hasMain() ? '1' : '0';
    String indicators = "" + added + FiledTitle.nonfiling(title, work.language());
    if (part || work.subtitle().isEmpty()) {
      put("245", indicators, sub('a', closed(title)));
    } else {
      put("245", indicators, sub('a', title + " :"), sub('b', closed(work.subtitle().get())));
    }
    if (!part) {
      work.alternateTitles().forEach(t -> put("246", "13", sub('a', closed(t))));
    }
  }

  /** With one more full stop where reading would take one away. */
  static String closed(String text) {
    return MarcText.bare(text, true).equals(text) ? text : text + ".";
  }

  /** With the mark that leads on to the next subfield; at the end there is none. */
  private static String marked(String text, String mark) {
    return mark.isEmpty() ? closed(text) : text + mark;
  }

  private void publication() {
    Edition.Imprint imprint = edition.imprint();
    imprint
        .statement()
        .or(() -> imprint.number().stream().mapToObj(FieldMaker::numbered).findFirst())
        .ifPresent(s -> put("250", "  ", sub('a', closed(s))));
    List<Subfield> subfields = new ArrayList<>();
    Optional<String> date =
        imprint.yearPrinted().or(() -> imprint.year().stream().mapToObj(y -> "" + y).findFirst());
    String comma = date.isPresent() ? "," : "";
    for (int i = 0; i < imprint.places().size(); i++) {
      boolean more = i + 1 < imprint.places().size();
      String mark = more ? " ;" : imprint.publisher().isPresent() ? " :" : comma;
      subfields.add(sub('a', marked(imprint.places().get(i), mark)));
    }
    imprint.publisher().ifPresent(p -> subfields.add(sub('b', marked(p, comma))));
    date.ifPresent(d -> subfields.add(sub('c', closed(d))));
    if (!subfields.isEmpty()) {
      boolean dateOnly = imprint.places().isEmpty() && imprint.publisher().isEmpty();
      boolean made = dateOnly && FixedField.leader(work, edition, part).charAt(6) == 't';
      fields.add(MarcField.data("264", made ? " 0" : " 1", subfields));
    }
    if (!part && imprint.volumes().isPresent()) {
      put("300", "  ", sub('a', imprint.volumes().getAsInt() + " volumes"));
    }
    imprint.series().ifPresent(this::series);
  }

  private static String numbered(int number) {
    boolean teen = number / 10 % 10 == 1;
    String ending =
        switch (teen ? 0 : number % 10) {
          case 1 -> "st";
          case 2 -> "nd";
          case 3 -> "rd";
          default -> "th";
        };
    return number + ending + " edition";
  }

  private void series(String printed) {
    Matcher numbered = NUMBERED_SERIES.matcher(printed);
    if (numbered.matches()) {
      put("490", "0 ", sub('a', numbered.group(1) + " ;"), sub('v', numbered.group(2)));
    } else {
      put("490", "0 ", sub('a', closed(printed)));
    }
  }

  private void notes() {
    edition
        .imprint()
        .notedAs()
        .filter(n -> !part)
        .ifPresent(n -> put("500", "  ", sub('3', ImprintMeaning.FOR_CITATION), sub('a', n)));
    edition.lineage().filter(l -> !part).ifPresent(this::descent);
  }

  private void descent(Edition.Lineage lineage) {
    String lead = DescentMeaning.lead(lineage.form());
    List<Subfield> original = new ArrayList<>();
    if (lineage.originalYear().isPresent()) {
      original.add(sub('p', lead + ":"));
      original.add(sub('c', Integer.toString(lineage.originalYear().getAsInt())));
    } else {
      original.add(sub('p', lead + " another edition"));
    }
    NamedText.put(original, 'n', DescentMeaning.NEW, lineage.newMatter());
    fields.add(MarcField.data("534", "  ", original));
  }

  /** That the record is of this kind, for one whose type and notes don't say so. */
  static MarcField kind(SourceKind kind) {
    return MarcField.data(
        "655", " 7", List.of(sub('a', kind.words()), sub('2', WhereMeaning.LOCAL)));
  }
}
