package merese.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.json.AnswerJson;
import merese.change.objects.PieceChange;
import merese.change.objects.PieceChanged;
import merese.change.objects.PieceRequest;
import merese.change.objects.PieceRequest.Particulars;
import merese.change.vocabulary.ConceptNames;
import merese.model.Nearest;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Observation.Sense;
import merese.store.LibraryFolder;

/** Records pieces of the user's own. */
final class ObjectCommand extends LibraryCommand {
  private static final Set<String> PARTICULARS =
      Set.of("--title", "--measurements", "--provenance", "--place");

  private static final Map<String, Set<String>> OPERATIONS = new LinkedHashMap<>();

  static {
    OPERATIONS.put("add", PARTICULARS);
    OPERATIONS.put("describe", PARTICULARS);
    OPERATIONS.put(
        "observe", Set.of("--value", "--seen", "--felt", "--not-found", "--photo", "--instead"));
    OPERATIONS.put("evidence", Set.of("--as", "--words", "--photo"));
    OPERATIONS.put("photograph", Set.of("--id", "--words", "--turn"));
  }

  private final Map<String, Given<?>> all = new LinkedHashMap<>();

  private final Given<String> operation =
      word(String.class, "OPERATION", "add, describe, observe, evidence or photograph.");
  private final Given<String> ref = word(String.class, "REF", "What you call the piece: d-23.");
  private final Given<String> first =
      optionalWord(
          String.class,
          "PART",
          "observe: the part, as “lowest of three rings”. evidence: the concept. photograph: the"
              + " file; from outside the library a copy is kept, upright and without metadata.");
  private final Given<String> second =
      optionalWord(String.class, "CHARACTER", "observe: what was looked for, as “join”.");

  private final Given<String> title = text("TEXT", "What it is, in a line.", "--title");
  private final Given<String> measurements = text("TEXT", "As “height 205 mm”.", "--measurements");
  private final Given<String> provenance =
      text("TEXT", "Where it comes from and what the seller said; no claim.", "--provenance");
  private final Given<String> place =
      text("TEXT", "Where it is kept, as “cabinet 2, shelf 1”.", "--place");
  private final Given<String> value =
      text("TEXT", "observe: what it is like, as “sharp”.", "--value");
  private final Given<Boolean> seen = mark("observe: by eye, as without --felt.", "--seen");
  private final Given<Boolean> felt = mark("observe: by touch.", "--felt");
  private final Given<Boolean> notFound =
      mark("observe: looked for and not found, which rules nothing out.", "--not-found");
  private final Given<String> photo =
      text("ID", "The photograph that shows it, as p2 (observe, evidence).", "--photo");
  private final Given<Boolean> instead =
      mark("observe: in place of what is recorded of the same part and character.", "--instead");
  private final Given<String> as =
      text("KIND", "evidence: example (without this), counter-example or mixed.", "--as");
  private final Given<String> words =
      text("TEXT", "evidence: what of it; photograph: what it shows.", "--words");
  private final Given<String> id =
      text("ID", "photograph: what to call it; without this, the next of p1, p2 …", "--id");
  private final Given<String> turn =
      text("TEXT", "photograph: how to hold the piece so that it shows this.", "--turn");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  ObjectCommand(Context context) {
    super(
        context,
        "Record a piece of your own: what was seen and felt of it, and what it shows.\n"
            + "It says what somebody observed, not what a piece is.",
        "merese object add d-23 --title \"Pint decanter with one ring\"",
        "merese object observe d-23 \"lowest of three rings\" join --felt",
        "merese object observe d-23 rings \"mould seam\" --not-found",
        "merese object evidence d-23 \"bladed ring\" --as mixed --words \"sharp in front only\"",
        "merese object photograph d-23 front.jpg --words \"whole, front\"");
  }

  private Given<String> text(String name, String description, String option) {
    Given<String> given = option(String.class, name, description, option);
    all.put(option, given);
    return given;
  }

  private Given<Boolean> mark(String description, String option) {
    Given<Boolean> given = flag(description, option);
    all.put(option, given);
    return given;
  }

  @Override
  int run() {
    String what = operation.required().toLowerCase(Locale.ROOT);
    Operations.require(what, operation.required(), OPERATIONS, all);
    requireWords(what);
    LibraryFolder library = library();
    PieceChanged changed = PieceChange.apply(library, request(what, library));
    if (json.isSet()) {
      AnswerJson.print(context().out(), changed);
    } else {
      print(changed);
    }
    return ExitCode.DONE;
  }

