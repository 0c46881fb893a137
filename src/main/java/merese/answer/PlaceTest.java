package merese.answer;

import merese.model.Place;
import merese.model.Place.Stance;

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
      return place.stance() == Stance.SAYS_ABSENT;
    }
  },
  /** Anything but a denial. */
  PRESENT {
    @Override
    public boolean holds(Place place) {
      return !ABSENCE.holds(place);
    }
  };

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
