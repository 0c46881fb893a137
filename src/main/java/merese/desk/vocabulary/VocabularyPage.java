package merese.desk.vocabulary;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.ConceptLine;
import merese.answer.vocabulary.ConceptTree;
import merese.change.vocabulary.ConceptChange;
import merese.change.vocabulary.ConceptNames;
import merese.change.vocabulary.ConceptRequest;
import merese.change.vocabulary.VocabularyChange;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.model.ForTheUser;
import merese.shelf.Shelf;
import merese.vocabulary.Thesaurus;

/** All concepts, with a box that finds one by any of its labels, and a form for a new one. */
public final class VocabularyPage implements Page {
  private static final String TITLE = "Vocabulary";

  private final Site site;
  private final Told told;

  VocabularyPage(Site site, Told told) {
    this.site = site;
    this.told = told;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/vocabulary", this::show);
    routes.post("/vocabulary", this::add);
  }

  /**
   * The page.
   *
   * @param find as typed; "" for nothing
   * @param facet as chosen; "" for all
   * @param concepts what a form can name
   */
  public record Model(
      String find, String facet, ConceptTree tree, Form form, List<ConceptLine> concepts) {
    /** Whether the form for a new concept stands open. */
    public boolean adding() {
      return form.is("add");
    }
  }

  private void show(Context request) {
    Optional<String> find = Query.text(request, "find");
    Optional<String> facet = Query.text(request, "facet");
    if (Site.wantsJson(request)) {
      site.json(request, site.ask(shelf -> ConceptTree.of(shelf, find, facet)));
      return;
    }
    Form form = Query.flag(request, "add") ? Form.begun("add", Typed.address(request)) : Form.NONE;
    Model model = model(find, facet, form);
    site.show(request, Tab.VOCABULARY, TITLE, "vocabulary.jte", model);
  }

  private Model model(Optional<String> find, Optional<String> facet, Form form) {
    return site.ask(
        shelf ->
            new Model(
                find.orElse(""),
                facet.orElse(""),
                ConceptTree.of(shelf, find, facet),
                form,
                concepts(shelf)));
  }

  static List<ConceptLine> concepts(Shelf shelf) {
    return shelf.thesaurus().concepts().stream()
        .map(concept -> new ConceptLine(concept.id(), Thesaurus.display(concept.preferred())))
        .toList();
  }

  private void add(Context request) {
    Typed typed = Typed.form(request);
    try {
      ConceptForms forms = new ConceptForms(typed, ConceptNames.of(site.library()));
      ConceptRequest asked = forms.add();
      Told.Done<VocabularyChange> done =
          told.doing(() -> ConceptChange.apply(site.library(), asked));
      told.keep(done.number(), done.made().effects());
      site.leadOn(request, ConceptPage.address(done.made().concept()), done.number());
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      Form refused = Form.refused("add", typed, e);
      Model model = model(Optional.empty(), Optional.empty(), refused);
      site.refuse(request, Tab.VOCABULARY, TITLE, "vocabulary.jte", model);
    }
  }
}
