package merese.desk.vocabulary;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.change.Effect;
import merese.change.Effect.Sort;
import merese.change.objects.PieceChange;
import merese.change.objects.PieceChanged;
import merese.change.objects.PieceRequest;
import merese.change.vocabulary.ConceptNames;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.NotThereException;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.CharacterKey;
import merese.model.ForTheUser;
import merese.model.KeyCharacter;
import merese.model.Naming;
import merese.model.Note.ObjectLink;
import merese.model.OwnObject;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Photograph;
import merese.model.Place;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;
import merese.vocabulary.KeyReading;

/** The user's own pieces, and the forms by which more is recorded of them. */
public final class PiecesPage implements Page {
  private static final Set<String> OPERATIONS =
      Set.of("describe", "observe", "evidence", "photograph");

  private final Site site;
  private final Told told;

  PiecesPage(Site site, Told told) {
    this.site = site;
    this.told = told;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/pieces", this::list);
    routes.post("/pieces", this::add);
    routes.get("/pieces/{ref}", this::show);
    routes.post("/pieces/{ref}/{operation}", this::change);
  }

  /** All pieces. */
  public record ListModel(List<ListLine> pieces, Form form) {}

  /**
   * A piece in the list.
   *
   * @param picture the address of the first photograph that is there
   * @param shows what it is evidence of, in words
   */
  public record ListLine(OwnObject piece, Optional<String> picture, List<String> shows) {}

  /**
   * One piece.
   *
   * @param observations each with what the key to look-alikes makes of it
   * @param pictures ids of the photographs that are there
   * @param labels of concepts, by id
   * @param characters what the key calls what can be looked for
   * @param values and what it may be
   * @param parts names of parts that are recorded already
   */
  public record Model(
      OwnObject piece,
      List<Seen> observations,
      Set<String> pictures,
      Map<String, String> labels,
      List<LinkedNote> notes,
      Form form,
      List<Effect> effects,
      List<ConceptLine> concepts,
      List<String> characters,
      Set<String> values,
      Set<String> parts) {
    /** Its address, to which its forms are sent. */
    public String at() {
      return address(piece.ref());
    }
  }

  /**
   * An observation.
   *
   * @param key what the key reads in it
   * @param unread why it reads nothing; one of the two is there
   */
  public record Seen(Observation observation, Optional<String> key, Optional<String> unread) {}

  /**
   * A note of a source that speaks of the piece, or of one like it.
   *
   * @param printed the terms as printed
   * @param places as printed
   */
  public record LinkedNote(
      String source,
      String reference,
      List<String> printed,
      List<String> places,
      ObjectLink link) {}

  static String address(String ref) {
    return "/pieces/" + Site.encoded(ref).replace("+", "%20");
  }

  private void list(Context request) {
    if (Site.wantsJson(request)) {
      site.json(request, site.ask(Shelf::objects));
      return;
    }
    Form form = Query.flag(request, "add") ? Form.begun("add", Typed.address(request)) : Form.NONE;
    site.show(request, Tab.PIECES, "My pieces", "pieces.jte", all(form));
  }

  private ListModel all(Form form) {
    return site.ask(
        shelf -> {
          List<ListLine> lines = new ArrayList<>();
          for (OwnObject piece : shelf.objects()) {
            lines.add(
                new ListLine(
                    piece,
                    piece.photographs().stream()
                        .map(Photograph::file)
                        .filter(site::hasPicture)
                        .findFirst()
                        .map(VocabularyWords::picture),
                    piece.evidence().stream()
                        .map(e -> e.kind().words() + ": " + shelf.thesaurus().label(e.concept()))
                        .toList()));
          }
          return new ListModel(lines, form);
        });
  }

  private void add(Context request) {
    Typed typed = Typed.form(request);
    refusing(
        () -> apply(request, new PieceForms(typed).add()),
        wrong ->
            site.refuse(
                request,
                Tab.PIECES,
                "My pieces",
                "pieces.jte",
                all(Form.refused("add", typed, wrong))));
  }

  private void show(Context request) {
    String ref = request.pathParam("ref");
    if (Site.wantsJson(request)) {
      site.json(request, site.ask(shelf -> piece(shelf, ref)));
      return;
    }
    Model model = model(ref, Form.NONE, told.of(request));
    site.show(request, Tab.PIECES, title(model), "piece.jte", model);
  }

