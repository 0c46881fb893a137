package merese.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.model.Check;
import merese.model.Claim;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.model.Scope;
import merese.shelf.NoteSketch.Name;

/** Notes and lines of check logs as the index holds them. */
final class PackedNote {
  private static final Naming.Why[] WHYS = Naming.Why.values();
  private static final Place.Stance[] STANCES = Place.Stance.values();
  private static final Place.Medium[] MEDIA = Place.Medium.values();
  private static final Place.Shows[] SHOWN = Place.Shows.values();
  private static final Claim.Kind[] KINDS = Claim.Kind.values();
  private static final Claim.About[] SUBJECTS = Claim.About.values();
  private static final Note.ObjectLink.Sameness[] SAMENESS = Note.ObjectLink.Sameness.values();
  private static final Check.Method[] METHODS = Check.Method.values();
  private static final Check.Result[] RESULTS = Check.Result.values();

  private PackedNote() {}

  /** What the index holds of a note; {@code mayMean} as in {@link SourcedNote}. */
  record Unpacked(Note note, Map<String, List<String>> mayMean) {}

  static byte[] pack(Note note, Map<String, List<String>> mayMean) {
    Packer to = new Packer().number(mayMean.size());
    for (Map.Entry<String, List<String>> each : mayMean.entrySet()) {
      to.text(each.getKey()).texts(each.getValue());
    }
    to.number(note.namings().size());
    for (Naming naming : note.namings()) {
      to.text(naming.printed()).text(naming.concept()).constant(naming.why());
      to.number(Name.places(note, naming));
    }
    to.text(note.id());
    to.list(note.places(), PackedNote::place);
    to.list(note.claims(), PackedNote::claim);
    to.text(note.quotation()).text(note.reading()).text(note.part());
    to.flag(note.object().isPresent());
    if (note.object().isPresent()) {
      Note.ObjectLink link = note.object().get();
      to.text(link.ref()).constant(link.sameness()).text(link.evidence());
    }
    PackedRights.pack(to, note.rights());
    to.flag(note.checked().isPresent());
    if (note.checked().isPresent()) {
      to.text(note.checked().get().by()).text(date(note.checked().get().on()));
    }
    return to.toBytes();
  }

  private static void place(Packer to, Place place) {
    to.text(place.locator().toString());
    to.constant(place.stance()).constant(place.medium()).constant(place.shows());
    to.text(place.naming()).text(place.picture()).text(place.piece());
    to.flag(place.corrects().isPresent());
    if (place.corrects().isPresent()) {
      to.text(place.corrects().get().edition()).text(locator(place.corrects().get().locator()));
    }
    to.text(place.photo());
  }

  private static void claim(Packer to, Claim claim) {
    to.constant(claim.kind()).text(claim.words()).text(claim.value()).text(claim.hedge());
    to.text(claim.bracket()).constant(claim.about()).text(locator(claim.locator()));
  }

  static Unpacked unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    Map<String, List<String>> mayMean = mayMean(from);
    return new Unpacked(note(from), mayMean);
  }

  private static Map<String, List<String>> mayMean(Unpacker from) {
    int size = from.number();
    Map<String, List<String>> mayMean = size == 0 ? Map.of() : new HashMap<>();
    for (int left = size; left > 0; left--) {
      mayMean.put(from.text(), from.texts());
    }
    return mayMean;
  }

  /** Reads what a note says it is about, which comes first, and leaves the rest. */
  static NoteSketch.About about(byte[] bytes, RecurringTexts known) {
    Unpacker from = new Unpacker(bytes);
    Map<String, List<String>> mayMean = mayMean(from);
    int size = from.number();
    if (size == 1) {
      return new NoteSketch.About(List.of(name(from, known)), mayMean);
    }
    List<Name> namings = new ArrayList<>();
    for (int left = size; left > 0; left--) {
      namings.add(name(from, known));
    }
    return new NoteSketch.About(namings, mayMean);
  }

  private static Name name(Unpacker from, RecurringTexts known) {
    return new Name(
        from.text(known),
        from.flag() ? Optional.of(from.text(known)) : Optional.empty(),
        from.optionalConstant(WHYS),
        from.number());
  }

  private static Note note(Unpacker from) {
    List<Naming> namings = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      namings.add(new Naming(from.text(), from.optionalText(), from.optionalConstant(WHYS)));
      from.number(); // in what places
    }
    String id = from.text();
    List<Place> places = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      places.add(
          new Place(
              Locator.parse(from.text()),
              from.constant(STANCES),
              from.constant(MEDIA),
              from.optionalConstant(SHOWN),
              from.optionalText(),
              from.optionalText(),
              from.optionalText(),
              from.flag()
                  ? Optional.of(new Place.Corrected(from.text(), locator(from)))
                  : Optional.empty(),
              from.optionalText()));
    }
    List<Claim> claims = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      claims.add(
          new Claim(
              from.constant(KINDS),
              from.text(),
              from.optionalText(),
              from.optionalText(),
              from.optionalText(),
              from.constant(SUBJECTS),
              locator(from)));
    }
    return new Note(
        id,
        namings,
        places,
        claims,
        from.optionalText(),
        from.optionalText(),
        from.optionalText(),
        from.flag()
            ? Optional.of(
                new Note.ObjectLink(from.text(), from.constant(SAMENESS), from.optionalText()))
            : Optional.empty(),
        PackedRights.unpack(from),
        from.flag() ? Optional.of(new Note.Checked(from.text(), date(from))) : Optional.empty());
  }

  static byte[] pack(Check check) {
    Packer to = new Packer().text(check.concept()).text(locator(check.extent()));
    to.constant(check.method()).constant(check.result());
    to.flag(check.scope().isPresent());
    if (check.scope().isPresent()) {
      scope(to, check.scope().get());
    }
    return to.text(date(check.on())).text(check.by()).text(check.copy()).toBytes();
  }

  static Check unpackCheck(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    return new Check(
        from.text(),
        locator(from),
        from.constant(METHODS),
        from.constant(RESULTS),
        from.flag() ? Optional.of(scope(from)) : Optional.empty(),
        date(from),
        from.optionalText(),
        from.optionalText());
  }

  static void scope(Packer to, Scope scope) {
    to.text(scope.words()).texts(scope.places()).texts(scope.concepts());
  }

  static Scope scope(Unpacker from) {
    return new Scope(from.text(), from.texts(), from.texts());
  }

  private static Optional<String> locator(Optional<Locator> locator) {
    return locator.isPresent() ? Optional.of(locator.get().toString()) : Optional.empty();
  }

  private static Optional<Locator> locator(Unpacker from) {
    return from.flag() ? Optional.of(Locator.parse(from.text())) : Optional.empty();
  }

  static Optional<String> date(Optional<LocalDate> date) {
    return date.isPresent() ? Optional.of(date.get().toString()) : Optional.empty();
  }

  /** A date is kept as its digits: reading one with its own parser costs a start several ms. */
  static Optional<LocalDate> date(Unpacker from) {
    if (!from.flag()) {
      return Optional.empty();
    }
    String text = from.text();
    return Optional.of(
        LocalDate.of(
            Integer.parseInt(text.substring(0, text.length() - 6)),
            Integer.parseInt(text.substring(text.length() - 5, text.length() - 3)),
            Integer.parseInt(text.substring(text.length() - 2))));
  }
}
