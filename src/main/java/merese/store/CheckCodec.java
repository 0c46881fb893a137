package merese.store;

import merese.model.Check;

/** An entry of the check log. */
final class CheckCodec implements Codec<Check> {
  static final CheckCodec CHECK = new CheckCodec();

  private static final Codes<Check.Method> METHOD = new Codes<>("a method", Check.Method.values());
  private static final Codes<Check.Result> RESULT = new Codes<>("a result", Check.Result.values());

  private CheckCodec() {}

  @Override
  public Check read(Fields in) {
    return new Check(
        in.text("concept"),
        in.optionalLocator("extent"),
        in.code("method", METHOD),
        in.code("result", RESULT),
        in.optionalObject("scope", ScopeCodec.SCOPE),
        in.optionalDate("on"),
        in.optionalText("by"),
        in.optionalText("copy"));
  }

  @Override
  public void write(Check check, ObjectBuilder out) {
    out.text("concept", check.concept());
    out.locator("extent", check.extent());
    out.code("method", check.method());
    out.code("result", check.result());
    out.object("scope", check.scope(), ScopeCodec.SCOPE);
    out.date("on", check.on());
    out.text("by", check.by());
    out.text("copy", check.copy());
  }
}
