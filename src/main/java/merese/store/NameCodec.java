package merese.store;

import merese.model.Name;

/** A person has a "family" name, a society or firm is a "body". */
final class NameCodec implements Codec<Name> {
  static final NameCodec NAME = new NameCodec();

  private NameCodec() {}

  @Override
  public Name read(Fields in) {
    if (!in.has("body")) {
      return new Name.Person(
          in.text("family"),
          in.optionalText("given"),
          in.optionalText("particle"),
          in.optionalText("suffix"));
    }
    if (in.has("family")) {
      in.refuse("a name has both \"body\" and \"family\"; keep the one that is right");
    }
    return new Name.Body(in.text("body"));
  }

  @Override
  public void write(Name name, ObjectBuilder out) {
    if (name instanceof Name.Person person) {
      out.text("family", person.family());
      out.text("given", person.given());
      out.text("particle", person.particle());
      out.text("suffix", person.suffix());
    } else if (name instanceof Name.Body body) {
      out.text("body", body.name());
    }
  }
}
