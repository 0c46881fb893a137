package merese.answer.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.claims.ClaimsAnswer.Contradiction;
import merese.answer.claims.ClaimsAnswer.Contradictions;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Sense;

/**
 * Names claims that can't all be right: dates that do not meet even generously read, methods that
 * differ, and a place that one source calls the only one while another gives another. Only claims
 * about one and the same concept are held against each other, since kinds differ.
 */
final class Disagreements {
  private final List<Row> rows;
  private final Map<String, String> works;
  private final List<Contradiction> listed = new ArrayList<>();
  private int shown;
  private int count;

  private Disagreements(List<Row> rows, Map<String, String> works) {
    this.rows = rows;
    this.works = works;
  }

  /**
   * Among claims about the feature.
   *
   * @param works by a source's key, the work that it is an edition of
   */
  static Contradictions among(List<Row> rows, Map<String, String> works) {
    Disagreements found = new Disagreements(rows, works);
    for (int i = 0; i < rows.size(); i++) {
      found.name(i);
    }
    return new Contradictions(found.listed, found.count);
  }

  /** Names those that the claim at an index is against, and that have not been named with it. */
  private void name(int index) {
    Row one = rows.get(index);
    List<Row> otherWorks = new ArrayList<>();
    List<Row> sameWork = new ArrayList<>();
    for (int i = index + 1; i < rows.size(); i++) {
      Row other = rows.get(i);
      if (disagree(one, other)) {
        count++;
        if (shown < Contradictions.MOST) {
          shown++;
          (isSameWork(one, other) ? sameWork : otherWorks).add(other);
        }
      }
    }
    add(one, otherWorks, false);
    add(one, sameWork, true);
  }

  private void add(Row one, List<Row> against, boolean sameWork) {
    if (!against.isEmpty()) {
      listed.add(new Contradiction(one.kind(), one, against, sameWork));
    }
  }

  private boolean isSameWork(Row one, Row other) {
    return works.get(one.source().key()).equals(works.get(other.source().key()));
  }

  private static boolean disagree(Row one, Row other) {
    if (one.kind() != other.kind()
        || !one.concept().equals(other.concept())
        || one.source().key().equals(other.source().key()) && one.note().equals(other.note())) {
      return false;
    }
    return switch (one.kind()) {
      case DATE -> datesDisagree(one, other);
      case METHOD -> methodsDisagree(one.value(), other.value());
      case PLACE -> isAgainst(one, other) || isAgainst(other, one);
      default -> false;
    };
  }

  private static boolean datesDisagree(Row one, Row other) {
    return one.date().get().isRead()
        && other.date().get().isRead()
        && one.date().get().dates().isEmpty()
        && other.date().get().dates().isEmpty()
        && !Meeting.mayMeet(one.date().get().outer().get(), other.date().get().outer().get());
  }

  private static boolean methodsDisagree(Optional<String> one, Optional<String> other) {
    return one.isPresent() && other.isPresent() && !one.get().equals(other.get());
  }

  /** "Only Irish" against what gives another place without a hedge, or says it is not Irish. */
  private static boolean isAgainst(Row only, Row other) {
    if (only.place().get().sense() != Sense.ONLY) {
      return deniedBy(only, other);
    }
    Sense sense = other.place().get().sense();
    boolean firm = sense == Sense.PLAIN || sense == Sense.ONLY || sense == Sense.MAINLY;
    return firm && namesElsewhere(only.place().get().places(), other.place().get().places())
        || deniedBy(only, other);
  }

  private static boolean deniedBy(Row claiming, Row denying) {
    Sense sense = claiming.place().get().sense();
    boolean firm = sense == Sense.PLAIN || sense == Sense.ONLY || sense == Sense.MAINLY;
    for (String place : claiming.place().get().places()) {
      if (firm && denying.place().get().denied().contains(place)) {
        return true;
      }
    }
    return false;
  }

  private static boolean namesElsewhere(List<String> only, List<String> others) {
    for (String other : others) {
      boolean inside = false;
      for (String place : only) {
        inside |= PlaceNames.liesIn(other, place) || PlaceNames.liesIn(place, other);
      }
      if (!inside && !only.isEmpty()) {
        return true;
      }
    }
    return false;
  }
}
