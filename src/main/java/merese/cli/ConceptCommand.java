package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.json.AnswerJson;
import merese.change.vocabulary.ConceptChange;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.ConceptRequest;
import merese.change.vocabulary.VocabularyChange;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Status;
import merese.model.Facet;
import merese.store.LibraryFolder;

/** Changes the vocabulary, concept by concept. */
final class ConceptCommand extends LibraryCommand {
  private static final Map<String, Set<String>> OPERATIONS = new LinkedHashMap<>();

  static {
    OPERATIONS.put(
        "add",
        Set.of(
            "--label",
            "--scope",
            "--definition",
            "--broader",
            "--alternative",
            "--hidden",
            "--look-alike",
            "--uncertain",
            "--facet",
            "--new-facet",
            "--head-noun"));
    OPERATIONS.put(
        "describe",
        Set.of(
            "--definition", "--alternative", "--hidden", "--without", "--uncertain", "--common"));
    OPERATIONS.put("rename", Set.of("--label", "--scope", "--id", "--drop-old"));
    OPERATIONS.put("merge", Set.of("--into"));
    OPERATIONS.put(
        "split",
        Set.of(
            "--label",
            "--scope",
            "--definition",
            "--broader",
            "--alternative",
            "--test",
            "--printed",
            "--source",
            "--note"));
    OPERATIONS.put(
        "move",
        Set.of("--broader", "--from", "--also", "--top", "--facet", "--new-facet", "--head-noun"));
    OPERATIONS.put("look-alike", Set.of("--test", "--none"));
  }

  private final Map<String, Given<?>> all = new LinkedHashMap<>();

  private final Given<String> operation =
      word(String.class, "OPERATION", "add, describe, rename, merge, split, move or look-alike.");
  private final Given<String> concept =
      word(
          String.class,
          "CONCEPT",
          "The concept, by its id or a label; add: the id of the new one.");
  private final Given<String> other =
      optionalWord(
          String.class,
          "OTHER",
          "split: the id of the new concept. look-alike: the other concept.");

  private final Given<String> label =
      text("TEXT", "The preferred label (add, rename, split).", "--label");
  private final Given<String> scope =
      text("WORD", "What the label is limited to, as in “bell (body)”.", "--scope");
  private final Given<String> definition =
      text("TEXT", "What it is (add, describe, split).", "--definition");
  private final Given<List<String>> alternative =
      texts(
          "TEXT",
          "An alternative label; may be given again. split: it leaves CONCEPT.",
          "--alternative");
  private final Given<List<String>> hidden =
      texts("TEXT", "A misspelling to be found by, never shown (add, describe).", "--hidden");
  private final Given<List<String>> without =
      texts("TEXT", "describe: a label that goes.", "--without");
  private final Given<Boolean> uncertain = mark("Usage varies (add, describe).", "--uncertain");
  private final Given<Boolean> common = mark("describe: usage is settled.", "--common");
  private final Given<List<String>> broader =
      texts("CONCEPT", "What it is below (add, split: may be given again; move).", "--broader");
  private final Given<String> from = text("CONCEPT", "move: what it is no longer below.", "--from");
  private final Given<Boolean> also = mark("move: it stays below all else as well.", "--also");
  private final Given<Boolean> top = mark("move: below nothing.", "--top");
  private final Given<String> facet =
      text(
          "FACET",
          "add: the facet, without this that of the first --broader. move: with what is narrower.",
          "--facet");
  private final Given<String> newFacet =
      text("NAME", "A facet that is made for it (add, move).", "--new-facet");
  private final Given<String> headNoun =
      text("WORD", "The noun that a phrase may leave out in the new facet.", "--head-noun");
  private final Given<List<String>> lookAlike =
      texts(
          "CONCEPT=TEST",
          "add: what it is mistaken for, and what tells the two apart.",
          "--look-alike");
  private final Given<String> test =
      text("TEXT", "What tells the two apart (look-alike, split).", "--test");
  private final Given<Boolean> none = mark("look-alike: the two no longer are.", "--none");
  private final Given<String> id =
      text("ID", "rename: another id; everything that names it follows.", "--id");
  private final Given<Boolean> dropOld =
      mark("rename: the old label does not stay as an alternative.", "--drop-old");
  private final Given<String> into = text("CONCEPT", "merge: the concept that stays.", "--into");
  private final Given<List<String>> printed =
      texts("TERM", "split: the notes that print this go over; may be given again.", "--printed");
  private final Given<List<String>> source =
      texts("KEY", "split: only those of this source.", "--source");
  private final Given<List<String>> note =
      texts("KEY/ID", "split: this note, whatever it prints.", "--note");
  private final Given<Boolean> apply =
      flag(
          "Do what is only shown without it: merge, split, rename --id, move to a facet.",
          "--apply");
  private final Given<Boolean> json = flag("Print what is done as JSON.", "--json");

