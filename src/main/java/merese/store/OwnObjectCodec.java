package merese.store;

import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Photograph;

/** The file of one of the user's own pieces. */
final class OwnObjectCodec implements Codec<OwnObject> {
  static final OwnObjectCodec OBJECT = new OwnObjectCodec();

  private OwnObjectCodec() {}

  @Override
  public OwnObject read(Fields in) {
    return new OwnObject(
        in.text("ref"),
        in.text("title"),
        in.optionalText("measurements"),
        in.optionalText("provenance"),
        in.optionalText("place"),
        in.list("evidence", Evidences.CODEC),
        in.list("observations", Observations.CODEC),
        in.list("photographs", Photographs.CODEC));
  }

  @Override
  public void write(OwnObject object, ObjectBuilder out) {
    out.text("ref", object.ref());
    out.text("title", object.title());
    out.text("measurements", object.measurements());
    out.text("provenance", object.provenance());
    out.text("place", object.place());
    out.list("evidence", object.evidence(), Evidences.CODEC);
    out.list("observations", object.observations(), Observations.CODEC);
    out.list("photographs", object.photographs(), Photographs.CODEC);
  }

  private static final class Evidences implements Codec<Evidence> {
    static final Evidences CODEC = new Evidences();

    private static final Codes<Evidence.Kind> KIND =
        new Codes<>("a kind of evidence", Evidence.Kind.values());

    @Override
    public Evidence read(Fields in) {
      return new Evidence(
          in.text("concept"),
          in.code("kind", KIND),
          in.optionalText("words"),
          in.optionalText("photo"));
    }

    @Override
    public void write(Evidence evidence, ObjectBuilder out) {
      out.text("concept", evidence.concept());
      out.code("kind", evidence.kind());
      out.text("words", evidence.words());
      out.text("photo", evidence.photo());
    }
  }

  private static final class Observations implements Codec<Observation> {
    static final Observations CODEC = new Observations();

    private static final Codes<Observation.Sense> SENSE =
        new Codes<>("a sense", Observation.Sense.values());

    @Override
    public Observation read(Fields in) {
      return new Observation(
          in.text("part"),
          in.text("character"),
          in.optionalText("value"),
          in.code("sense", SENSE),
          in.flag("found", true),
          in.optionalText("photo"));
    }

    @Override
    public void write(Observation observation, ObjectBuilder out) {
      out.text("part", observation.part());
      out.text("character", observation.character());
      out.text("value", observation.value());
      out.code("sense", observation.sense());
      out.flag("found", observation.found(), true);
      out.text("photo", observation.photo());
    }
  }

  private static final class Photographs implements Codec<Photograph> {
    static final Photographs CODEC = new Photographs();

    @Override
    public Photograph read(Fields in) {
      return new Photograph(
          in.text("id"), in.text("file"), in.optionalText("words"), in.optionalText("turn"));
    }

    @Override
    public void write(Photograph photograph, ObjectBuilder out) {
      out.text("id", photograph.id());
      out.text("file", photograph.file());
      out.text("words", photograph.words());
      out.text("turn", photograph.turn());
    }
  }
}
