package merese.desk.note;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import merese.desk.web.Typed;
import merese.exchange.UnreadableException;
import merese.exchange.picture.PictureCopy;

/**
 * Photographs that came with a form which could not be taken yet. A browser does not fill a file in
 * again, so without this whoever has to choose a meaning would have to look for the file twice.
 */
final class HeldPhotographs {
  /** In memory, a few megabytes each. */
  private static final int MOST = 4;

  /**
   * @param key by which the form names it when it is sent again
   * @param name what its file was called
   */
  record Held(String key, String name, PictureCopy picture) {}

  private final Map<String, Held> held = new LinkedHashMap<>();

  /**
   * The photograph of a form: one that is sent now, else one that came with it before.
   *
   * @throws WrongFieldException where it is no picture
   */
  Optional<Held> of(Context request, Typed typed) {
    UploadedFile sent = request.uploadedFile("photo");
    if (sent == null || sent.filename().isBlank()) {
      boolean unwanted = typed.has("no-photo");
      return unwanted ? Optional.empty() : kept(typed.get("held"));
    }
    try (InputStream in = sent.content()) {
      PictureCopy picture = PictureCopy.of(in.readAllBytes(), sent.filename());
      return Optional.of(keep(sent.filename(), picture));
    } catch (UnreadableException e) {
      throw new WrongFieldException("photo", e.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Optional<Held> kept(String key) {
    synchronized (held) {
      return Optional.ofNullable(held.get(key));
    }
  }

  private Held keep(String name, PictureCopy picture) {
    Held one = new Held(UUID.randomUUID().toString(), name, picture);
    synchronized (held) {
      held.put(one.key(), one);
      while (held.size() > MOST) {
        held.remove(held.keySet().iterator().next());
      }
    }
    return one;
  }

  /** It is in the library now. */
  void forget(Held one) {
    synchronized (held) {
      held.remove(one.key());
    }
  }
}
