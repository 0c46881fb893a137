package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.time.Span.End;
import merese.time.Span.On;
import merese.time.Span.Open;
import merese.time.Span.Unknown;

/** From one date to another; either may be open or unknown, but not both unknown. */
record EdtfInterval(Side start, Side end) implements Edtf {
  /** One side of the stroke, or of the two dots in a set. */
  sealed interface Side permits Dated, Undated {
    int level();

    String printed();
  }

  record Dated(EdtfPoint point) implements Side {
    @Override
    public int level() {
      return point.levelInInterval();
    }

    @Override
    public String printed() {
      return point.printed();
    }
  }

  /** Not given: open, or else unknown. */
  record Undated(boolean isOpen) implements Side {
    @Override
    public int level() {
      return 1;
    }

    @Override
    public String printed() {
      return isOpen ? ".." : "";
    }
  }

  @Override
  public int level() {
    return Math.max(start.level(), end.level());
  }

  @Override
  public Span core() {
    return span(start, end, Optional.empty());
  }

  @Override
  public Span outer(Circa circa) {
    return span(start, end, Optional.of(circa));
  }

  /** The plain reading, or a generous one where a profile is given. */
  static Span span(Side start, Side end, Optional<Circa> circa) {
    Optional<Span> first = known(start, circa);
    Optional<Span> last = known(end, circa);
    return new Span(
        first.isPresent() ? first.get().from() : undated(start, last, true),
        last.isPresent() ? last.get().to() : undated(end, first, false));
  }

  private static Optional<Span> known(Side side, Optional<Circa> circa) {
    if (!(side instanceof Dated dated)) {
      return Optional.empty();
    }
    EdtfPoint point = dated.point();
    return Optional.of(circa.isPresent() ? point.outer(circa.get()) : point.core());
  }

  /** An unknown end reaches, at the least, as far as the other side does by itself. */
  private static End undated(Side side, Optional<Span> other, boolean isStart) {
    if (side instanceof Undated undated && undated.isOpen()) {
      return new Open();
    }
    if (other.isEmpty()) {
      return new Unknown(Optional.empty());
    }
    End reached = isStart ? other.get().from() : other.get().to();
    return new Unknown(Optional.of(((On) reached).day()));
  }

  @Override
  public Qualification qualification(Unit unit) {
    return qualification(parts(), unit);
  }

  static Qualification qualification(List<Edtf> parts, Unit unit) {
    Qualification all = Qualification.NONE;
    for (Edtf part : parts) {
      all = all.and(part.qualification(unit));
    }
    return all;
  }

  @Override
  public List<Edtf> parts() {
    List<Edtf> known = new ArrayList<>();
    addKnown(start, known);
    addKnown(end, known);
    return List.copyOf(known);
  }

  static void addKnown(Side side, List<Edtf> known) {
    if (side instanceof Dated dated) {
      known.add(dated.point());
    }
  }

  @Override
  public String printed() {
    return start.printed() + "/" + end.printed();
  }
}
