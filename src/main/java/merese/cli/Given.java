package merese.cli;

import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;

/** What the user typed for one option or word; known once the words have been read. */
final class Given<T> {
  private final ArgSpec spec;

  Given(ArgSpec spec) {
    this.spec = spec;
  }

  /** Empty when it was left out. */
  Optional<T> value() {
    return Optional.ofNullable(spec.getValue());
  }

  /** For what picocli lets nobody leave out. */
  T required() {
    return value().orElseThrow();
  }

  /** Whether a flag was typed. */
  boolean isSet() {
    return Boolean.TRUE.equals(spec.getValue());
  }
}
