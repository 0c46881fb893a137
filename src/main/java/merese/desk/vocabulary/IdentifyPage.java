package merese.desk.vocabulary;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Photo;
import merese.answer.identify.CharacterList;
import merese.answer.identify.Identification;
import merese.answer.identify.Identification.Fitting;
import merese.answer.identify.Identification.RuledOut;
import merese.answer.identify.Identify;
import merese.answer.identify.IdentifyQuestion;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Query;
import merese.desk.web.Site;
import merese.model.ForTheUser;
import merese.model.KeyCharacter;
import merese.model.OwnObject;
import merese.shelf.Shelf;

/**
 * The key to look-alikes: what was seen and felt, and which kinds fit it as far as the key goes.
 */
public final class IdentifyPage implements Page {
  private static final String TITLE = "The key to look-alikes";

  private final Site site;

  IdentifyPage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/identify", this::show);
  }

  /**
   * What is asked, as the form shows it again.
   *
   * @param seen each as "join=felt"
   * @param terms to compare alone
   * @param object the reference of a piece; "" for none
   * @param part of it; "" for all
   */
  public record Asked(
      List<String> seen, List<String> terms, String facet, String object, String part) {
    /** The values chosen of a character. */
    public List<String> of(String character) {
      List<String> values = new ArrayList<>();
      for (String each : seen) {
        if (each.startsWith(character + "=")) {
          for (String value : each.substring(character.length() + 1).split(",", -1)) {
            values.add(value.strip());
          }
        }
      }
      return values;
    }

    /** The address of the same question with one more observation. */
    public String with(String character, String value) {
      StringBuilder address = new StringBuilder("/identify?");
      List<String> all = new ArrayList<>(seen);
      all.add(character + "=" + value);
      all.forEach(each -> address.append("see=").append(Site.encoded(each)).append('&'));
      terms.forEach(each -> address.append("term=").append(Site.encoded(each)).append('&'));
      address.append("facet=").append(Site.encoded(facet));
      address.append("&object=").append(Site.encoded(object));
      return address.append("&part=").append(Site.encoded(part)).toString();
    }
  }

  /**
   * The page.
   *
   * @param answer empty where what was asked cannot be
   * @param parts of the chosen piece
   * @param pictures files that are there, of those that the answer names
   */
  public record Model(
      Asked asked,
      Optional<String> problem,
      Optional<Identification> answer,
      CharacterList key,
      List<OwnObject> pieces,
      Set<String> parts,
      List<String> facets,
      Set<String> pictures) {
    /** What is typed for what was looked for and not found. */
    public String notFound() {
      return KeyCharacter.NOT_FOUND;
    }

    /** The kinds that are ruled out, those with the same reasons together. */
    public List<SameReasons> ruledOut() {
      Map<List<Identification.Against>, List<ConceptLine>> by = new LinkedHashMap<>();
      for (RuledOut each : answer.orElseThrow().ruledOut()) {
        by.computeIfAbsent(each.against(), a -> new ArrayList<>()).add(each.concept());
      }
      List<SameReasons> all = new ArrayList<>();
      by.forEach((against, kinds) -> all.add(new SameReasons(against, kinds)));
      return all;
    }
  }

  /** Kinds that the same speaks against. */
  public record SameReasons(List<Identification.Against> against, List<ConceptLine> kinds) {}

  private void show(Context request) {
    Asked asked =
        new Asked(
            Query.texts(request, "see"),
            Query.texts(request, "term"),
            Query.text(request, "facet").orElse(""),
            Query.text(request, "object").orElse(""),
            Query.text(request, "part").orElse(""));
    List<String> words = new ArrayList<>(asked.seen());
    words.addAll(asked.terms());
    IdentifyQuestion question =
        IdentifyQuestion.of(
            words,
            given(asked.facet()),
            given(asked.object()),
            given(asked.object()).flatMap(o -> given(asked.part())));
    if (Site.wantsJson(request)) {
      site.json(request, site.ask(shelf -> Identify.answer(shelf, question)));
      return;
    }
    Model model = site.ask(shelf -> model(shelf, asked, question));
    if (model.problem().isPresent()) {
      site.refuse(request, Tab.PIECES, TITLE, "identify.jte", model);
    } else {
      site.show(request, Tab.PIECES, TITLE, "identify.jte", model);
    }
  }

  private static Optional<String> given(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private Model model(Shelf shelf, Asked asked, IdentifyQuestion question) {
    Optional<Identification> answer = Optional.empty();
    Optional<String> problem = Optional.empty();
    try {
      answer = Optional.of(Identify.answer(shelf, question));
    } catch (RuntimeException e) {
      if (!(e instanceof ForTheUser)) {
        throw e;
      }
      problem = Optional.of(e.getMessage());
    }
    Set<String> parts = new LinkedHashSet<>();
    for (OwnObject piece : shelf.objects()) {
      if (piece.ref().equalsIgnoreCase(asked.object())) {
        piece.observations().forEach(observation -> parts.add(observation.part()));
      }
    }
    List<String> facets = new ArrayList<>();
    shelf.thesaurus().facets().forEach(facet -> facets.add(facet.id()));
    return new Model(
        asked,
        problem,
        answer,
        Identify.characters(shelf),
        shelf.objects(),
        parts,
        facets,
        answer.map(this::pictures).orElse(Set.of()));
  }

  private Set<String> pictures(Identification answer) {
    Set<String> there = new LinkedHashSet<>();
    List<Fitting> all = new ArrayList<>(answer.fits());
    all.addAll(answer.open());
    for (Fitting kind : all) {
      for (Entry entry : kind.pictured()) {
        for (Passage passage : entry.passages()) {
          for (Photo photo : passage.photos()) {
            if (site.hasPicture(photo.file())) {
              there.add(photo.file());
            }
          }
        }
      }
    }
    return there;
  }
}
