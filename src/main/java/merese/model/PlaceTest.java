package merese.model;

import java.util.List;

/** Which places of a note belong to a group. */
public enum PlaceTest {
  /** Neither a denial (R3) nor a picture of how it is made. */
  COVERS {
    @Override
    public boolean holds(Place place) {
      return !ABSENCE.holds(place) && !PROCESS.holds(place);
    }
  },
  PROCESS {
    @Override
    public boolean holds(Place place) {
      return place.showsProcess();
    }
  },
  ABSENCE {
    @Override
    public boolean holds(Place place) {
      return place.stance() == Place.Stance.SAYS_ABSENT;
    }
  },
  /** Anything but a denial. */
  PRESENT {
    @Override
    public boolean holds(Place place) {
      return !ABSENCE.holds(place);
    }
  };

  /** All of them; the enum's own method copies them each time. */
  public static final List<PlaceTest> ALL = List.of(values());

  public abstract boolean holds(Place place);

  public boolean holdsForAny(Iterable<Place> places) {
    for (Place place : places) {
      if (holds(place)) {
        return true;
      }
    }
    return false;
  }
}
