package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.exchange.Aspect;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Work;

/** Parts of a description as JSON; {@link PartsFromJson} reads them. */
final class PartsAsJson {
  private final List<Member> members = new ArrayList<>();

  private PartsAsJson() {}

  static String name(Aspect aspect) {
    return switch (aspect) {
      case KIND -> "kind";
      case TITLE -> "title";
      case OTHER_TITLES -> "otherTitles";
      case PEOPLE -> "people";
      case LANGUAGE -> "language";
      case STATEMENT -> "edition";
      case DATE -> "date";
      case PLACES -> "places";
      case PUBLISHER -> "publisher";
      case VOLUMES -> "volumes";
      case SERIES -> "series";
      case IDENTIFIERS -> "identifiers";
      case NOTED_AS -> "notedAs";
      case CONTAINER -> "in";
      case LINEAGE -> "descent";
      case OCCASION -> "occasion";
      case ARCHIVE -> "archive";
      case ONLINE -> "online";
    };
  }

  /** null where the description says nothing of it. */
  static Json of(Aspect aspect, Work work) {
    Edition edition = work.editions().get(0);
    Imprint imprint = edition.imprint();
    PartsAsJson out = new PartsAsJson();
    return switch (aspect) {
      case KIND -> Json.of(work.kind().code());
      case TITLE -> out.text("title", work.title()).text("subtitle", work.subtitle()).made();
      case OTHER_TITLES -> list(work.alternateTitles(), Json::of);
      case PEOPLE -> list(work.contributors(), PartsAsJson::contributor);
      case LANGUAGE -> text(work.language());
      case STATEMENT ->
          out.text("statement", imprint.statement()).number("number", imprint.number()).made();
      case DATE -> out.number("year", imprint.year()).text("printed", imprint.yearPrinted()).made();
      case PLACES -> list(imprint.places(), Json::of);
      case PUBLISHER -> text(imprint.publisher());
      case VOLUMES -> number(imprint.volumes());
      case SERIES -> text(imprint.series());
      case IDENTIFIERS -> list(imprint.identifiers(), PartsAsJson::identifier);
      case NOTED_AS -> text(imprint.notedAs());
      case CONTAINER -> edition.container().map(PartsAsJson::container).orElse(Json.nothing());
      case LINEAGE -> edition.lineage().map(PartsAsJson::lineage).orElse(Json.nothing());
      case OCCASION -> edition.occasion().map(PartsAsJson::occasion).orElse(Json.nothing());
      case ARCHIVE -> edition.archive().map(PartsAsJson::archive).orElse(Json.nothing());
      case ONLINE -> edition.online().map(PartsAsJson::online).orElse(Json.nothing());
    };
  }

  private static Json contributor(Contributor contributor) {
    PartsAsJson out = new PartsAsJson().text("role", contributor.role().code());
    if (contributor.name() instanceof Name.Person person) {
      return out.text("family", person.family())
          .text("given", person.given())
          .text("particle", person.particle())
          .text("suffix", person.suffix())
          .made();
    }
    return out.text("body", contributor.name().full()).made();
  }

  private static Json identifier(Identifier identifier) {
    PartsAsJson out =
        new PartsAsJson()
            .text("scheme", identifier.scheme().code())
            .text("value", identifier.value())
            .text("qualifier", identifier.qualifier());
    if (identifier.wrongInPrint()) {
      out.members.add(new Member("wrongInPrint", new Json.Bare("true")));
    }
    return out.made();
  }

  private static Json container(Edition.Container container) {
    return new PartsAsJson()
        .text("title", container.title())
        .text("society", container.society())
        .text("volume", container.volume())
        .text("part", container.part())
        .text("issue", container.issue())
        .number("coverYear", container.coverYear())
        .text("pages", container.pages().map(Locator::printed))
        .made();
  }

  private static Json lineage(Edition.Lineage lineage) {
    PartsAsJson out =
        new PartsAsJson()
            .text("form", lineage.form().code())
            .text("parent", lineage.parent())
            .number("originalYear", lineage.originalYear())
            .text("newMatter", lineage.newMatter());
    if (!lineage.plates().isEmpty()) {
      out.members.add(new Member("plates", list(lineage.plates(), PartsAsJson::plate)));
    }
    return out.made();
  }

  private static Json plate(Edition.PlateChange plate) {
    return new PartsAsJson()
        .text("picture", plate.picture())
        .text("locator", plate.locator().map(Locator::printed))
        .text("fate", plate.fate().code())
        .text("words", plate.words())
        .made();
  }

  private static Json occasion(Edition.Occasion occasion) {
    PartsAsJson out =
        new PartsAsJson()
            .text("house", occasion.house())
            .text("city", occasion.city())
            .text("dates", occasion.dates())
            .text("code", occasion.code())
            .text("consignor", occasion.consignor());
    if (!occasion.venues().isEmpty()) {
      out.members.add(new Member("venues", list(occasion.venues(), Json::of)));
    }
    return out.made();
  }

  private static Json archive(Edition.Archive archive) {
    return new PartsAsJson()
        .text("repository", archive.repository())
        .text("shelfMark", archive.shelfMark())
        .text("firm", archive.firm())
        .text("foliatedBy", archive.foliatedBy())
        .text("degree", archive.degree())
        .made();
  }

  private static Json online(Edition.Online online) {
    return new PartsAsJson()
        .text("url", online.url())
        .text("accessed", online.accessed())
        .text("archived", online.archived())
        .made();
  }

  private PartsAsJson text(String name, String value) {
    members.add(new Member(name, Json.of(value)));
    return this;
  }

  private PartsAsJson text(String name, Optional<String> value) {
    return value.map(v -> text(name, v)).orElse(this);
  }

  private PartsAsJson number(String name, OptionalInt value) {
    if (value.isPresent()) {
      members.add(new Member(name, Json.of(value.getAsInt())));
    }
    return this;
  }

  private Json made() {
    return new Members(members);
  }

  private static Json text(Optional<String> value) {
    return value.map(Json::of).orElse(Json.nothing());
  }

  private static Json number(OptionalInt value) {
    return value.isPresent() ? Json.of(value.getAsInt()) : Json.nothing();
  }

  private static <T> Json list(List<T> values, Function<T, Json> each) {
    return new Items(values.stream().map(each).toList());
  }
}
