package merese.store;

import java.util.List;
import merese.model.Facet;
import merese.model.Homonym;

/** The files of the folder of vocabulary. */
final class VocabularyCodec implements Codec<VocabularyFile> {
  static final VocabularyCodec VOCABULARY = new VocabularyCodec();
  static final Codec<Facet> FACET = new Facets();
  static final Codec<Homonym> HOMONYM = new Homonyms();
  static final Codec<List<Homonym>> REGISTER = new Register();

  private VocabularyCodec() {}

  @Override
  public VocabularyFile read(Fields in) {
    Facet facet = FACET.read(in);
    return new VocabularyFile(facet, in.list("concepts", ConceptCodec.in(facet.id())));
  }

  @Override
  public void write(VocabularyFile file, ObjectBuilder out) {
    FACET.write(file.facet(), out);
    out.allOf("concepts", file.concepts(), ConceptCodec.in(file.facet().id()));
  }

  private static final class Facets implements Codec<Facet> {
    @Override
    public Facet read(Fields in) {
      return new Facet(in.text("facet"), in.optionalText("headNoun"), in.texts("optionalWords"));
    }

    @Override
    public void write(Facet facet, ObjectBuilder out) {
      out.text("facet", facet.id());
      out.text("headNoun", facet.headNoun());
      out.texts("optionalWords", facet.optionalWords());
    }
  }

  private static final class Homonyms implements Codec<Homonym> {
    @Override
    public Homonym read(Fields in) {
      return new Homonym(in.text("word"), in.texts("concepts"), in.optionalText("remark"));
    }

    @Override
    public void write(Homonym homonym, ObjectBuilder out) {
      out.text("word", homonym.word());
      out.texts("concepts", homonym.concepts());
      out.text("remark", homonym.remark());
    }
  }

  private static final class Register implements Codec<List<Homonym>> {
    @Override
    public List<Homonym> read(Fields in) {
      return List.copyOf(in.list("homonyms", HOMONYM));
    }

    @Override
    public void write(List<Homonym> homonyms, ObjectBuilder out) {
      out.allOf("homonyms", homonyms, HOMONYM);
    }
  }
}
