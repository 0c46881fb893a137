package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.VocabularyFile;

/** The files of the vocabulary as the index holds them. */
final class PackedVocabulary {
  private static final Concept.Status[] STATUSES = Concept.Status.values();
  private static final Concept.Match.Kind[] MATCHES = Concept.Match.Kind.values();

  private PackedVocabulary() {}

  static byte[] pack(VocabularyFile file) {
    Packer to = new Packer();
    facet(to, file.facet());
    return to.list(file.concepts(), PackedVocabulary::concept).toBytes();
  }

  static void facet(Packer to, Facet facet) {
    to.text(facet.id()).text(facet.headNoun()).texts(facet.optionalWords());
  }

  static void concept(Packer to, Concept concept) {
    to.text(concept.id());
    label(to, concept.preferred());
    to.list(concept.alternatives(), PackedVocabulary::label);
    to.list(concept.hidden(), PackedVocabulary::label);
    to.text(concept.definition()).texts(concept.broader());
    to.list(concept.lookAlikes(), (p, look) -> p.text(look.concept()).text(look.test()));
    to.text(concept.lookAlikeRemark()).constant(concept.status());
    to.list(concept.matches(), (p, match) -> p.constant(match.kind()).text(match.uri()));
  }

  private static void label(Packer to, Concept.Label label) {
    to.text(label.text()).text(label.scope()).flag(label.elsewhere());
  }

  static VocabularyFile unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    Facet facet = facet(from);
    List<Concept> concepts = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      concepts.add(concept(from, facet.id()));
    }
    return new VocabularyFile(facet, concepts);
  }

  static Facet facet(Unpacker from) {
    return new Facet(from.text(), from.optionalText(), from.texts());
  }

  static Concept concept(Unpacker from, String facet) {
    return new Concept(
        from.text(),
        facet,
        label(from),
        labels(from),
        labels(from),
        from.text(),
        from.texts(),
        lookAlikes(from),
        from.optionalText(),
        from.constant(STATUSES),
        matches(from));
  }

  private static Concept.Label label(Unpacker from) {
    return new Concept.Label(from.text(), from.optionalText(), from.flag());
  }

  private static List<Concept.Label> labels(Unpacker from) {
    List<Concept.Label> labels = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      labels.add(label(from));
    }
    return labels;
  }

  private static List<Concept.LookAlike> lookAlikes(Unpacker from) {
    List<Concept.LookAlike> lookAlikes = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      lookAlikes.add(new Concept.LookAlike(from.text(), from.optionalText()));
    }
    return lookAlikes;
  }

  private static List<Concept.Match> matches(Unpacker from) {
    List<Concept.Match> matches = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      matches.add(new Concept.Match(from.constant(MATCHES), from.text()));
    }
    return matches;
  }

  static byte[] pack(List<Homonym> register) {
    return new Packer()
        .list(register, (p, h) -> p.text(h.word()).texts(h.concepts()).text(h.remark()))
        .toBytes();
  }

  static List<Homonym> unpackRegister(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    List<Homonym> register = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      register.add(new Homonym(from.text(), from.texts(), from.optionalText()));
    }
    return register;
  }
}
