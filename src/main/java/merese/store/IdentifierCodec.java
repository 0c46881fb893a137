package merese.store;

import java.util.ArrayList;
import java.util.List;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/** An identifier stands under the name of its scheme: {@code {"isbn": "978-…"}}. */
final class IdentifierCodec implements Codec<Identifier> {
  static final IdentifierCodec IDENTIFIER = new IdentifierCodec();

  private IdentifierCodec() {}

  @Override
  public Identifier read(Fields in) {
    List<Scheme> schemes = new ArrayList<>();
    for (Scheme scheme : Scheme.values()) {
      if (in.has(scheme.code())) {
        schemes.add(scheme);
      }
    }
    if (schemes.size() > 1) {
      in.refuse("two numbers stand in one identifier; give each an object of its own");
    }
    Scheme scheme = schemes.isEmpty() ? Scheme.ISBN : schemes.get(0);
    return new Identifier(
        scheme,
        in.text(scheme.code()),
        in.optionalText("qualifier"),
        in.flag("wrongInPrint", false));
  }

  @Override
  public void write(Identifier identifier, ObjectBuilder out) {
    out.text(identifier.scheme().code(), identifier.value());
    out.text("qualifier", identifier.qualifier());
    out.flag("wrongInPrint", identifier.wrongInPrint(), false);
  }
}
