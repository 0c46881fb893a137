package merese.shelf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Locator;
import merese.model.PageText;
import merese.vocabulary.NameOnPage;

/** Pages of books as the index holds them, less their texts, which few questions need. */
final class PackedPage {
  private PackedPage() {}

  /**
   * @param locator the printed one
   * @param cited how it is cited where it has none
   */
  record Unpacked(Optional<Locator> locator, String cited, List<NameOnPage> names) {}

  private record Spelling(String words, List<String> concepts) {}

  static byte[] pack(Optional<String> locator, String cited, List<NameOnPage> names) {
    Set<Spelling> known = new LinkedHashSet<>();
    List<NameOnPage> once = new ArrayList<>();
    for (NameOnPage name : names) {
      if (known.add(new Spelling(name.words(), name.concepts()))) {
        once.add(name);
      }
    }
    Packer to = new Packer().text(locator);
    if (locator.isEmpty()) {
      to.text(cited);
    }
    to.list(
        once,
        (p, name) ->
            p.text(name.words())
                .texts(name.concepts())
                .flag(name.doubtful())
                .flag(name.loose())
                .number(name.start())
                .number(name.end()));
    return to.toBytes();
  }

  static Unpacked unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    Optional<String> locator = from.optionalText();
    String cited = locator.isPresent() ? locator.get() : from.text();
    List<NameOnPage> names = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      names.add(
          new NameOnPage(
              from.text(), from.texts(), from.flag(), from.flag(), from.number(), from.number()));
    }
    return new Unpacked(
        locator.isPresent() ? Optional.of(Locator.parse(locator.get())) : Optional.empty(),
        cited,
        names);
  }

  /** What is known of a whole text. */
  static byte[] pack(PageText text) {
    return new Packer()
        .text(text.source())
        .text(text.file())
        .number(text.pages().size())
        .number(text.withoutText())
        .text(text.printedPages().map(Locator::printed))
        .number(text.unnumbered())
        .toBytes();
  }

  /**
   * @param from after the key of the source
   */
  static AttachedText unpackText(Source source, String file, Unpacker from) {
    return new AttachedText(
        source,
        file,
        from.text(),
        from.number(),
        from.number(),
        from.optionalText().map(Locator::parse),
        from.number());
  }

  /**
   * @param source the key of its edition
   */
  record Text(String source, int pages, int withoutText) {}

  static Text unpackText(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    String source = from.text();
    from.text();
    return new Text(source, from.number(), from.number());
  }
}
