package merese.store;

import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Lineage;
import merese.model.Edition.Occasion;
import merese.model.Edition.Online;
import merese.model.Edition.PlateChange;

/** What an edition says of its descent, of what contains it and of where it is kept. */
final class EditionParts {
  static final Codec<Lineage> LINEAGE = new Lineages();
  static final Codec<Container> CONTAINER = new Containers();
  static final Codec<Occasion> OCCASION = new Occasions();
  static final Codec<Archive> ARCHIVE = new Archives();
  static final Codec<Online> ONLINE = new Onlines();

  private EditionParts() {}

  private static final class Lineages implements Codec<Lineage> {
    private static final Codes<Lineage.Form> FORM = new Codes<>("a form", Lineage.Form.values());

    @Override
    public Lineage read(Fields in) {
      return new Lineage(
          in.code("form", FORM),
          in.optionalText("parent"),
          in.optionalNumber("originalYear"),
          in.optionalText("newMatter"),
          in.list("plates", Plates.CODEC));
    }

    @Override
    public void write(Lineage lineage, ObjectBuilder out) {
      out.code("form", lineage.form());
      out.text("parent", lineage.parent());
      out.number("originalYear", lineage.originalYear());
      out.text("newMatter", lineage.newMatter());
      out.list("plates", lineage.plates(), Plates.CODEC);
    }
  }

  private static final class Plates implements Codec<PlateChange> {
    static final Plates CODEC = new Plates();

    private static final Codes<PlateChange.Fate> FATE =
        new Codes<>("a picture's fate", PlateChange.Fate.values());

    @Override
    public PlateChange read(Fields in) {
      return new PlateChange(
          in.text("picture"),
          in.optionalLocator("locator"),
          in.code("fate", FATE),
          in.optionalText("words"));
    }

    @Override
    public void write(PlateChange plate, ObjectBuilder out) {
      out.text("picture", plate.picture());
      out.locator("locator", plate.locator());
      out.code("fate", plate.fate());
      out.text("words", plate.words());
    }
  }

  private static final class Containers implements Codec<Container> {
    @Override
    public Container read(Fields in) {
      return new Container(
          in.text("title"),
          in.optionalText("society"),
          in.optionalText("volume"),
          in.optionalText("part"),
          in.optionalText("issue"),
          in.optionalNumber("coverYear"),
          in.optionalLocator("pages"));
    }

    @Override
    public void write(Container container, ObjectBuilder out) {
      out.text("title", container.title());
      out.text("society", container.society());
      out.text("volume", container.volume());
      out.text("part", container.part());
      out.text("issue", container.issue());
      out.number("coverYear", container.coverYear());
      out.locator("pages", container.pages());
    }
  }

  private static final class Occasions implements Codec<Occasion> {
    @Override
    public Occasion read(Fields in) {
      return new Occasion(
          in.optionalText("house"),
          in.optionalText("city"),
          in.optionalText("dates"),
          in.optionalText("code"),
          in.optionalText("consignor"),
          in.texts("venues"));
    }

    @Override
    public void write(Occasion occasion, ObjectBuilder out) {
      out.text("house", occasion.house());
      out.text("city", occasion.city());
      out.text("dates", occasion.dates());
      out.text("code", occasion.code());
      out.text("consignor", occasion.consignor());
      out.texts("venues", occasion.venues());
    }
  }

  private static final class Archives implements Codec<Archive> {
    @Override
    public Archive read(Fields in) {
      return new Archive(
          in.text("repository"),
          in.optionalText("shelfMark"),
          in.optionalText("firm"),
          in.optionalText("foliatedBy"),
          in.optionalText("degree"));
    }

    @Override
    public void write(Archive archive, ObjectBuilder out) {
      out.text("repository", archive.repository());
      out.text("shelfMark", archive.shelfMark());
      out.text("firm", archive.firm());
      out.text("foliatedBy", archive.foliatedBy());
      out.text("degree", archive.degree());
    }
  }

  private static final class Onlines implements Codec<Online> {
    @Override
    public Online read(Fields in) {
      return new Online(in.text("url"), in.optionalText("accessed"), in.optionalText("archived"));
    }

    @Override
    public void write(Online online, ObjectBuilder out) {
      out.text("url", online.url());
      out.text("accessed", online.accessed());
      out.text("archived", online.archived());
    }
  }
}