  private static String title(Model model) {
    return model.piece().ref() + ": " + model.piece().title();
  }

  private static OwnObject piece(Shelf shelf, String ref) {
    return shelf.objects().stream()
        .filter(piece -> piece.ref().equals(ref))
        .findFirst()
        .orElseThrow(
            () -> new NotThereException("no piece of yours has the reference \"" + ref + "\""));
  }

  private Model model(String ref, Form form, List<Effect> effects) {
    return site.ask(
        shelf -> {
          OwnObject piece = piece(shelf, ref);
          CharacterKey key = shelf.characters().key();
          List<Seen> seen = new ArrayList<>();
          Set<String> parts = new LinkedHashSet<>();
          for (Observation each : piece.observations()) {
            seen.add(seen(key, each));
            parts.add(each.part());
          }
          Set<String> pictures = new LinkedHashSet<>();
          for (Photograph each : piece.photographs()) {
            if (site.hasPicture(each.file())) {
              pictures.add(each.id());
            }
          }
          Map<String, String> labels = new HashMap<>();
          piece
              .evidence()
              .forEach(e -> labels.put(e.concept(), shelf.thesaurus().label(e.concept())));
          return new Model(
              piece,
              seen,
              pictures,
              labels,
              notes(shelf, ref),
              form,
              effects,
              VocabularyPage.concepts(shelf),
              key.characters().stream().map(KeyCharacter::label).toList(),
              values(key),
              parts);
        });
  }

  private static Set<String> values(CharacterKey key) {
    Set<String> values = new LinkedHashSet<>();
    key.characters().forEach(c -> c.values().forEach(value -> values.add(value.label())));
    return values;
  }

  private static Seen seen(CharacterKey key, Observation observation) {
    KeyReading reading = KeyReading.of(key, observation);
    return new Seen(
        observation,
        reading.unread().isPresent()
            ? Optional.empty()
            : Optional.of(reading.character().label() + ": " + reading.label()),
        reading.unread());
  }

  private static List<LinkedNote> notes(Shelf shelf, String ref) {
    List<LinkedNote> notes = new ArrayList<>();
    for (SourcedNote sourced : shelf.notes(List.of(new NoteCriterion.LinkedTo(ref)))) {
      List<String> printed =
          sourced.note().namings().stream()
              .map(Naming::printed)
              .filter(term -> !term.isEmpty())
              .toList();
      List<String> places = new ArrayList<>();
      for (Place place : sourced.note().places()) {
        places.add(place.locator().printed());
      }
      notes.add(
          new LinkedNote(
              sourced.source().key(),
              sourced.source().reference(),
              printed,
              places,
              sourced.note().object().orElseThrow()));
    }
    return notes;
  }

  private void change(Context request) {
    String ref = request.pathParam("ref");
    String operation = request.pathParam("operation");
    if (!OPERATIONS.contains(operation)) {
      throw new NotThereException("the address leads nowhere in this desk");
    }
    site.ask(shelf -> piece(shelf, ref));
    Typed typed = Typed.form(request);
    refusing(
        () -> {
          PieceForms forms = new PieceForms(typed);
          apply(
              request,
              switch (operation) {
                case "describe" -> forms.describe(ref);
                case "observe" -> forms.observe(ref);
                case "evidence" -> forms.show(ref, ConceptNames.of(site.library()));
                default -> forms.photograph(ref, request.uploadedFile("file"), site);
              });
        },
        wrong -> {
          Model model = model(ref, Form.refused(operation, typed, wrong), List.of());
          site.refuse(request, Tab.PIECES, title(model), "piece.jte", model);
        });
  }

  private void apply(Context request, PieceRequest asked) {
    Told.Done<PieceChanged> done = told.doing(() -> PieceChange.apply(site.library(), asked));
    PieceChanged changed = done.made();
    if (changed.files() == 0) {
      throw new FormException("it is so already; nothing was written");
    }
    List<Effect> effects = new ArrayList<>(changed.effects());
    changed
        .asKey()
        .ifPresent(read -> effects.add(new Effect(Sort.FOLLOWS, "the key reads " + read)));
    told.keep(done.number(), effects);
    site.leadOn(request, address(changed.ref()), done.number());
  }

  private interface Refusal {
    void say(RuntimeException wrong);
  }

  private static void refusing(Runnable work, Refusal refusal) {
    try {
      work.run();
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      refusal.say(e);
    }
  }
}
