package merese.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import merese.model.Check;
import merese.model.Claim;
import merese.model.Concept;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;

/** The notes and the check log of one edition of a union list. */
final class UnionNotes {
  private static final List<Check.Method> BY_HAND =
      List.of(Check.Method.READ, Check.Method.LEAFED, Check.Method.INDEX_ONLY);

  private static final String[] METHODS = {"applied", "cut", "blown", "pressed"};
  private static final String[] FREQUENCIES = {"rare", "common", "seldom met with", "scarce"};
  private static final String[] HEDGES = {"mainly", "only", "probably", "usually"};

  private final UnionWords words;
  private final UnionThesaurus thesaurus;
  private final Random random;
  private final int firstPage;
  private final int pages;

  /**
   * @param firstPage where the edition begins
   * @param pages how many it has
   */
  UnionNotes(UnionWords words, UnionThesaurus thesaurus, Random random, int firstPage, int pages) {
    this.words = words;
    this.thesaurus = thesaurus;
    this.random = random;
    this.firstPage = firstPage;
    this.pages = pages;
  }

  /**
   * @param number from 1
   */
  Note note(int number) {
    Concept concept = thesaurus.next(random);
    List<Naming> namings = new ArrayList<>();
    namings.add(naming(concept));
    if (one(12)) {
      Naming second = naming(thesaurus.next(random));
      if (!second.printed().equals(namings.get(0).printed())) {
        namings.add(second);
      }
    }
    List<Place> places = places(number);
    boolean inWords = !places.get(0).medium().isPicture();
    String printed = namings.get(0).printed();
    return new Note(
        "n" + number,
        namings,
        places,
        claims(),
        inWords && one(2) ? Optional.of(quotation(printed)) : Optional.empty(),
        one(3) ? Optional.of(words.text(random, 4 + random.nextInt(12))) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  /** One in ten has no meaning yet, and one in forty is pictured without a name. */
  private Naming naming(Concept concept) {
    String printed = thesaurus.printed(concept, random);
    if (one(10)) {
      String unknown = one(2) ? words.text(random, 2) : printed;
      return new Naming(unknown, Optional.empty(), Optional.empty());
    }
    Why why = Why.values()[random.nextInt(Why.values().length)];
    return new Naming(one(40) ? "" : printed, Optional.of(concept.id()), Optional.of(why));
  }

  private List<Place> places(int number) {
    List<Place> places = new ArrayList<>();
    int drawn = random.nextInt(100);
    if (drawn < 65) {
      Stance stance =
          drawn < 4
              ? Stance.SAYS_ABSENT
              : drawn < 8 ? Stance.DEFINES : drawn < 14 ? Stance.LISTS : Stance.NAMES;
      places.add(place(page(), stance, Medium.TEXT, Optional.empty()));
    }
    if (drawn >= 45) {
      Medium medium = one(3) ? Medium.DRAWING : Medium.PHOTO;
      Shows shows = one(8) ? Shows.values()[random.nextInt(4)] : Shows.EXAMPLE;
      places.add(place(picture(number), Stance.PICTURES, medium, Optional.of(shows)));
    }
    return places;
  }

  private static Place place(String locator, Stance stance, Medium medium, Optional<Shows> shows) {
    return new Place(
        Locator.parse(locator),
        stance,
        medium,
        shows,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private String page() {
    return "p. " + (firstPage + random.nextInt(pages));
  }

  private String picture(int number) {
    return switch (random.nextInt(3)) {
      case 0 -> "pl. " + (1 + random.nextInt(64)) + ", fig. " + (1 + random.nextInt(12));
      case 1 -> "fig. " + (number * 3 + random.nextInt(3));
      default -> page() + ", fig. " + (1 + random.nextInt(200));
    };
  }

  private String quotation(String printed) {
    return words.sentence(random, 3 + random.nextInt(12))
        + " "
        + InventedWords.capital(words.text(random, 2 + random.nextInt(8)))
        + (printed.isEmpty() ? "" : " " + printed)
        + " "
        + words.text(random, 2 + random.nextInt(14))
        + ".";
  }

  private List<Claim> claims() {
    List<Claim> claims = new ArrayList<>();
    if (one(4)) {
      claims.add(date());
    }
    if (one(9)) {
      String town = InventedWords.town(random);
      claims.add(claim(Claim.Kind.PLACE, "made at " + town, Optional.of(town)));
    }
    if (one(14)) {
      String method = METHODS[random.nextInt(METHODS.length)];
      claims.add(
          claim(Claim.Kind.METHOD, method + " " + words.text(random, 3), Optional.of(method)));
    }
    if (one(16)) {
      String often = FREQUENCIES[random.nextInt(FREQUENCIES.length)];
      claims.add(claim(Claim.Kind.FREQUENCY, often, Optional.empty()));
    }
    if (one(30)) {
      claims.add(
          claim(Claim.Kind.COPY_WARNING, "beware of " + words.text(random, 4), Optional.empty()));
    }
    return claims;
  }

  private Claim date() {
    int year = 1680 + random.nextInt(220);
    int end = year + 5 + random.nextInt(40);
    return switch (random.nextInt(5)) {
      case 0 -> claim(Claim.Kind.DATE, year + "–" + end, Optional.of(year + "/" + end));
      case 1 -> claim(Claim.Kind.DATE, "the " + year / 10 + "0s", Optional.empty());
      case 2 -> claim(Claim.Kind.DATE, "before " + end, Optional.empty());
      default -> claim(Claim.Kind.DATE, "c. " + year, Optional.of(year + "~"));
    };
  }

  private Claim claim(Claim.Kind kind, String claimed, Optional<String> value) {
    return new Claim(
        kind,
        claimed,
        value,
        one(6) ? Optional.of(HEDGES[random.nextInt(HEDGES.length)]) : Optional.empty(),
        Optional.empty(),
        Claim.About.FEATURE,
        Optional.empty());
  }

  /** One source in eight has been looked through, for one to three concepts. */
  List<Check> checks() {
    Map<String, Check> checks = new LinkedHashMap<>();
    if (one(8)) {
      for (int left = 1 + random.nextInt(3); left > 0; left--) {
        String concept = thesaurus.next(random).id();
        checks.putIfAbsent(concept, check(concept));
      }
    }
    return List.copyOf(checks.values());
  }

  private Check check(String concept) {
    boolean part = one(3) && pages > 4;
    String extent = "pp. " + firstPage + "–" + (firstPage + pages / 2);
    return new Check(
        concept,
        part ? Optional.of(Locator.parse(extent)) : Optional.empty(),
        BY_HAND.get(random.nextInt(BY_HAND.size())),
        one(4) ? Check.Result.FOUND : Check.Result.NONE,
        Optional.empty(),
        Optional.of(LocalDate.of(2015 + random.nextInt(10), 1 + random.nextInt(12), 1)),
        Optional.empty(),
        Optional.empty());
  }
}
