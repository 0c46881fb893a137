package merese.exchange.csl;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.SourceKind;
import merese.model.Work;

/** A description under construction, part by part. */
final class PartialWork {
  private final Work from;
  SourceKind kind;
  String title;
  Optional<String> subtitle;
  List<String> otherTitles;
  List<Contributor> people;
  Optional<String> language;
  Optional<String> statement;
  OptionalInt number;
  OptionalInt year;
  Optional<String> yearPrinted;
  List<String> places;
  Optional<String> publisher;
  OptionalInt volumes;
  Optional<String> series;
  List<Identifier> identifiers;
  Optional<String> notedAs;
  Optional<Edition.Container> container;
  Optional<Edition.Lineage> lineage;
  Optional<Edition.Occasion> occasion;
  Optional<Edition.Archive> archive;
  Optional<Edition.Online> online;

  PartialWork(Work from) {
    this.from = from;
    Edition edition = from.editions().get(0);
    Imprint imprint = edition.imprint();
    kind = from.kind();
    title = from.title();
    subtitle = from.subtitle();
    otherTitles = from.alternateTitles();
    people = from.contributors();
    language = from.language();
    statement = imprint.statement();
    number = imprint.number();
    year = imprint.year();
    yearPrinted = imprint.yearPrinted();
    places = imprint.places();
    publisher = imprint.publisher();
    volumes = imprint.volumes();
    series = imprint.series();
    identifiers = imprint.identifiers();
    notedAs = imprint.notedAs();
    container = edition.container();
    lineage = edition.lineage();
    occasion = edition.occasion();
    archive = edition.archive();
    online = edition.online();
  }

  Work work() {
    Edition old = from.editions().get(0);
    Imprint imprint =
        new Imprint(
            statement,
            number,
            year,
            yearPrinted,
            places,
            publisher,
            volumes,
            series,
            identifiers,
            notedAs);
    Edition edition =
        new Edition(
            old.key(),
            imprint,
            lineage,
            container,
            occasion,
            archive,
            online,
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received());
    return new Work(
        from.id(),
        kind,
        title,
        subtitle,
        otherTitles,
        people,
        language,
        from.mine(),
        List.of(edition),
        from.links());
  }
}
