package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.notes.TypedNote;
import merese.change.notes.TypedNote.Doing;
import merese.change.notes.TypedNote.TypedClaim;
import merese.model.Claim;
import merese.model.Note.ObjectLink;
import merese.model.Place.Shows;

/** The options of a note that say what a place shows and what the source claims there. */
final class NoteOptions {
  private final Given<Boolean> photo;
  private final Given<Boolean> drawing;
  private final Given<Boolean> caption;
  private final Given<Boolean> defines;
  private final Given<Boolean> notShown;
  private final Given<String> corrects;
  private final Given<String> shows;
  private final Given<List<String>> inText;
  private final Given<List<String>> inPictures;
  private final List<ClaimOption> claims = new ArrayList<>();
  private final Given<String> about;
  private final Given<String> reading;
  private final Given<String> part;
  private final Given<String> picture;
  private final Given<String> piece;
  private final Given<String> object;
  private final Given<String> same;

  private record ClaimOption(Claim.Kind kind, Given<List<String>> words) {}

  NoteOptions(Command command) {
    photo = command.flag("There is a photograph of it there.", "--pictured");
    drawing = command.flag("There is a drawing of it there.", "--drawing");
    caption = command.flag("The words are those of a caption.", "--caption");
    defines = command.flag("The source says there what the term means.", "--defines");
    notShown = command.flag("The source says that it does not show it.", "--not-shown");
    corrects =
        command.option(
            String.class,
            "SOURCE:LOCATOR",
            "The source corrects what stands in another place.",
            "--corrects");
    shows =
        command.option(
            String.class,
            "WHAT",
            "What the picture is: example, detail, profile or process.",
            "--shows");
    inText = command.options("LOCATOR", "Where the text speaks of it as well.", "--text");
    inPictures = command.options("LOCATOR", "Where it is pictured as well.", "--plate");
    claim(command, Claim.Kind.DATE, "WORDS", "The date that the source gives.", "--date");
    claim(command, Claim.Kind.PLACE, "WORDS", "Where it says that they were made.", "--place");
    claim(command, Claim.Kind.MAKER, "WORDS", "Whom it says they were made by.", "--maker");
    claim(command, Claim.Kind.METHOD, "WORDS", "How: applied, cut, blown, pressed.", "--method");
    claim(command, Claim.Kind.FREQUENCY, "WORDS", "How often they are met with.", "--frequency");
    claim(command, Claim.Kind.COPY_WARNING, "WORDS", "What it says of copies.", "--copies");
    about =
        command.option(
            String.class,
            "WHAT",
            "What the claims are about: feature (the usual case), object or copies.",
            "--about");
    reading = command.option(String.class, "TEXT", "What you make of it.", "--reading");
    part = command.option(String.class, "ID", "The entry or essay that it is in.", "--part");
    picture =
        command.option(
            String.class, "ID", "A name of the picture, for its other editions.", "--picture-id");
    piece =
        command.option(String.class, "ID", "A name of the piece, to pair its places.", "--piece");
    object =
        command.option(String.class, "REF", "A piece of your own that is like it.", "--object");
    same =
        command.option(
            String.class, "EVIDENCE", "Why it is that very piece of your own.", "--same");
  }

  private void claim(Command command, Claim.Kind kind, String label, String text, String name) {
    claims.add(new ClaimOption(kind, command.options(label, text, name)));
  }

  /**
   * @param named whether the source gives the feature a name there
   */
  TypedNote.Where where(String locator, boolean named) {
    return new TypedNote.Where(
        locator,
        doing(named),
        showing(),
        inText.value().orElse(List.of()),
        inPictures.value().orElse(List.of()),
        picture.value(),
        piece.value(),
        corrects.value());
  }

  private Doing doing(boolean named) {
    List<Doing> said = new ArrayList<>();
    add(photo.isSet(), Doing.PHOTO, said);
    add(drawing.isSet(), Doing.DRAWING, said);
    add(caption.isSet(), Doing.CAPTION, said);
    add(defines.isSet(), Doing.DEFINES, said);
    add(notShown.isSet(), Doing.SAYS_NOT_SHOWN, said);
    add(corrects.value().isPresent(), Doing.CORRECTS, said);
    if (said.size() > 1) {
      throw CommandException.wrongUse(
          "a place does one thing: give one of --pictured, --drawing, --caption, --defines,"
              + " --not-shown and --corrects; --text and --plate add further places");
    }
    return !said.isEmpty() ? said.get(0) : named ? Doing.NAMES : Doing.DESCRIBES_UNNAMED;
  }

  private static void add(boolean set, Doing doing, List<Doing> to) {
    if (set) {
      to.add(doing);
    }
  }

  /** What the places of a source's own list are. */
  Doing listing() {
    if (drawing.isSet() && photo.isSet()) {
      throw CommandException.wrongUse("give one of --pictured and --drawing");
    }
    return drawing.isSet()
        ? Doing.LISTS_WITH_DRAWINGS
        : photo.isSet() ? Doing.LISTS_WITH_PHOTOS : Doing.LISTS;
  }

  private Optional<Shows> showing() {
    if (shows.value().isEmpty()) {
      return Optional.empty();
    }
    for (Shows each : Shows.values()) {
      if (each.code().equals(shows.value().get())) {
        return Optional.of(each);
      }
    }
    throw CommandException.wrongUse(
        "--shows is example, detail, profile or process, not \"" + shows.value().get() + "\"");
  }

  List<TypedClaim> claims() {
    List<TypedClaim> typed = new ArrayList<>();
    Claim.About of = about();
    for (ClaimOption claim : claims) {
      for (String words : claim.words().value().orElse(List.of())) {
        if (words.isBlank()) {
          throw CommandException.wrongUse("a claim has no words; give what the source prints");
        }
        typed.add(new TypedClaim(claim.kind(), words, of));
      }
    }
    return typed;
  }

  private Claim.About about() {
    String typed = about.value().orElse(Claim.About.FEATURE.code());
    for (Claim.About each : Claim.About.values()) {
      if (each.code().equals(typed)) {
        return each;
      }
    }
    throw CommandException.wrongUse("--about is feature, object or copies, not \"" + typed + "\"");
  }

  Optional<ObjectLink> object() {
    if (object.value().isEmpty()) {
      if (same.value().isPresent()) {
        throw CommandException.wrongUse("--same needs --object, which says which piece it is");
      }
      return Optional.empty();
    }
    ObjectLink.Sameness sameness =
        same.value().isPresent() ? ObjectLink.Sameness.SAME : ObjectLink.Sameness.SIMILAR;
    return Optional.of(new ObjectLink(object.value().get(), sameness, same.value()));
  }

  Optional<String> reading() {
    return reading.value();
  }

  Optional<String> part() {
    return part.value();
  }
}
