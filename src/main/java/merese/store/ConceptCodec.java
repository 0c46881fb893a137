package merese.store;

import merese.model.Concept;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.model.Concept.Status;

/** A concept. In its facet's file it does not say its facet; on its own it does. */
final class ConceptCodec implements Codec<Concept> {
  /** For a concept on its own. */
  static final ConceptCodec CONCEPT = new ConceptCodec(null);

  private static final Codes<Status> STATUS = new Codes<>("a status", Status.values());

  private final String facet;

  private ConceptCodec(String facet) {
    this.facet = facet;
  }

  /** For the concepts in the file of a facet. */
  static ConceptCodec in(String facet) {
    return new ConceptCodec(facet);
  }

  @Override
  public Concept read(Fields in) {
    return new Concept(
        in.text("id"),
        facet != null ? facet : in.text("facet"),
        in.object("prefLabel", LabelCodec.LABEL),
        in.list("altLabels", LabelCodec.LABEL),
        in.list("hiddenLabels", LabelCodec.LABEL),
        in.text("definition"),
        in.texts("broader"),
        in.list("lookAlikes", LookAlikes.CODEC),
        in.optionalText("lookAlikeRemark"),
        in.code("status", STATUS, Status.COMMON),
        in.list("matches", Matches.CODEC));
  }

  @Override
  public void write(Concept concept, ObjectBuilder out) {
    out.text("id", concept.id());
    if (facet == null) {
      out.text("facet", concept.facet());
    }
    out.object("prefLabel", concept.preferred(), LabelCodec.LABEL);
    out.list("altLabels", concept.alternatives(), LabelCodec.LABEL);
    out.list("hiddenLabels", concept.hidden(), LabelCodec.LABEL);
    out.text("definition", concept.definition());
    out.texts("broader", concept.broader());
    out.list("lookAlikes", concept.lookAlikes(), LookAlikes.CODEC);
    out.text("lookAlikeRemark", concept.lookAlikeRemark());
    out.code("status", concept.status());
    out.list("matches", concept.matches(), Matches.CODEC);
  }

  private static final class LookAlikes implements Codec<LookAlike> {
    static final LookAlikes CODEC = new LookAlikes();

    @Override
    public LookAlike read(Fields in) {
      return new LookAlike(in.text("concept"), in.optionalText("test"));
    }

    @Override
    public void write(LookAlike lookAlike, ObjectBuilder out) {
      out.text("concept", lookAlike.concept());
      out.text("test", lookAlike.test());
    }
  }

  private static final class Matches implements Codec<Match> {
    static final Matches CODEC = new Matches();

    private static final Codes<Match.Kind> KIND =
        new Codes<>("a mapping relation", Match.Kind.values());

    @Override
    public Match read(Fields in) {
      return new Match(in.code("kind", KIND), in.text("uri"));
    }

    @Override
    public void write(Match match, ObjectBuilder out) {
      out.code("kind", match.kind());
      out.text("uri", match.uri());
    }
  }
}
