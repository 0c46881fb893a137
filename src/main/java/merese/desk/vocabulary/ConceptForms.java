package merese.desk.vocabulary;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.vocabulary.Coining;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.ConceptRequest;
import merese.change.vocabulary.Preferring;
import merese.desk.web.FormException;
import merese.desk.web.Typed;
import merese.model.Concept;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Status;
import merese.model.Facet;
import merese.model.Mine.SetAside;

/** What the forms on concepts ask for. */
final class ConceptForms {
  private final Typed typed;
  private final ConceptNames names;

  ConceptForms(Typed typed, ConceptNames names) {
    this.typed = typed;
    this.names = names;
  }

  /** Whether a change is shown before it is done, since it rewrites what stands in many places. */
  static boolean isShownFirst(ConceptRequest request) {
    return request instanceof ConceptRequest.Merge
        || request instanceof ConceptRequest.Split
        || request instanceof ConceptRequest.Rename rename && rename.id().isPresent()
        || request instanceof ConceptRequest.Move move
            && (move.facet().isPresent() || move.newFacet().isPresent());
  }

  ConceptRequest.Add add() {
    List<String> broader = concepts("broader");
    Optional<Facet> made = newFacet();
    Optional<String> facet = made.isPresent() ? Optional.empty() : given("facet");
    if (broader.isEmpty() && made.isEmpty() && facet.isEmpty()) {
      throw new FormException("broader", "choose a facet that it is kept in, or a broader concept");
    }
    List<LookAlike> alike = new ArrayList<>();
    given("alike")
        .ifPresent(word -> alike.add(new LookAlike(concept("alike", word), given("test"))));
    return new ConceptRequest.Add(
        id(made.map(Facet::id).or(() -> facet), broader),
        broader.isEmpty() || made.isPresent() ? facet : given("facet"),
        made,
        required("label", "write what it is called"),
        given("scope"),
        required("definition", "say in a sentence what it is"),
        broader,
        lines("alternative"),
        lines("hidden"),
        alike,
        typed.has("uncertain") ? Status.UNCERTAIN : Status.COMMON);
  }

  /** As typed, else made of the label. */
  private String id(Optional<String> facet, List<String> broader) {
    String label = required("label", "write what it is called");
    Optional<String> kept = facet.or(() -> broader.stream().findFirst().flatMap(names::facetOf));
    return given("id")
        .or(() -> kept.flatMap(f -> names.newId(f, label)))
        .orElseThrow(
            () ->
                new FormException(
                    "id",
                    "no id can be made of the label; write one, in small letters and digits"));
  }

  /**
   * The change that a form of a concept's page asks for.
   *
   * @throws FormException where the form does not say enough
   */
  ConceptRequest request(String operation, Concept concept) {
    return switch (operation) {
      case "narrower" -> add();
      case "describe" -> describe(concept);
      case "rename" -> rename(concept);
      case "move" -> move(concept);
      case "look-alike" ->
          new ConceptRequest.Mistaken(
              concept.id(),
              concept("other", required("other", "name the other concept")),
              typed.has("none") ? Optional.empty() : given("test"),
              typed.has("none"));
      case "merge" ->
          new ConceptRequest.Merge(
              concept.id(), concept("into", required("into", "name the concept that stays")));
      default -> split(concept);
    };
  }

  private ConceptRequest describe(Concept concept) {
    Status status = typed.is("status", "uncertain") ? Status.UNCERTAIN : Status.COMMON;
    ConceptRequest.Describe asked =
        new ConceptRequest.Describe(
            concept.id(),
            Optional.of(required("definition", "say in a sentence what it is"))
                .filter(words -> !words.equals(concept.definition())),
            status == concept.status() ? Optional.empty() : Optional.of(status),
            lines("alternative"),
            lines("hidden"),
            typed.all("without"));
    if (asked.definition().isEmpty()
        && asked.status().isEmpty()
        && asked.alternatives().isEmpty()
        && asked.hidden().isEmpty()
        && asked.without().isEmpty()) {
      throw new FormException("nothing of this differs from what is recorded");
    }
    return asked;
  }

  private ConceptRequest rename(Concept concept) {
    String text = required("label", "write what it is called");
    Optional<String> scope = given("scope");
    String id = required("id", "write an id for it, in small letters, digits and hyphens");
    boolean label =
        !text.equals(concept.preferred().text()) || !scope.equals(concept.preferred().scope());
    if (!label && id.equals(concept.id())) {
      throw new FormException(
          "label", "it has this label and this id already; write another of either");
    }
    return new ConceptRequest.Rename(
        concept.id(),
        label ? Optional.of(text) : Optional.empty(),
        label ? scope : Optional.empty(),
        id.equals(concept.id()) ? Optional.empty() : Optional.of(id),
        label && typed.has("drop"));
  }

