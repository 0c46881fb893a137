package merese.store;

import merese.model.Scope;

final class ScopeCodec implements Codec<Scope> {
  static final ScopeCodec SCOPE = new ScopeCodec();

  private ScopeCodec() {}

  @Override
  public Scope read(Fields in) {
    return new Scope(in.text("words"), in.texts("places"), in.texts("concepts"));
  }

  @Override
  public void write(Scope scope, ObjectBuilder out) {
    out.text("words", scope.words());
    out.texts("places", scope.places());
    out.texts("concepts", scope.concepts());
  }
}
