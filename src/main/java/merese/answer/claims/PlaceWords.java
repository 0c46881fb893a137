package merese.answer.claims;

import java.util.List;
import java.util.Set;

/** Which places words name, by the names that {@link ClaimsAnswer.PlaceLine} has for them. */
public final class PlaceWords {
  private PlaceWords() {}

  public static Set<String> places(String words) {
    return PlaceNames.in(words, List.of());
  }
}
