package merese.model;

import java.util.Optional;

/**
 * One level of a single place, such as the plate of "pl. XII, fig. 3". The levels of a place stand
 * from the outermost to the innermost.
 */
public sealed interface LocatorLevel {

  /** What is counted. */
  LocatorKind kind();

  /** The singular label in the style that was typed ("pl.", "plate"); may be empty. */
  String label();

  /** The number; empty for what has none, such as a frontispiece or a moment of a film. */
  Optional<LocatorNumber> number();

  /** Where on the page or plate, in free words; empty if nothing is said. */
  String position();

  /** The level without label and position: "XII", "12r"; empty if there is no number. */
  String value();

  /** This level with another position. */
  LocatorLevel at(String place);

  /** Whether the level is printed without a comma after the one that holds it: "1:16", "151.3". */
  default boolean isJoined() {
    return label().equals(":") || label().equals(".");
  }

  /** The level as printed alone: "pl. XII (top left)". */
  default String printed() {
    String between = label().isEmpty() || value().isEmpty() || isJoined() ? "" : " ";
    return label().concat(between).concat(valueAndPosition());
  }

  /** The value with its position, as it is printed in a series under one label. */
  default String valueAndPosition() {
    if (position().isEmpty()) {
      return value();
    }
    return (value().isEmpty() && label().isEmpty() ? "" : value() + " ") + "(" + position() + ")";
  }

  /** Whether both mean the same place on their level, whatever label was typed. */
  default boolean sameAs(LocatorLevel other) {
    boolean sameNumber =
        number().isPresent() && other.number().isPresent()
            ? number().get().sameAs(other.number().get())
            : number().isEmpty() && other.number().isEmpty() && value().equals(other.value());
    return kind() == other.kind() && sameNumber && position().equals(other.position());
  }

  /** A level with a number. */
  record Numbered(LocatorKind kind, String label, LocatorNumber numeral, String position)
      implements LocatorLevel {
    @Override
    public Optional<LocatorNumber> number() {
      return Optional.of(numeral);
    }

    @Override
    public String value() {
      return numeral.printed();
    }

    @Override
    public LocatorLevel at(String place) {
      return new Numbered(kind, label, numeral, place);
    }
  }

  /** A leaf that is known by the page, plate or folio it faces: "plate facing p. 40". */
  record Facing(LocatorKind faced, String label, LocatorNumber numeral, String position)
      implements LocatorLevel {
    @Override
    public LocatorKind kind() {
      return LocatorKind.INSERT;
    }

    @Override
    public Optional<LocatorNumber> number() {
      return Optional.of(numeral);
    }

    @Override
    public String value() {
      return numeral.printed();
    }

    @Override
    public LocatorLevel at(String place) {
      return new Facing(faced, label, numeral, place);
    }

    @Override
    public boolean sameAs(LocatorLevel other) {
      return other instanceof Facing facing
          && faced == facing.faced
          && LocatorLevel.super.sameAs(other);
    }
  }

  /** A level without a number: frontispiece, endpapers, caption. */
  record Unnumbered(LocatorKind kind, String label, String position) implements LocatorLevel {
    @Override
    public Optional<LocatorNumber> number() {
      return Optional.empty();
    }

    @Override
    public String value() {
      return "";
    }

    @Override
    public LocatorLevel at(String place) {
      return new Unnumbered(kind, label, place);
    }
  }

  /**
   * A moment of a film or recording, or a stretch of it.
   *
   * @param from where it starts, in seconds
   * @param to where it ends, in seconds; the same as from for a moment
   */
  record Moment(int from, int to, String value, String position) implements LocatorLevel {
    @Override
    public LocatorKind kind() {
      return LocatorKind.TIMESTAMP;
    }

    @Override
    public String label() {
      return "";
    }

    @Override
    public Optional<LocatorNumber> number() {
      return Optional.empty();
    }

    @Override
    public LocatorLevel at(String place) {
      return new Moment(from, to, value, place);
    }
  }
}