  ConceptCommand(Context context) {
    super(
        context,
        "Add, rename, merge, split or move a concept of the vocabulary.\n"
            + "Whatever names it follows: notes, check log, look-alikes, your own pieces and"
            + " opinions. Terms as printed never change.",
        "merese concept add ring-wrythen --broader neck-ring --label \"wrythen ring\"",
        "merese concept describe ring-bladed --alternative \"blade ring\"",
        "merese concept rename ring-bladed --label \"knife-edged ring\"",
        "merese concept merge ring-vertical --into ring-milled",
        "merese concept split ring-cut ring-notched --label notched --printed cut",
        "merese concept move ring-false --broader neck-treatment",
        "merese concept look-alike ring-wavy ring-square --test \"runs straight\"");
  }

  private Given<String> text(String name, String description, String option) {
    Given<String> given = option(String.class, name, description, option);
    all.put(option, given);
    return given;
  }

  private Given<List<String>> texts(String name, String description, String option) {
    Given<List<String>> given = options(name, description, option);
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
    requireOperation(what);
    LibraryFolder library = library();
    ConceptRequest request = request(what, ConceptNames.of(library), new Asked(context()));
    boolean shownFirst =
        what.equals("merge")
            || what.equals("split")
            || id.value().isPresent()
            || what.equals("move") && (facet.value().isPresent() || newFacet.value().isPresent());
    boolean done = apply.isSet() || !shownFirst;
    VocabularyChange change =
        done ? ConceptChange.apply(library, request) : ConceptChange.preview(library, request);
    if (json.isSet()) {
      AnswerJson.print(context().out(), change);
    } else {
      new VocabularyChangeText(new Page(context().out(), context().screen())).print(change, done);
    }
    return ExitCode.DONE;
  }

  private void requireOperation(String what) {
    Operations.require(what, operation.required(), OPERATIONS, all);
    boolean two = what.equals("split") || what.equals("look-alike");
    if (two != other.value().isPresent()) {
      throw CommandException.wrongUse(
          what.equals("split")
              ? "write the id of the new concept after " + concept.required()
              : two
                  ? "write the other concept after " + concept.required()
                  : "\""
                      + other.value().get()
                      + "\" is one word too many"
                      + (what.equals("merge") ? "; name what stays with --into" : ""));
    }
  }

  private ConceptRequest request(String what, ConceptNames names, Asked asked) {
    if (what.equals("add")) {
      return add(names, asked);
    }
    String named = asked.concept(names, concept.required());
    return switch (what) {
      case "describe" -> describe(named);
      case "rename" -> rename(named);
      case "merge" ->
          new ConceptRequest.Merge(
              named, asked.concept(names, asked.text(into, "--into", "Into which concept?")));
      case "split" -> split(named, names, asked);
      case "move" -> move(named, names, asked);
      default ->
          new ConceptRequest.Mistaken(
              named,
              asked.concept(names, other.value().orElseThrow()),
              Asked.given(test, "--test"),
              none.isSet());
    };
  }

  private ConceptRequest add(ConceptNames names, Asked asked) {
    List<String> above = concepts(broader, "--broader", names, asked);
    Optional<Facet> made = newFacet();
    Optional<String> in = Asked.given(facet, "--facet");
    if (above.isEmpty() && made.isEmpty() && in.isEmpty()) {
      in = Optional.of(asked.text(facet, "--facet", "In which facet is it kept?"));
    }
    return new ConceptRequest.Add(
        concept.required().strip(),
        in,
        made,
        asked.text(label, "--label", "What is it called?"),
        Asked.given(scope, "--scope"),
        asked.text(definition, "--definition", "What is it, in a sentence?"),
        above,
        Asked.all(alternative, "--alternative"),
        Asked.all(hidden, "--hidden"),
        lookAlikes(names, asked),
        uncertain.isSet() ? Status.UNCERTAIN : Status.COMMON);
  }

