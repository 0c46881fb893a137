package merese.shelf;

import java.util.Optional;
import merese.model.PictureRights;
import merese.model.PictureRights.Layer;
import merese.model.PictureRights.Status;

/** Rights in a picture as the index holds them. */
final class PackedRights {
  private static final Status[] STATUSES = Status.values();

  private PackedRights() {}

  static void pack(Packer to, Optional<PictureRights> rights) {
    to.flag(rights.isPresent());
    if (rights.isPresent()) {
      layer(to, rights.get().book());
      layer(to, rights.get().photograph());
      layer(to, rights.get().owner());
      to.text(rights.get().credit()).text(rights.get().words());
    }
  }

  private static void layer(Packer to, Optional<Layer> layer) {
    to.flag(layer.isPresent());
    if (layer.isPresent()) {
      Layer of = layer.get();
      to.text(of.holder()).constant(of.status()).text(of.terms()).text(of.by());
      to.text(PackedNote.date(of.on()));
    }
  }

  static Optional<PictureRights> unpack(Unpacker from) {
    return from.flag()
        ? Optional.of(
            new PictureRights(
                layer(from), layer(from), layer(from), from.optionalText(), from.optionalText()))
        : Optional.empty();
  }

  private static Optional<Layer> layer(Unpacker from) {
    return from.flag()
        ? Optional.of(
            new Layer(
                from.optionalText(),
                from.optionalConstant(STATUSES),
                from.optionalText(),
                from.optionalText(),
                PackedNote.date(from)))
        : Optional.empty();
  }
}
