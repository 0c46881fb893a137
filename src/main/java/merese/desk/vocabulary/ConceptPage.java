package merese.desk.vocabulary;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Section;
import merese.answer.Coverage.SourceLine;
import merese.answer.vocabulary.ConceptSheet;
import merese.change.Effect;
import merese.change.vocabulary.Coining;
import merese.change.vocabulary.ConceptChange;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.ConceptRequest;
import merese.change.vocabulary.Preferring;
import merese.change.vocabulary.VocabularyChange;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.NotThereException;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.ForTheUser;
import merese.model.OwnObject;
import merese.shelf.Shelf;

/** One concept, and the forms by which it changes. */
public final class ConceptPage implements Page {
  private static final Set<String> OPERATIONS =
      Set.of(
          "narrower",
          "describe",
          "rename",
          "move",
          "look-alike",
          "merge",
          "split",
          "prefer",
          "coin");

  private final Site site;
  private final Told told;

  ConceptPage(Site site, Told told) {
    this.site = site;
    this.told = told;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/vocabulary/{id}", this::show);
    routes.post("/vocabulary/{id}/{operation}", this::change);
  }

  static String address(String id) {
    return "/vocabulary/" + Site.encoded(id);
  }

  /**
   * The page.
   *
   * @param photographs of own pieces that are there, their files by "reference, id"
   * @param effects of the change that led here
   * @param concepts what a form can name
   * @param facets ids
   * @param by who coins a word, where nobody says so
   */
  public record Model(
      ConceptSheet sheet,
      Form form,
      Map<String, String> photographs,
      List<Effect> effects,
      List<ConceptLine> concepts,
      List<String> facets,
      List<OwnObject> pieces,
      String by) {
    public Section section() {
      return sheet.coverage().sections().get(0);
    }

    /** Its address, to which its forms are sent. */
    public String at() {
      return address(sheet.concept().id());
    }

    /** All its labels but the preferred one. */
    public List<Label> otherLabels() {
      List<Label> labels = new ArrayList<>(sheet.concept().alternatives());
      labels.addAll(sheet.concept().hidden());
      return labels;
    }

    /** The terms that notes print for just this concept. */
    public Set<String> printed() {
      Set<String> printed = new LinkedHashSet<>();
      for (Grouped group : section().groups()) {
        for (Entry entry : group.entries()) {
          for (Passage passage : entry.passages()) {
            if (passage.concept().filter(c -> c.id().equals(sheet.concept().id())).isPresent()) {
              printed.addAll(passage.printed());
            }
          }
        }
      }
      return printed;
    }

    /** The sources with notes on just this concept. */
    public Collection<SourceLine> sources() {
      Map<String, SourceLine> sources = new LinkedHashMap<>();
      for (Grouped group : section().groups()) {
        for (Entry entry : group.entries()) {
          for (Passage passage : entry.passages()) {
            if (passage.concept().filter(c -> c.id().equals(sheet.concept().id())).isPresent()) {
              sources.put(entry.source().key(), entry.source());
            }
          }
        }
      }
      return sources.values();
    }

    /** Words that may be preferred: labels, what is coined, what is printed. */
    public Set<String> words() {
      Set<String> words = new LinkedHashSet<>();
      words.add(sheet.concept().preferred().text());
      sheet.concept().alternatives().forEach(label -> words.add(label.text()));
      sheet.coined().forEach(coinage -> words.add(coinage.label()));
      words.addAll(printed());
      return words;
    }
  }

  private void show(Context request) {
    String id = request.pathParam("id");
    if (Site.wantsJson(request)) {
      site.json(request, site.ask(shelf -> ConceptSheet.of(known(shelf, id), id)));
      return;
    }
    Model model = model(id, Form.NONE, told.of(request));
    site.show(request, Tab.VOCABULARY, model.section().heading().label(), "concept.jte", model);
  }

  private static Shelf known(Shelf shelf, String id) {
    if (shelf.thesaurus().concept(id).isEmpty()) {
      throw new NotThereException("no concept has the id \"" + id + "\"");
    }
    return shelf;
  }

  private Model model(String id, Form form, List<Effect> effects) {
    return site.ask(
        shelf -> {
          ConceptSheet sheet = ConceptSheet.of(known(shelf, id), id);
          List<String> facets = new ArrayList<>();
          shelf.thesaurus().facets().forEach(facet -> facets.add(facet.id()));
          return new Model(
              sheet,
              form,
              photographs(shelf),
              effects,
              VocabularyPage.concepts(shelf),
              facets,
              shelf.objects(),
              site.by());
        });
  }

  private Map<String, String> photographs(Shelf shelf) {
    Map<String, String> photographs = new LinkedHashMap<>();
    for (OwnObject object : shelf.objects()) {
      for (OwnObject.Photograph photograph : object.photographs()) {
        if (site.hasPicture(photograph.file())) {
          photographs.put(object.ref() + ", " + photograph.id(), photograph.file());
        }
      }
    }
    return photographs;
  }

  private void change(Context request) {
    String id = request.pathParam("id");
    String operation = request.pathParam("operation");
    if (!OPERATIONS.contains(operation)) {
      throw new NotThereException("the address leads nowhere in this desk");
    }
    Concept concept = site.ask(shelf -> known(shelf, id).thesaurus().concept(id).orElseThrow());
    Typed typed = Typed.form(request);
    try {
      ConceptForms forms = new ConceptForms(typed, ConceptNames.of(site.library()));
      if (operation.equals("prefer")) {
        Preferring.Request asked = forms.prefer(concept, site.clock());
        leadOn(request, told.doing(() -> Preferring.apply(site.library(), asked)));
      } else if (operation.equals("coin")) {
        Coining.Request asked = forms.coin(concept, site.clock());
        leadOn(request, told.doing(() -> Coining.apply(site.library(), asked)));
      } else {
        rewrite(request, concept, operation, typed, forms.request(operation, concept));
      }
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      Model model = model(id, Form.refused(operation, typed, e), List.of());
      site.refuse(request, Tab.VOCABULARY, model.section().heading().label(), "concept.jte", model);
    }
  }

  private void rewrite(
      Context request, Concept concept, String operation, Typed typed, ConceptRequest asked) {
    if (ConceptForms.isShownFirst(asked) && !typed.has("confirmed")) {
      VocabularyChange preview = ConceptChange.preview(site.library(), asked);
      Model model = model(concept.id(), Form.shown(operation, typed, preview), List.of());
      site.show(request, Tab.VOCABULARY, model.section().heading().label(), "concept.jte", model);
    } else {
      leadOn(request, told.doing(() -> ConceptChange.apply(site.library(), asked)));
    }
  }

  private void leadOn(Context request, Told.Done<VocabularyChange> done) {
    if (done.made().files() == 0) {
      throw new FormException("it is so already; nothing was written");
    }
    told.keep(done.number(), done.made().effects());
    site.leadOn(request, address(done.made().concept()), done.number());
  }
}
