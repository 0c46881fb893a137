package merese.testing;

import static merese.testing.SmallLibrary.monograph;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import merese.model.Claim;
import merese.model.Concept;
import merese.model.Naming.Why;
import merese.model.Work;
import merese.testing.SmallLibrary.NoteMaker;
import merese.vocabulary.Thesaurus;

/** Works by the hundred, each with as many notes as one wants; the same ones each time. */
public final class ManyWorks {
  private static final String[] SYLLABLES = {
    "an", "bel", "cor", "dun", "el", "far", "gar", "hol", "in", "jar", "kel", "lor", "mer", "nor"
  };

  private final Random random = new Random(7);
  private final List<Concept> concepts;

  private ManyWorks(Thesaurus thesaurus) {
    concepts = List.copyOf(thesaurus.concepts());
  }

  public static List<Work> of(Thesaurus thesaurus, int works, int notesEach) {
    ManyWorks maker = new ManyWorks(thesaurus);
    List<Work> made = new ArrayList<>();
    for (int i = 0; i < works; i++) {
      Object[] notes = new Object[notesEach];
      for (int n = 0; n < notesEach; n++) {
        notes[n] = maker.note();
      }
      made.add(monograph("W" + i + maker.word(), 1850 + i % 170, maker.words(4), notes));
    }
    return made;
  }

  private NoteMaker note() {
    NoteMaker note = new NoteMaker();
    Concept concept = concepts.get(random.nextInt(concepts.size()));
    String printed = concept.preferred().text() + (random.nextBoolean() ? "s" : "");
    if (random.nextInt(10) == 0) {
      note.unassigned(printed);
    } else {
      note.naming(printed, concept.id(), Why.TEXT);
    }
    note.text("p. " + (1 + random.nextInt(400)));
    note.photo("pl. " + (1 + random.nextInt(90)) + ", fig. " + (1 + random.nextInt(9)));
    note.claims(Claim.Kind.DATE, "c. " + (1700 + random.nextInt(200)) + ", " + words(6), null);
    return note.reading(words(12));
  }

  private String words(int count) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < count; i++) {
      words.append(i == 0 ? "" : " ").append(word());
    }
    return words.toString();
  }

  private String word() {
    StringBuilder word = new StringBuilder();
    for (int left = 2 + random.nextInt(2); left > 0; left--) {
      word.append(SYLLABLES[random.nextInt(SYLLABLES.length)]);
    }
    return word.toString();
  }
}
