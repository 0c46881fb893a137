package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.exchange.Aspect;
import merese.exchange.csl.Json.Bare;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Members;
import merese.model.Coded;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.SourceKind;
import merese.model.Work;

/** Reads what {@link PartsAsJson} writes. */
final class PartsFromJson {
  private PartsFromJson() {}

  /** Says that a value is none of ours. */
  private static final class NotOurs extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotOurs() {
      super(null, null, false, false);
    }
  }

  /** A work that differs from one in one part; empty where the value is none that we write. */
  static Optional<Work> read(Aspect aspect, Json value, Work work) {
    try {
      return Optional.of(aspect.taken(work, work(aspect, value, work)));
    } catch (NotOurs | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Work work(Aspect aspect, Json value, Work work) {
    PartialWork partial = new PartialWork(work);
    switch (aspect) {
      case KIND -> partial.kind = code(SourceKind.values(), words(value));
      case TITLE -> {
        partial.title = needed(value, "title");
        partial.subtitle = members(value).text("subtitle");
      }
      case OTHER_TITLES -> partial.otherTitles = list(value, PartsFromJson::words);
      case PEOPLE -> partial.people = list(value, PartsFromJson::contributor);
      case LANGUAGE -> partial.language = text(value);
      case STATEMENT -> {
        partial.statement = members(value).text("statement");
        partial.number = number(value, "number");
      }
      case DATE -> {
        partial.year = number(value, "year");
        partial.yearPrinted = members(value).text("printed");
      }
      case PLACES -> partial.places = list(value, PartsFromJson::words);
      case PUBLISHER -> partial.publisher = text(value);
      case VOLUMES -> partial.volumes = number(value);
      case SERIES -> partial.series = text(value);
      case IDENTIFIERS -> partial.identifiers = list(value, PartsFromJson::identifier);
      case NOTED_AS -> partial.notedAs = text(value);
      case CONTAINER -> partial.container = object(value, PartsFromJson::container);
      case LINEAGE -> partial.lineage = object(value, PartsFromJson::lineage);
      case OCCASION -> partial.occasion = object(value, PartsFromJson::occasion);
      case ARCHIVE -> partial.archive = object(value, PartsFromJson::archive);
      case ONLINE -> partial.online = object(value, PartsFromJson::online);
    }
    return partial.work();
  }

  private static Contributor contributor(Json value) {
    Members name = members(value);
    Contributor.Role role = code(Contributor.Role.values(), needed(value, "role"));
    Optional<String> body = name.text("body");
    return new Contributor(
        role,
        body.isPresent()
            ? new Name.Body(body.get())
            : new Name.Person(
                needed(value, "family"),
                name.text("given"),
                name.text("particle"),
                name.text("suffix")));
  }

  private static Identifier identifier(Json value) {
    return new Identifier(
        code(Identifier.Scheme.values(), needed(value, "scheme")),
        needed(value, "value"),
        members(value).text("qualifier"),
        members(value).get("wrongInPrint").equals(Optional.of(new Bare("true"))));
  }

  private static Edition.Container container(Members value) {
    return new Edition.Container(
        needed(value, "title"),
        value.text("society"),
        value.text("volume"),
        value.text("part"),
        value.text("issue"),
        number(value, "coverYear"),
        value.text("pages").map(Locator::parse));
  }

  private static Edition.Lineage lineage(Members value) {
    return new Edition.Lineage(
        code(Edition.Lineage.Form.values(), needed(value, "form")),
        value.text("parent"),
        number(value, "originalYear"),
        value.text("newMatter"),
        value.get("plates").map(v -> list(v, PartsFromJson::plate)).orElse(List.of()));
  }

  private static Edition.PlateChange plate(Json value) {
    return new Edition.PlateChange(
        needed(value, "picture"),
        members(value).text("locator").map(Locator::parse),
        code(Edition.PlateChange.Fate.values(), needed(value, "fate")),
        members(value).text("words"));
  }

  private static Edition.Occasion occasion(Members value) {
    return new Edition.Occasion(
        value.text("house"),
        value.text("city"),
        value.text("dates"),
        value.text("code"),
        value.text("consignor"),
        value.get("venues").map(v -> list(v, PartsFromJson::words)).orElse(List.of()));
  }

  private static Edition.Archive archive(Members value) {
    return new Edition.Archive(
        needed(value, "repository"),
        value.text("shelfMark"),
        value.text("firm"),
        value.text("foliatedBy"),
        value.text("degree"));
  }

  private static Edition.Online online(Members value) {
    return new Edition.Online(needed(value, "url"), value.text("accessed"), value.text("archived"));
  }

  private static Members members(Json value) {
    if (value instanceof Members members) {
      return members;
    }
    throw new NotOurs();
  }

  private static String needed(Json value, String name) {
    return members(value).text(name).orElseThrow(NotOurs::new);
  }

  private static String words(Json value) {
    return value.asText().orElseThrow(NotOurs::new);
  }

  private static Optional<String> text(Json value) {
    return value.equals(Json.nothing()) ? Optional.empty() : Optional.of(words(value));
  }

  private static OptionalInt number(Json value) {
    return value.equals(Json.nothing())
        ? OptionalInt.empty()
        : OptionalInt.of(Integer.parseInt(words(value)));
  }

  private static OptionalInt number(Json value, String name) {
    return members(value).get(name).map(PartsFromJson::number).orElse(OptionalInt.empty());
  }

  private static <T> Optional<T> object(Json value, Function<Members, T> read) {
    return value.equals(Json.nothing())
        ? Optional.empty()
        : Optional.of(read.apply(members(value)));
  }

  private static <T> List<T> list(Json value, Function<Json, T> read) {
    if (!(value instanceof Items items)) {
      throw new NotOurs();
    }
    List<T> all = new ArrayList<>();
    items.items().forEach(each -> all.add(read.apply(each)));
    return all;
  }

  private static <E extends Coded> E code(E[] all, String code) {
    for (E each : all) {
      if (each.code().equals(code)) {
        return each;
      }
    }
    throw new NotOurs();
  }
}