  private ConceptRequest move(Concept concept) {
    Optional<Facet> made = newFacet();
    Optional<String> facet =
        made.isPresent()
            ? Optional.empty()
            : given("facet").filter(f -> !f.equals(concept.facet()));
    String how = typed.get("how");
    boolean below = how.equals("instead") || how.equals("also");
    Optional<String> broader =
        below
            ? Optional.of(
                concept("broader", required("broader", "name the concept that it goes below")))
            : Optional.empty();
    Optional<String> from =
        how.equals("leave") || how.equals("instead") ? given("from") : Optional.empty();
    if (how.equals("leave") && from.isEmpty()) {
      throw new FormException("from", "choose what it is no longer below");
    } else if (how.equals("instead") && from.isEmpty() && concept.broader().size() > 1) {
      throw new FormException(
          "from",
          "it is below "
              + String.join(" and ", concept.broader())
              + "; choose which of them it leaves");
    } else if (!below && !how.equals("leave") && !how.equals("top")) {
      if (facet.isEmpty() && made.isEmpty()) {
        throw new FormException("facet", "choose where it goes: below what, or to which facet");
      }
    }
    return new ConceptRequest.Move(
        concept.id(), broader, from, how.equals("also"), how.equals("top"), facet, made);
  }

  private ConceptRequest split(Concept concept) {
    List<String> printed = new ArrayList<>(typed.all("printed"));
    return new ConceptRequest.Split(
        concept.id(),
        required("id", "write an id for the new concept, in small letters, digits and hyphens"),
        required("label", "write what the new concept is called"),
        given("scope"),
        given("definition"),
        concepts("broader"),
        typed.all("alternative"),
        printed,
        typed.all("source"),
        typed.all("note"),
        given("test"));
  }

  Preferring.Request prefer(Concept concept, Clock clock) {
    if (typed.has("none")) {
      return new Preferring.Request(
          Optional.empty(), concept.id(), Optional.empty(), List.of(), Optional.of(day(clock)));
    }
    return new Preferring.Request(
        Optional.of(required("label", "write the word that you prefer")),
        concept.id(),
        given("words").or(() -> given("reason")),
        setAside(),
        Optional.of(day(clock)));
  }

  private List<SetAside> setAside() {
    List<SetAside> aside = new ArrayList<>();
    for (String line : lines("aside")) {
      int equals = line.indexOf('=');
      String word = (equals < 0 ? line : line.substring(0, equals)).strip();
      String reason = equals < 0 ? "" : line.substring(equals + 1).strip();
      if (word.isEmpty()) {
        throw new FormException("aside", "write a word before the = in “" + line + "”");
      }
      aside.add(new SetAside(word, reason.isEmpty() ? Optional.empty() : Optional.of(reason)));
    }
    return aside;
  }

  Coining.Request coin(Concept concept, Clock clock) {
    Optional<String> object = given("object");
    if (object.isEmpty() && given("evidence").isEmpty()) {
      throw new FormException("evidence", "say what the word rests on: a piece of yours, or words");
    }
    return new Coining.Request(
        required("label", "write the word that you coin"),
        concept.id(),
        given("evidence").orElse(""),
        object,
        given("by"),
        Optional.of(day(clock)));
  }

  private LocalDate day(Clock clock) {
    Optional<String> on = given("on");
    try {
      return on.map(LocalDate::parse).orElseGet(() -> LocalDate.now(clock));
    } catch (DateTimeParseException e) {
      throw new FormException(
          "on", "“" + on.orElseThrow() + "” is no day; write it as in 2025-03-02");
    }
  }

  private Optional<Facet> newFacet() {
    Optional<String> noun = given("noun");
    Optional<String> name = given("newFacet");
    if (noun.isPresent() && name.isEmpty()) {
      throw new FormException(
          "newFacet", "a noun to leave out goes with a new facet; name that too");
    }
    return name.map(n -> new Facet(n, noun, List.of()));
  }

  private List<String> concepts(String field) {
    List<String> ids = new ArrayList<>();
    for (String each : typed.all(field)) {
      if (!each.isBlank()) {
        ids.add(concept(field, each));
      }
    }
    return ids;
  }

  /** The id of what is named by an id or a label; a word of several meanings is not guessed at. */
  String concept(String field, String word) {
    ConceptNames.Named named = names.named(word);
    if (named.id().isPresent()) {
      return named.id().get();
    }
    List<String> choices = new ArrayList<>();
    for (ConceptNames.Choice choice : named.choices()) {
      choices.add(choice.id() + " (" + choice.label() + ")");
    }
    throw new FormException(
        field,
        "“"
            + word.strip()
            + (choices.size() == 1
                ? "” may mean this; name it"
                : "” may mean several things; name one")
            + " by its id: "
            + String.join(", ", choices));
  }

  private Optional<String> given(String field) {
    String text = typed.get(field).replace("\r\n", "\n").strip();
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private String required(String field, String lacking) {
    return given(field).orElseThrow(() -> new FormException(field, lacking));
  }

  private List<String> lines(String field) {
    return typed.get(field).lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
  }
}
