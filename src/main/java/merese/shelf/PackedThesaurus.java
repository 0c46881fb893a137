package merese.shelf;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.vocabulary.Thesaurus;

/**
 * The whole vocabulary as the index holds it for answers, which unpack of it the concepts that they
 * ask about; see {@link PackedConcepts}. {@link PackedVocabulary} has the same by its files.
 *
 * <pre>
 * int      concepts
 * int      names: the concepts' ids in their order, then those that are only named
 * int      slots, a power of two
 * slots    int number of a name, from 1, in the first free slot from that of its hash on; else 0
 * starts   int start of each name's entry, then of the facets
 * entries  id, numbers of the names that are broader, that are narrower, and that are mistaken for
 *          it, whether it names others; then, of a concept, the facet's id and all that it is
 * facets   and the register of homonyms
 * </pre>
 */
final class PackedThesaurus {
  /** Before the slots. */
  static final int HEAD = 3 * Integer.BYTES;

  private final List<Concept> concepts;
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, List<Integer>> narrower = new HashMap<>();
  private final Map<String, List<Integer>> mistakenFor = new HashMap<>();

  private PackedThesaurus(Thesaurus thesaurus) {
    this.concepts = new ArrayList<>(thesaurus.concepts());
    for (Concept concept : concepts) {
      numbers.put(concept.id(), numbers.size());
    }
    for (Concept concept : concepts) {
      int number = numbers.get(concept.id());
      for (String broader : concept.broader()) {
        name(broader);
        narrower.computeIfAbsent(broader, id -> new ArrayList<>()).add(number);
      }
      for (Concept.LookAlike other : concept.lookAlikes()) {
        name(other.concept());
        List<Integer> by = mistakenFor.computeIfAbsent(other.concept(), id -> new ArrayList<>());
        if (!by.contains(number)) {
          by.add(number);
        }
      }
    }
  }

  private void name(String id) {
    numbers.putIfAbsent(id, numbers.size());
  }

  static byte[] pack(Thesaurus thesaurus) {
    return new PackedThesaurus(thesaurus).pack(thesaurus.facets(), thesaurus.register());
  }

  private byte[] pack(Collection<Facet> facets, List<Homonym> register) {
    int slots = Integer.highestOneBit(numbers.size() + 1) * 4;
    int entries = HEAD + Integer.BYTES * (slots + numbers.size() + 1);
    ByteBuffer table = ByteBuffer.allocate(entries);
    table.putInt(concepts.size()).putInt(numbers.size()).putInt(slots);
    Packer packed = new Packer();
    for (Map.Entry<String, Integer> name : numbers.entrySet()) {
      int slot = slot(name.getKey(), slots);
      while (table.getInt(HEAD + Integer.BYTES * slot) != 0) {
        slot = slot + 1 & slots - 1;
      }
      table.putInt(HEAD + Integer.BYTES * slot, name.getValue() + 1);
      table.putInt(HEAD + Integer.BYTES * (slots + name.getValue()), entries + packed.size());
      entry(packed, name.getKey(), name.getValue());
    }
    table.putInt(HEAD + Integer.BYTES * (slots + numbers.size()), entries + packed.size());
    packed.list(List.copyOf(facets), PackedVocabulary::facet);
    byte[] rest = packed.bytes(PackedVocabulary.pack(register)).toBytes();
    return ByteBuffer.allocate(entries + rest.length).put(table.array()).put(rest).array();
  }

  private void entry(Packer to, String id, int number) {
    boolean isConcept = number < concepts.size();
    List<Integer> broader = new ArrayList<>();
    if (isConcept) {
      concepts.get(number).broader().forEach(other -> broader.add(numbers.get(other)));
    }
    to.text(id).list(broader, Packer::number);
    to.list(narrower.getOrDefault(id, List.of()), Packer::number);
    to.list(mistakenFor.getOrDefault(id, List.of()), Packer::number);
    to.flag(isConcept && !concepts.get(number).lookAlikes().isEmpty());
    if (isConcept) {
      to.text(concepts.get(number).facet());
      PackedVocabulary.concept(to, concepts.get(number));
    }
  }

  /** Where an id is looked for first. */
  static int slot(String id, int slots) {
    int hash = id.hashCode() * 0x9E3779B9; // spreads what is alike
    return (hash ^ hash >>> 16) & slots - 1;
  }

  /**
   * A thesaurus that unpacks what it is asked about.
   *
   * @param undefined ids that are named in the library and defined nowhere
   */
  static Thesaurus unpack(byte[] bytes, Set<String> undefined) {
    PackedConcepts concepts = new PackedConcepts(bytes, undefined);
    Unpacker from = concepts.afterEntries();
    List<Facet> facets = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      facets.add(PackedVocabulary.facet(from));
    }
    return Thesaurus.of(facets, concepts, PackedVocabulary.unpackRegister(from.bytes()));
  }
}
