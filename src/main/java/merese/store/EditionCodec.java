package merese.store;

import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Edition.OwnTitle;
import merese.model.Edition.Part;

/** An edition; its imprint has no object of its own. What is longer is in {@link EditionParts}. */
final class EditionCodec implements Codec<Edition> {
  static final EditionCodec EDITION = new EditionCodec();

  private EditionCodec() {}

  @Override
  public Edition read(Fields in) {
    return new Edition(
        in.text("key"),
        readImprint(in),
        in.optionalObject("lineage", EditionParts.LINEAGE),
        in.optionalObject("container", EditionParts.CONTAINER),
        in.optionalObject("occasion", EditionParts.OCCASION),
        in.optionalObject("archive", EditionParts.ARCHIVE),
        in.optionalObject("online", EditionParts.ONLINE),
        in.optionalObject("scope", ScopeCodec.SCOPE),
        in.list("parts", Parts.CODEC),
        in.list("copies", Copies.CODEC),
        in.list("notes", NoteCodec.NOTE),
        in.list("checks", CheckCodec.CHECK),
        in.list("received", ReceivedCodec.RECEIVED));
  }

  private static Imprint readImprint(Fields in) {
    return new Imprint(
        in.optionalText("title").map(title -> new OwnTitle(title, in.optionalText("subtitle"))),
        in.optionalText("statement"),
        in.optionalNumber("number"),
        in.optionalNumber("year"),
        in.optionalText("yearPrinted"),
        in.texts("places"),
        in.optionalText("publisher"),
        in.optionalNumber("volumes"),
        in.optionalText("series"),
        in.list("identifiers", IdentifierCodec.IDENTIFIER),
        in.optionalText("notedAs"));
  }

  @Override
  public void write(Edition edition, ObjectBuilder out) {
    out.text("key", edition.key());
    writeImprint(edition.imprint(), out);
    out.object("lineage", edition.lineage(), EditionParts.LINEAGE);
    out.object("container", edition.container(), EditionParts.CONTAINER);
    out.object("occasion", edition.occasion(), EditionParts.OCCASION);
    out.object("archive", edition.archive(), EditionParts.ARCHIVE);
    out.object("online", edition.online(), EditionParts.ONLINE);
    out.object("scope", edition.scope(), ScopeCodec.SCOPE);
    out.list("parts", edition.parts(), Parts.CODEC);
    out.list("copies", edition.copies(), Copies.CODEC);
    out.list("notes", edition.notes(), NoteCodec.NOTE);
    out.list("checks", edition.checks(), CheckCodec.CHECK);
    out.list("received", edition.received(), ReceivedCodec.RECEIVED);
  }

  private static void writeImprint(Imprint imprint, ObjectBuilder out) {
    out.text("title", imprint.title().map(OwnTitle::title));
    out.text("subtitle", imprint.title().flatMap(OwnTitle::subtitle));
    out.text("statement", imprint.statement());
    out.number("number", imprint.number());
    out.number("year", imprint.year());
    out.text("yearPrinted", imprint.yearPrinted());
    out.texts("places", imprint.places());
    out.text("publisher", imprint.publisher());
    out.number("volumes", imprint.volumes());
    out.text("series", imprint.series());
    out.list("identifiers", imprint.identifiers(), IdentifierCodec.IDENTIFIER);
    out.text("notedAs", imprint.notedAs());
  }

  private static final class Parts implements Codec<Part> {
    static final Parts CODEC = new Parts();

    @Override
    public Part read(Fields in) {
      return new Part(
          in.text("id"),
          in.text("title"),
          in.list("authors", NameCodec.NAME),
          in.optionalLocator("extent"));
    }

    @Override
    public void write(Part part, ObjectBuilder out) {
      out.text("id", part.id());
      out.text("title", part.title());
      out.list("authors", part.authors(), NameCodec.NAME);
      out.locator("extent", part.extent());
    }
  }

  private static final class Copies implements Codec<Copy> {
    static final Copies CODEC = new Copies();

    @Override
    public Copy read(Fields in) {
      return new Copy(
          in.text("id"),
          in.optionalText("holder"),
          in.optionalText("shelfMark"),
          in.optionalText("lentTo"),
          in.flag("missing", false),
          in.optionalText("remark"));
    }

    @Override
    public void write(Copy copy, ObjectBuilder out) {
      out.text("id", copy.id());
      out.text("holder", copy.holder());
      out.text("shelfMark", copy.shelfMark());
      out.text("lentTo", copy.lentTo());
      out.flag("missing", copy.missing(), false);
      out.text("remark", copy.remark());
    }
  }
}
