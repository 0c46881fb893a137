package merese.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.time.EdtfInterval.Side;

/**
 * Dates of which one is meant, or all.
 *
 * @param isOneOf true for square brackets
 */
record EdtfSet(boolean isOneOf, List<Member> members) implements Edtf {
  /** A date, then on both sides, or all from one to another. */
  record Member(Side from, Side to, boolean isRange) {
    String printed() {
      if (!isRange) {
        return from.printed();
      }
      return side(from) + ".." + side(to);
    }

    private static String side(Side side) {
      return side instanceof EdtfInterval.Dated ? side.printed() : "";
    }
  }

  EdtfSet {
    members = List.copyOf(members);
  }

  @Override
  public int level() {
    return 2;
  }

  @Override
  public Span core() {
    return span(Optional.empty());
  }

  @Override
  public Span outer(Circa circa) {
    return span(Optional.of(circa));
  }

  private Span span(Optional<Circa> circa) {
    Member first = members.get(0);
    Span all = EdtfInterval.span(first.from(), first.to(), circa);
    for (Member member : members) {
      all = all.hull(EdtfInterval.span(member.from(), member.to(), circa));
    }
    return all;
  }

  @Override
  public Qualification qualification(Unit unit) {
    return EdtfInterval.qualification(parts(), unit);
  }

  @Override
  public List<Edtf> parts() {
    List<Edtf> parts = new ArrayList<>();
    for (Member member : members) {
      EdtfInterval.addKnown(member.from(), parts);
      if (member.isRange()) {
        EdtfInterval.addKnown(member.to(), parts);
      }
    }
    return List.copyOf(parts);
  }

  @Override
  public String printed() {
    StringBuilder printed = new StringBuilder(isOneOf ? "[" : "{");
    for (int i = 0; i < members.size(); i++) {
      printed.append(i == 0 ? "" : ",").append(members.get(i).printed());
    }
    return printed.append(isOneOf ? "]" : "}").toString();
  }
}
