package merese.shelf;

import java.util.Optional;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.ShortReference;
import merese.model.SourceKind;
import merese.model.Work;

/** What every question needs of an edition, as the index holds it. */
final class PackedSource {
  private static final SourceKind[] KINDS = SourceKind.values();

  private PackedSource() {}

  /**
   * @param filing its filing key
   */
  static byte[] pack(Work work, Edition edition, byte[] filing) {
    Packer to = new Packer().text(edition.key()).text(work.id()).text(work.title());
    to.text(ShortReference.of(work, edition)).constant(work.kind());
    to.number(edition.imprint().year()).flag(work.mine()).flag(edition.owned());
    to.text(whereabouts(edition)).flag(edition.scope().isPresent());
    if (edition.scope().isPresent()) {
      PackedNote.scope(to, edition.scope().get());
    }
    return to.bytes(filing).toBytes();
  }

  static Source.Brief unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    return new Source.Brief(
        from.text(),
        from.text(),
        from.text(),
        from.text(),
        from.constant(KINDS),
        from.optionalNumber(),
        from.flag(),
        from.flag(),
        from.optionalText(),
        from.flag() ? Optional.of(PackedNote.scope(from)) : Optional.empty(),
        from.bytes());
  }

  private static Optional<String> whereabouts(Edition edition) {
    Copy nearest = null;
    for (Copy copy : edition.copies()) {
      if (copy.own() && !copy.missing() && copy.lentTo().isEmpty()) {
        return Optional.empty();
      }
      if (nearest == null || copy.own() && !nearest.own()) {
        nearest = copy;
      }
    }
    if (nearest == null) {
      return Optional.empty();
    } else if (nearest.missing()) {
      return Optional.of("missing");
    } else if (nearest.lentTo().isPresent()) {
      return Optional.of("lent to " + nearest.lentTo().get());
    }
    return nearest.holder().map(holder -> "at " + holder);
  }
}
