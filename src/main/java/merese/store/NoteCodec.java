package merese.store;

import merese.model.Claim;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Note.Checked;
import merese.model.Note.ObjectLink;
import merese.model.Place;

/**
 * A note with all that is inside it. In a "quotation" a bar is the end of a page, and two bars are
 * one of the source's own ({@link merese.model.QuotedText}).
 */
final class NoteCodec implements Codec<Note> {
  static final NoteCodec NOTE = new NoteCodec();

  private NoteCodec() {}

  @Override
  public Note read(Fields in) {
    return new Note(
        in.text("id"),
        in.list("namings", Namings.CODEC),
        in.list("places", Places.CODEC),
        in.list("claims", Claims.CODEC),
        in.optionalText("quotation"),
        in.optionalText("reading"),
        in.optionalText("part"),
        in.optionalObject("object", ObjectLinks.CODEC),
        in.optionalObject("rights", RightsCodec.RIGHTS),
        in.optionalObject("checked", Checkeds.CODEC));
  }

  @Override
  public void write(Note note, ObjectBuilder out) {
    out.text("id", note.id());
    out.list("namings", note.namings(), Namings.CODEC);
    out.list("places", note.places(), Places.CODEC);
    out.list("claims", note.claims(), Claims.CODEC);
    out.text("quotation", note.quotation());
    out.text("reading", note.reading());
    out.text("part", note.part());
    out.object("object", note.object(), ObjectLinks.CODEC);
    out.object("rights", note.rights(), RightsCodec.RIGHTS);
    out.object("checked", note.checked(), Checkeds.CODEC);
  }

  private static final class Namings implements Codec<Naming> {
    static final Namings CODEC = new Namings();

    private static final Codes<Naming.Why> WHY = new Codes<>("a reason", Naming.Why.values());

    @Override
    public Naming read(Fields in) {
      return new Naming(
          in.textOrEmpty("printed"), in.optionalText("concept"), in.optionalCode("why", WHY));
    }

    @Override
    public void write(Naming naming, ObjectBuilder out) {
      out.text("printed", naming.printed());
      out.text("concept", naming.concept());
      out.code("why", naming.why());
    }
  }

  private static final class Places implements Codec<Place> {
    static final Places CODEC = new Places();

    private static final Codes<Place.Stance> STANCE =
        new Codes<>("a stance", Place.Stance.values());
    private static final Codes<Place.Medium> MEDIUM =
        new Codes<>("a medium", Place.Medium.values());
    private static final Codes<Place.Shows> SHOWS =
        new Codes<>("what a picture shows", Place.Shows.values());

    @Override
    public Place read(Fields in) {
      return new Place(
          in.locator("locator"),
          in.code("stance", STANCE),
          in.code("medium", MEDIUM),
          in.optionalCode("shows", SHOWS),
          in.optionalTextOrEmpty("naming"),
          in.optionalText("picture"),
          in.optionalText("piece"),
          in.optionalObject("corrects", Correcteds.CODEC),
          in.optionalText("photo"));
    }

    @Override
    public void write(Place place, ObjectBuilder out) {
      out.locator("locator", place.locator());
      out.code("stance", place.stance());
      out.code("medium", place.medium());
      out.code("shows", place.shows());
      out.textOrEmpty("naming", place.naming());
      out.text("picture", place.picture());
      out.text("piece", place.piece());
      out.object("corrects", place.corrects(), Correcteds.CODEC);
      out.text("photo", place.photo());
    }
  }

  private static final class Correcteds implements Codec<Place.Corrected> {
    static final Correcteds CODEC = new Correcteds();

    @Override
    public Place.Corrected read(Fields in) {
      return new Place.Corrected(in.text("edition"), in.optionalLocator("locator"));
    }

    @Override
    public void write(Place.Corrected corrected, ObjectBuilder out) {
      out.text("edition", corrected.edition());
      out.locator("locator", corrected.locator());
    }

    @Override
    public String example() {
      return "{ \"edition\": \"…\", \"locator\": \"…\" }";
    }
  }

  private static final class Claims implements Codec<Claim> {
    static final Claims CODEC = new Claims();

    private static final Codes<Claim.About> ABOUT =
        new Codes<>("what a claim is about", Claim.About.values());

    @Override
    public Claim read(Fields in) {
      return new Claim(
          in.code("kind", CLAIM_KIND),
          in.text("words"),
          in.optionalText("value"),
          in.optionalText("hedge"),
          in.optionalText("bracket"),
          in.code("about", ABOUT, Claim.About.FEATURE),
          in.optionalLocator("locator"));
    }

    @Override
    public void write(Claim claim, ObjectBuilder out) {
      out.code("kind", claim.kind());
      out.text("words", claim.words());
      out.text("value", claim.value());
      out.text("hedge", claim.hedge());
      out.text("bracket", claim.bracket());
      if (claim.about() != Claim.About.FEATURE) {
        out.code("about", claim.about());
      }
      out.locator("locator", claim.locator());
    }
  }

  static final Codes<Claim.Kind> CLAIM_KIND = new Codes<>("a kind of claim", Claim.Kind.values());

  private static final class ObjectLinks implements Codec<ObjectLink> {
    static final ObjectLinks CODEC = new ObjectLinks();

    private static final Codes<ObjectLink.Sameness> SAMENESS =
        new Codes<>("a sameness", ObjectLink.Sameness.values());

    @Override
    public ObjectLink read(Fields in) {
      return new ObjectLink(
          in.text("ref"), in.code("sameness", SAMENESS), in.optionalText("evidence"));
    }

    @Override
    public void write(ObjectLink link, ObjectBuilder out) {
      out.text("ref", link.ref());
      out.code("sameness", link.sameness());
      out.text("evidence", link.evidence());
    }
  }

  private static final class Checkeds implements Codec<Checked> {
    static final Checkeds CODEC = new Checkeds();

    @Override
    public Checked read(Fields in) {
      return new Checked(in.text("by"), in.optionalDate("on"));
    }

    @Override
    public void write(Checked checked, ObjectBuilder out) {
      out.text("by", checked.by());
      out.date("on", checked.on());
    }
  }
}