  private List<String> concepts(
      Given<List<String>> given, String option, ConceptNames names, Asked asked) {
    List<String> ids = new ArrayList<>();
    Asked.all(given, option).forEach(typed -> ids.add(asked.concept(names, typed)));
    return ids;
  }

  private List<LookAlike> lookAlikes(ConceptNames names, Asked asked) {
    List<LookAlike> alike = new ArrayList<>();
    for (String typed : Asked.all(lookAlike, "--look-alike")) {
      int equals = typed.indexOf('=');
      String word = (equals < 0 ? typed : typed.substring(0, equals)).strip();
      String told = equals < 0 ? "" : typed.substring(equals + 1).strip();
      Optional<String> tells = told.isEmpty() ? Optional.empty() : Optional.of(told);
      alike.add(new LookAlike(asked.concept(names, word), tells));
    }
    return alike;
  }

  private Optional<Facet> newFacet() {
    Optional<String> name = Asked.given(newFacet, "--new-facet");
    Optional<String> noun = Asked.given(headNoun, "--head-noun");
    if (name.isPresent() && facet.value().isPresent()) {
      throw CommandException.wrongUse("--facet and --new-facet do not go together");
    } else if (noun.isPresent() && name.isEmpty()) {
      throw CommandException.wrongUse("--head-noun goes with --new-facet");
    }
    return name.map(n -> new Facet(n, noun, List.of()));
  }

  private ConceptRequest describe(String named) {
    if (uncertain.isSet() && common.isSet()) {
      throw CommandException.wrongUse("--uncertain and --common do not go together");
    }
    Optional<Status> status =
        uncertain.isSet()
            ? Optional.of(Status.UNCERTAIN)
            : common.isSet() ? Optional.of(Status.COMMON) : Optional.empty();
    ConceptRequest.Describe request =
        new ConceptRequest.Describe(
            named,
            Asked.given(definition, "--definition"),
            status,
            Asked.all(alternative, "--alternative"),
            Asked.all(hidden, "--hidden"),
            Asked.all(without, "--without"));
    requireSome("describe");
    return request;
  }

  private ConceptRequest rename(String named) {
    requireSome("rename");
    if (dropOld.isSet() && label.value().isEmpty()) {
      throw CommandException.wrongUse("--drop-old goes with --label");
    }
    return new ConceptRequest.Rename(
        named,
        Asked.given(label, "--label"),
        Asked.given(scope, "--scope"),
        Asked.given(id, "--id"),
        dropOld.isSet());
  }

  /** Refuses an operation that nothing is given for. */
  private void requireSome(String what) {
    if (all.values().stream().noneMatch(Operations::isGiven)) {
      List<String> options = all.keySet().stream().filter(OPERATIONS.get(what)::contains).toList();
      throw CommandException.wrongUse(
          "say what to " + what + " with one of " + String.join(", ", options));
    }
  }

  private ConceptRequest split(String named, ConceptNames names, Asked asked) {
    return new ConceptRequest.Split(
        named,
        other.value().orElseThrow().strip(),
        asked.text(label, "--label", "What is the new concept called?"),
        Asked.given(scope, "--scope"),
        Asked.given(definition, "--definition"),
        concepts(broader, "--broader", names, asked),
        Asked.all(alternative, "--alternative"),
        Asked.all(printed, "--printed"),
        Asked.all(source, "--source"),
        Asked.all(note, "--note"),
        Asked.given(test, "--test"));
  }

  private ConceptRequest move(String named, ConceptNames names, Asked asked) {
    requireSome("move");
    List<String> above = concepts(broader, "--broader", names, asked);
    Optional<Facet> made = newFacet();
    Optional<String> leaves = Asked.given(from, "--from").map(f -> asked.concept(names, f));
    if (above.size() > 1) {
      throw CommandException.wrongUse("move goes below one concept at a time; give --broader once");
    } else if (top.isSet() && !(above.isEmpty() && leaves.isEmpty())) {
      throw CommandException.wrongUse("--top stands without --broader and --from");
    } else if (also.isSet() && (above.isEmpty() || leaves.isPresent())) {
      throw CommandException.wrongUse("--also goes with --broader, and without --from");
    }
    return new ConceptRequest.Move(
        named,
        above.stream().findFirst(),
        leaves,
        also.isSet(),
        top.isSet(),
        Asked.given(facet, "--facet"),
        made);
  }
}