  private void requireWords(String what) {
    int given = (first.value().isPresent() ? 1 : 0) + (second.value().isPresent() ? 1 : 0);
    int needed = what.equals("observe") ? 2 : PARTICULARS.equals(OPERATIONS.get(what)) ? 0 : 1;
    if (ref.required().isBlank() || blank(first) || blank(second)) {
      throw CommandException.wrongUse("a word is empty");
    } else if (given > needed) {
      String more = (given == 2 ? second : first).value().orElseThrow();
      throw CommandException.wrongUse("\"" + more + "\" is one word too many");
    } else if (given < needed) {
      throw CommandException.wrongUse(
          switch (what) {
            case "observe" -> "write the part and what was looked for after " + ref.required();
            case "evidence" -> "write the concept after " + ref.required();
            default -> "write the file after " + ref.required();
          });
    }
  }

  private static boolean blank(Given<String> word) {
    return word.value().filter(String::isBlank).isPresent();
  }

  private PieceRequest request(String what, LibraryFolder library) {
    String piece = ref.required().strip();
    Asked asked = new Asked(context());
    return switch (what) {
      case "add" ->
          new PieceRequest.Add(
              piece,
              particulars(Optional.of(asked.text(title, "--title", "What is it, in a line?"))));
      case "describe" -> describe(piece);
      case "observe" -> observe(piece);
      case "evidence" -> evidence(piece, asked.concept(ConceptNames.of(library), word(first)));
      default -> photograph(piece);
    };
  }

  private static String word(Given<String> given) {
    return given.value().orElseThrow().strip();
  }

  private Particulars particulars(Optional<String> called) {
    return new Particulars(
        called,
        Asked.given(measurements, "--measurements"),
        Asked.given(provenance, "--provenance"),
        Asked.given(place, "--place"));
  }

  private PieceRequest describe(String piece) {
    if (all.values().stream().noneMatch(Operations::isGiven)) {
      throw CommandException.wrongUse(
          "say what to describe with --title, --measurements, --provenance or --place");
    }
    return new PieceRequest.Describe(piece, particulars(Asked.given(title, "--title")));
  }

  private PieceRequest observe(String piece) {
    if (seen.isSet() && felt.isSet()) {
      throw CommandException.wrongUse(
          "--seen and --felt do not go together; record each by itself");
    } else if (notFound.isSet() && value.value().isPresent()) {
      throw CommandException.wrongUse("what was not found has no --value");
    }
    return new PieceRequest.Observe(
        piece,
        new Observation(
            word(first),
            word(second),
            Asked.given(value, "--value"),
            felt.isSet() ? Sense.FELT : Sense.SEEN,
            !notFound.isSet(),
            Asked.given(photo, "--photo")),
        instead.isSet());
  }

  private PieceRequest evidence(String piece, String concept) {
    String kind = Asked.given(as, "--as").orElse("example");
    for (Evidence.Kind known : Evidence.Kind.values()) {
      if (known.code().equals(kind)) {
        return new PieceRequest.Show(
            piece,
            new Evidence(
                concept, known, Asked.given(words, "--words"), Asked.given(photo, "--photo")));
      }
    }
    List<String> near = Nearest.to(kind, List.of("example", "counter-example", "mixed"), 1);
    throw CommandException.wrongUse(
        "--as: \""
            + kind
            + "\" is not example, counter-example or mixed"
            + (near.isEmpty() ? "" : "; did you mean " + near.get(0) + "?"));
  }

  private PieceRequest photograph(String piece) {
    String typed = word(first);
    return new PieceRequest.Photograph(
        piece,
        typed,
        PhotoOption.file(context(), typed),
        Asked.given(id, "--id"),
        Asked.given(words, "--words"),
        Asked.given(turn, "--turn"));
  }

  private void print(PieceChanged changed) {
    Page page = new Page(context().out(), context().screen());
    page.heading(changed.ref() + ": " + changed.title());
    page.blank();
    EffectText text = new EffectText(page);
    text.print(changed.effects());
    changed.asKey().ifPresent(read -> text.rows("Key", line -> line.accept(read)));
    page.blank();
    page.text(
        changed.files() == 0
            ? "It is so already; nothing was written."
            : "Done: "
                + Page.many(changed.files(), "file")
                + " written. merese undo takes it back.");
  }
}
