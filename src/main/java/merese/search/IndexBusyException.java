package merese.search;

import java.nio.file.Path;
import merese.model.ForTheUser;

/** That another process is writing the index. */
public final class IndexBusyException extends RuntimeException implements ForTheUser {
  private static final long serialVersionUID = 1L;

  IndexBusyException(Path folder, Throwable cause) {
    super("another merese is bringing the index up to date: " + folder, cause);
  }
}
