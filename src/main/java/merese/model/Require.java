package merese.model;

/** The few checks that the model's constructors share. */
final class Require {
  private Require() {}

  static void text(String value, String what) {
    if (value == null || value.isBlank()) {
      throw new IllegalArgumentException(what + " must not be empty");
    }
  }

  static void that(boolean holds, String message) {
    if (!holds) {
      throw new IllegalArgumentException(message);
    }
  }
}
