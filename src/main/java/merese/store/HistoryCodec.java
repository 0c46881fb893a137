package merese.store;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** A change in the history; its number is the name of its file. */
final class HistoryCodec implements Codec<HistoryEntry> {
  private static final Codec<AlteredFile> FILE = new FileCodec();

  private final int number;

  HistoryCodec(int number) {
    this.number = number;
  }

  @Override
  public HistoryEntry read(Fields in) {
    return new HistoryEntry(
        number,
        time(in.text("at")),
        in.text("what"),
        in.optionalNumber("undoes"),
        in.list("files", FILE));
  }

  private static Instant time(String text) {
    try {
      return Scalars.time(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          Quote.of(text) + " is no time; write it as in 2025-03-02T09:15:00Z", e);
    }
  }

  @Override
  public void write(HistoryEntry entry, ObjectBuilder out) {
    out.text("at", Scalars.text(entry.at()));
    out.text("what", entry.what());
    out.number("undoes", entry.undoes());
    out.list("files", entry.files(), FILE);
  }

  private static final class FileCodec implements Codec<AlteredFile> {
    @Override
    public AlteredFile read(Fields in) {
      return new AlteredFile(
          in.text("file"),
          in.text("was"),
          in.text("is"),
          in.optionalNumber("from").orElse(0),
          in.optionalNumber("length").orElse(0),
          fragment(in, "before"),
          fragment(in, "after"));
    }

    private static Optional<Fragment> fragment(Fields in, String key) {
      Optional<String> bytes = in.optionalText(key + "-base64");
      Optional<String> text = in.optionalTextOrEmpty(key);
      return bytes.isPresent()
          ? Optional.of(new Fragment(bytes.get(), true))
          : text.map(t -> new Fragment(t, false));
    }

    @Override
    public void write(AlteredFile file, ObjectBuilder out) {
      out.text("file", file.file());
      out.text("was", file.was());
      out.text("is", file.is());
      if (!file.wasMade() && !file.wasDeleted()) {
        out.number("from", file.from());
        out.number("length", file.length());
      }
      fragment(out, "before", file.before());
      fragment(out, "after", file.after());
    }

    private static void fragment(ObjectBuilder out, String key, Optional<Fragment> fragment) {
      if (fragment.isPresent()) {
        String name = fragment.get().isBase64() ? key + "-base64" : key;
        out.textOrEmpty(name, Optional.of(fragment.get().text()));
      }
    }
  }
}
