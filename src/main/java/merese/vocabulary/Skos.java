package merese.vocabulary;

/** The names of the W3C SKOS Reference (Recommendation of 18 August 2009) that we use, as IRIs. */
public final class Skos {
  public static final String NAMESPACE = "http://www.w3.org/2004/02/skos/core#";
  public static final String TYPE = "http://www.w3.org/1999/02/22-rdf-syntax-ns#type";

  public static final String CONCEPT = NAMESPACE + "Concept";
  public static final String CONCEPT_SCHEME = NAMESPACE + "ConceptScheme";
  public static final String COLLECTION = NAMESPACE + "Collection";
  public static final String ORDERED_COLLECTION = NAMESPACE + "OrderedCollection";

  public static final String IN_SCHEME = NAMESPACE + "inScheme";
  public static final String HAS_TOP_CONCEPT = NAMESPACE + "hasTopConcept";
  public static final String TOP_CONCEPT_OF = NAMESPACE + "topConceptOf";

  public static final String PREF_LABEL = NAMESPACE + "prefLabel";
  public static final String ALT_LABEL = NAMESPACE + "altLabel";
  public static final String HIDDEN_LABEL = NAMESPACE + "hiddenLabel";
  public static final String DEFINITION = NAMESPACE + "definition";
  public static final String SCOPE_NOTE = NAMESPACE + "scopeNote";

  public static final String SEMANTIC_RELATION = NAMESPACE + "semanticRelation";
  public static final String BROADER = NAMESPACE + "broader";
  public static final String NARROWER = NAMESPACE + "narrower";
  public static final String BROADER_TRANSITIVE = NAMESPACE + "broaderTransitive";
  public static final String NARROWER_TRANSITIVE = NAMESPACE + "narrowerTransitive";
  public static final String RELATED = NAMESPACE + "related";

  public static final String MEMBER = NAMESPACE + "member";
  public static final String MEMBER_LIST = NAMESPACE + "memberList";

  public static final String MAPPING_RELATION = NAMESPACE + "mappingRelation";
  public static final String EXACT_MATCH = NAMESPACE + "exactMatch";
  public static final String CLOSE_MATCH = NAMESPACE + "closeMatch";
  public static final String BROAD_MATCH = NAMESPACE + "broadMatch";
  public static final String NARROW_MATCH = NAMESPACE + "narrowMatch";
  public static final String RELATED_MATCH = NAMESPACE + "relatedMatch";

  private Skos() {}
}
