package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> KEYS =
      List.of("quenby-1926", "quenby-1949", "quenby-neck-and-stopper", "tressick-1954", "ab");

  @Test
  void whatStartsSoComesFirstAndTheShortestOfThem() {
    assertEquals(List.of("quenby-1926", "quenby-1949"), Nearest.to("quen", KEYS, 2));
    assertEquals(List.of("quenby-1949"), Nearest.to("Quenby 1949", KEYS, 3));
    assertEquals(List.of("ab"), Nearest.to("a", KEYS, 3));
  }

  @Test
  void elseWhatIsFewestSlipsAwayAndElseWhatHoldsIt() {
    assertEquals(List.of("tressick-1954"), Nearest.to("tresick-1954", KEYS, 3));
    assertEquals(List.of("quenby-1926"), Nearest.to("quenby-1962", KEYS, 3));
    assertEquals(List.of("quenby-neck-and-stopper"), Nearest.to("stopper", KEYS, 3));
    assertEquals(List.of(), Nearest.to("zzzzzz", KEYS, 3));
    assertEquals(List.of(), Nearest.to("", KEYS, 3));
  }

  @Test
  void aSlipInThreeLettersIsAllowedAndNoMoreThanThree() {
    assertEquals(List.of("ring"), Nearest.bySlips("rin", List.of("ring", "wing")));
    assertEquals(List.of(), Nearest.bySlips("rn", List.of("ring")));
    assertEquals(List.of("abcdefghijkl"), Nearest.bySlips("abcdefghiXYZ", List.of("abcdefghijkl")));
    assertEquals(List.of(), Nearest.bySlips("abcdefghWXYZ", List.of("abcdefghijkl")));
  }
}
