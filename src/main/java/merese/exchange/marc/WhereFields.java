package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.Outgoing;
import merese.exchange.identifier.Identifiers;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Occasion;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** Makes the fields that {@link WhereMeaning} reads: 502, 518, 773, 852, 856 and 857. */
final class WhereFields {
  private final Work work;
  private final Edition edition;
  private final List<MarcField> fields = new ArrayList<>();

  private WhereFields(Outgoing source) {
    this.work = source.work();
    this.edition = source.edition();
  }

  static List<MarcField> make(Outgoing source) {
    WhereFields maker = new WhereFields(source);
    if (source.part().isPresent()) {
      maker.book(source.part().get());
    } else {
      maker.edition.container().ifPresent(maker::host);
      maker.edition.occasion().ifPresent(maker::occasion);
      maker.archive();
    }
    maker.edition.online().ifPresent(maker::online);
    return maker.fields;
  }

  private void put(String tag, String indicators, List<Subfield> subfields) {
    fields.add(MarcField.data(tag, indicators, subfields));
  }

  private static void put(List<Subfield> to, char code, Optional<String> text) {
    text.ifPresent(t -> to.add(new Subfield(code, t)));
  }

  /** $7: kind of the heading in $a, form of the name, type and level of the host. */
  private void host(Container container) {
    List<Subfield> host = new ArrayList<>();
    boolean serial = FixedField.isInSerial(work.kind());
    host.add(new Subfield('7', (container.society().isPresent() ? "c2a" : "nna") + level(serial)));
    put(host, 'a', container.society().map(FieldMaker::closed));
    host.add(new Subfield('t', FieldMaker.closed(container.title())));
    String place = place(container);
    put(host, 'g', Optional.of(place).filter(p -> !p.isEmpty()));
    for (Identifier issn : edition.imprint().identifiers(Identifier.Scheme.ISSN)) {
      if (!issn.wrongInPrint()) {
        host.add(new Subfield('x', issn.value()));
      }
    }
    put("773", "0 ", host);
  }

  private static char level(boolean serial) {
    return serial ? 's' : 'm';
  }

  private static String place(Container container) {
    List<String> place = new ArrayList<>();
    container.volume().ifPresent(v -> place.add("vol. " + v));
    container.part().ifPresent(p -> place.add("part " + p));
    container.issue().ifPresent(i -> place.add("no. " + i));
    String before = String.join(", ", place);
    if (container.coverYear().isPresent()) {
      before = (before + " (cover " + container.coverYear().getAsInt() + ")").strip();
    }
    String pages = container.pages().map(WhereFields::pages).orElse("");
    return before.isEmpty() || pages.isEmpty() ? before + pages : before + ", " + pages;
  }

  /** "p. 22-38", as catalogues have it, where that reads as the same. */
  private static String pages(Locator pages) {
    String printed = pages.printed();
    String usual = printed.startsWith("pp. ") ? "p. " + printed.substring(4) : printed;
    usual = usual.replace('–', '-');
    return HostPlace.pages(usual).equals(Optional.of(pages)) ? usual : printed;
  }

  /** The book that a part of it stands in. */
  private void book(Edition.Part part) {
    List<Subfield> host = new ArrayList<>();
    Optional<Name> maker = work.makers().stream().map(m -> m.name()).findFirst();
    String heading = maker.map(m -> m instanceof Name.Body ? "c2am" : "p1am").orElse("nnam");
    host.add(new Subfield('7', heading));
    put(host, 'a', maker.flatMap(m -> MarcNames.field(m, true).first('a')));
    String title = work.subtitle().map(s -> work.title() + ": " + s).orElse(work.title());
    host.add(new Subfield('t', FieldMaker.closed(title)));
    put(host, 'g', part.extent().map(WhereFields::pages));
    for (Identifier isbn : edition.imprint().identifiers(Identifier.Scheme.ISBN)) {
      if (!isbn.wrongInPrint()) {
        host.add(new Subfield('z', Identifiers.compact(isbn)));
      }
    }
    host.add(new Subfield('w', edition.key()));
    put("773", "0 ", host);
  }

  private void occasion(Occasion occasion) {
    List<Subfield> event = new ArrayList<>();
    NamedText.put(event, 'o', WhereMeaning.HOUSE, occasion.house());
    put(event, 'd', occasion.dates());
    put(event, 'p', occasion.city());
    NamedText.put(event, 'o', WhereMeaning.CODE, occasion.code());
    NamedText.put(event, 'o', WhereMeaning.CONSIGNOR, occasion.consignor());
    for (String venue : occasion.venues()) {
      NamedText.put(event, 'o', WhereMeaning.VENUE, Optional.of(venue));
    }
    event.add(new Subfield('2', WhereMeaning.LOCAL));
    put("518", "  ", event);
  }

  private void archive() {
    boolean thesis = work.kind() == SourceKind.THESIS;
    if (thesis) {
      List<Subfield> note = new ArrayList<>();
      edition.archive().ifPresent(a -> university(a, note));
      if (note.isEmpty()) {
        note.add(new Subfield('a', "Thesis"));
      }
      put("502", "  ", note);
    } else {
      edition.archive().ifPresent(this::kept);
    }
  }

  private static void university(Archive archive, List<Subfield> to) {
    put(to, 'b', archive.degree().map(FieldMaker::closed));
    to.add(new Subfield('c', FieldMaker.closed(archive.repository())));
    put(to, 'o', archive.shelfMark().map(FieldMaker::closed));
  }

  private void kept(Archive archive) {
    List<Subfield> place = new ArrayList<>();
    place.add(new Subfield('a', FieldMaker.closed(archive.repository())));
    put(place, 'j', archive.shelfMark().map(FieldMaker::closed));
    NamedText.put(place, 'z', WhereMeaning.FIRM, archive.firm());
    NamedText.put(place, 'z', WhereMeaning.FOLIATED_BY, archive.foliatedBy());
    NamedText.put(place, 'z', WhereMeaning.DEGREE, archive.degree());
    place.add(new Subfield('2', WhereMeaning.LOCAL));
    put("852", "7 ", place);
  }

  private void online(Edition.Online online) {
    List<Subfield> address = new ArrayList<>();
    address.add(new Subfield('u', online.url()));
    online.accessed().ifPresent(d -> address.add(new Subfield('z', WhereMeaning.ACCESSED + d)));
    put("856", "40", address);
    online.archived().ifPresent(a -> put("857", "40", List.of(new Subfield('u', a))));
  }
}
