package merese.store;

import java.util.Optional;
import merese.model.Concept.Label;

/** A label: a text alone, or an object where it has a scope or is used elsewhere too. */
final class LabelCodec implements Codec<Label> {
  static final LabelCodec LABEL = new LabelCodec();

  /** The key under which an object has what a text alone says. */
  static final String TEXT = "text";

  private LabelCodec() {}

  @Override
  public Label read(Fields in) {
    return new Label(in.text(TEXT), in.optionalText("scope"), in.flag("elsewhere", false));
  }

  @Override
  public void write(Label label, ObjectBuilder out) {
    out.text(TEXT, label.text());
    out.text("scope", label.scope());
    out.flag("elsewhere", label.elsewhere(), false);
  }

  @Override
  public Label fromText(String text) {
    return Label.of(text);
  }

  @Override
  public String asText(Label label) {
    Optional<String> scope = label.scope();
    return scope.isEmpty() && !label.elsewhere() ? label.text() : null;
  }
}
