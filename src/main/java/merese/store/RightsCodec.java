package merese.store;

import java.util.Optional;
import merese.model.PictureRights;
import merese.model.PictureRights.Layer;
import merese.model.PictureRights.Status;

/** Rights in a picture; a text alone is what was noted in words. */
final class RightsCodec implements Codec<PictureRights> {
  static final RightsCodec RIGHTS = new RightsCodec();

  private RightsCodec() {}

  @Override
  public PictureRights read(Fields in) {
    return new PictureRights(
        in.optionalObject("book", Layers.CODEC),
        in.optionalObject("photograph", Layers.CODEC),
        in.optionalObject("owner", Layers.CODEC),
        in.optionalText("credit"),
        in.optionalText("words"));
  }

  @Override
  public void write(PictureRights rights, ObjectBuilder out) {
    out.object("book", rights.book(), Layers.CODEC);
    out.object("photograph", rights.photograph(), Layers.CODEC);
    out.object("owner", rights.owner(), Layers.CODEC);
    out.text("credit", rights.credit());
    out.text("words", rights.words());
  }

  @Override
  public PictureRights fromText(String text) {
    return PictureRights.ofWords(text);
  }

  @Override
  public String asText(PictureRights rights) {
    Optional<String> words = rights.words();
    boolean alone = rights.layers().isEmpty() && rights.credit().isEmpty();
    return alone ? words.orElse(null) : null;
  }

  @Override
  public String shape() {
    return "an object or a text";
  }

  @Override
  public String example() {
    return "{ \"photograph\": { \"holder\": \"…\", \"status\": \"asked\" } }";
  }

  private static final class Layers implements Codec<Layer> {
    static final Layers CODEC = new Layers();

    private static final Codes<Status> STATUS = new Codes<>("a status", Status.values());

    @Override
    public Layer read(Fields in) {
      return new Layer(
          in.optionalText("holder"),
          in.optionalCode("status", STATUS),
          in.optionalText("terms"),
          in.optionalText("by"),
          in.optionalDate("on"));
    }

    @Override
    public void write(Layer layer, ObjectBuilder out) {
      out.text("holder", layer.holder());
      out.code("status", layer.status());
      out.text("terms", layer.terms());
      out.text("by", layer.by());
      out.date("on", layer.on());
    }

    @Override
    public String example() {
      return "{ \"holder\": \"…\", \"status\": \"asked\" }";
    }
  }
}
