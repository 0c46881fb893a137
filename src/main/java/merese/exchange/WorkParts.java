package merese.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.SourceKind;
import merese.model.Work;

/** Works with one part changed, and parts of works in words: what {@link Aspect} is made of. */
final class WorkParts {
  private WorkParts() {}

  static Work kind(Work work, SourceKind kind) {
    return new Work(
        work.id(),
        kind,
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        work.editions(),
        work.links());
  }

  static Work title(Work work, String title, Optional<String> subtitle) {
    return new Work(
        work.id(),
        work.kind(),
        title,
        subtitle,
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        work.editions(),
        work.links());
  }

  static Work alternateTitles(Work work, List<String> titles) {
    return work.withAlternateTitles(titles);
  }

  static Work contributors(Work work, List<Contributor> contributors) {
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        contributors,
        work.language(),
        work.mine(),
        work.editions(),
        work.links());
  }

  static Work language(Work work, Optional<String> language) {
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        language,
        work.mine(),
        work.editions(),
        work.links());
  }

  private static Imprint imprint(Work work) {
    return work.editions().get(0).imprint();
  }

  private static Work imprint(Work work, Imprint imprint) {
    return work.withOnly(work.editions().get(0).withImprint(imprint));
  }

  static Work statement(Work work, Imprint from) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            from.statement(),
            from.number(),
            old.year(),
            old.yearPrinted(),
            old.places(),
            old.publisher(),
            old.volumes(),
            old.series(),
            old.identifiers(),
            old.notedAs()));
  }

  static Work date(Work work, Imprint from) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            from.year(),
            from.yearPrinted(),
            old.places(),
            old.publisher(),
            old.volumes(),
            old.series(),
            old.identifiers(),
            old.notedAs()));
  }

  static Work places(Work work, List<String> places) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            old.year(),
            old.yearPrinted(),
            places,
            old.publisher(),
            old.volumes(),
            old.series(),
            old.identifiers(),
            old.notedAs()));
  }

  static Work publisher(Work work, Optional<String> publisher) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            old.year(),
            old.yearPrinted(),
            old.places(),
            publisher,
            old.volumes(),
            old.series(),
            old.identifiers(),
            old.notedAs()));
  }

  static Work volumes(Work work, OptionalInt volumes) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            old.year(),
            old.yearPrinted(),
            old.places(),
            old.publisher(),
            volumes,
            old.series(),
            old.identifiers(),
            old.notedAs()));
  }

  static Work series(Work work, Optional<String> series) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            old.year(),
            old.yearPrinted(),
            old.places(),
            old.publisher(),
            old.volumes(),
            series,
            old.identifiers(),
            old.notedAs()));
  }

  static Work identifiers(Work work, List<Identifier> identifiers) {
    return imprint(work, imprint(work).withIdentifiers(identifiers));
  }

  static Work notedAs(Work work, Optional<String> notedAs) {
    Imprint old = imprint(work);
    return imprint(
        work,
        new Imprint(
            old.statement(),
            old.number(),
            old.year(),
            old.yearPrinted(),
            old.places(),
            old.publisher(),
            old.volumes(),
            old.series(),
            old.identifiers(),
            notedAs));
  }

  static Work container(Work work, Optional<Edition.Container> container) {
    Edition old = work.editions().get(0);
    return work.withOnly(
        new Edition(
            old.key(),
            old.imprint(),
            old.lineage(),
            container,
            old.occasion(),
            old.archive(),
            old.online(),
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received()));
  }

  static Work lineage(Work work, Optional<Edition.Lineage> lineage) {
    Edition old = work.editions().get(0);
    return work.withOnly(
        new Edition(
            old.key(),
            old.imprint(),
            lineage,
            old.container(),
            old.occasion(),
            old.archive(),
            old.online(),
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received()));
  }

  static Work occasion(Work work, Optional<Edition.Occasion> occasion) {
    Edition old = work.editions().get(0);
    return work.withOnly(
        new Edition(
            old.key(),
            old.imprint(),
            old.lineage(),
            old.container(),
            occasion,
            old.archive(),
            old.online(),
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received()));
  }

  static Work archive(Work work, Optional<Edition.Archive> archive) {
    Edition old = work.editions().get(0);
    return work.withOnly(
        new Edition(
            old.key(),
            old.imprint(),
            old.lineage(),
            old.container(),
            old.occasion(),
            archive,
            old.online(),
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received()));
  }

  static Work online(Work work, Optional<Edition.Online> online) {
    Edition old = work.editions().get(0);
    return work.withOnly(
        new Edition(
            old.key(),
            old.imprint(),
            old.lineage(),
            old.container(),
            old.occasion(),
            old.archive(),
            online,
            old.scope(),
            old.parts(),
            old.copies(),
            old.notes(),
            old.checks(),
            old.received()));
  }

  static String people(List<Contributor> contributors) {
    List<String> people = new ArrayList<>();
    for (Contributor contributor : contributors) {
      boolean author = contributor.role() == Contributor.Role.AUTHOR;
      String role = author ? "" : " (" + contributor.role().code() + ")";
      people.add(contributor.name().full() + role);
    }
    return String.join("; ", people);
  }

  static String identifiers(List<Identifier> identifiers) {
    List<String> all = new ArrayList<>();
    for (Identifier identifier : identifiers) {
      String qualifier = identifier.qualifier().map(q -> " (" + q + ")").orElse("");
      String wrong = identifier.wrongInPrint() ? " (wrong in print)" : "";
      all.add(identifier.scheme() + " " + identifier.value() + qualifier + wrong);
    }
    return String.join("; ", all);
  }

  static String container(Edition.Container container) {
    List<String> words = new ArrayList<>(List.of(container.title()));
    container.society().ifPresent(words::add);
    container.volume().ifPresent(v -> words.add("vol. " + v));
    container.part().ifPresent(p -> words.add("part " + p));
    container.issue().ifPresent(i -> words.add("no. " + i));
    container.pages().ifPresent(p -> words.add(p.printed()));
    return String.join(", ", words);
  }

  static String lineage(Edition.Lineage lineage) {
    List<String> words = new ArrayList<>(List.of(lineage.form().code()));
    lineage.parent().ifPresent(p -> words.add("of " + p));
    lineage.originalYear().ifPresent(y -> words.add("first " + y));
    lineage.newMatter().ifPresent(words::add);
    return String.join(", ", words);
  }

  static String occasion(Edition.Occasion occasion) {
    List<String> words = new ArrayList<>();
    occasion.house().ifPresent(words::add);
    occasion.city().ifPresent(words::add);
    occasion.dates().ifPresent(words::add);
    words.addAll(occasion.venues());
    occasion.code().ifPresent(words::add);
    occasion.consignor().ifPresent(words::add);
    return String.join(", ", words);
  }

  static String archive(Edition.Archive archive) {
    List<String> words = new ArrayList<>(List.of(archive.repository()));
    archive.shelfMark().ifPresent(words::add);
    archive.firm().ifPresent(words::add);
    archive.degree().ifPresent(words::add);
    return String.join(", ", words);
  }
}
