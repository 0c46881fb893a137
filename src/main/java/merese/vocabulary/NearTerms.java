package merese.vocabulary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.model.Facet;
import merese.model.Slips;

/**
 * Labels that resemble a phrase, by letters (optimal string alignment: an exchange of neighbours
 * counts one) or by the words they share.
 */
final class NearTerms {
  private static final double LEAST = 0.4;

  /** Shared words alone never rank with the same letters. */
  private static final double WORDS_AT_MOST = 0.9;

  private final LabelIndex index;
  private final Set<String> common = new HashSet<>();

  NearTerms(LabelIndex index, Iterable<Facet> facets) {
    this.index = index;
    for (Facet facet : facets) {
      common.addAll(Folding.words(facet.headNoun().orElse("")));
      for (String word : facet.optionalWords()) {
        common.add(Folding.word(word));
      }
    }
    common.addAll(List.of("a", "and", "of", "on", "the", "with"));
  }

  List<NearTerm> near(String phrase, int atMost) {
    List<String> words = Folding.words(phrase);
    if (words.isEmpty()) {
      return List.of();
    }
    String key = Folding.join(words);
    List<Candidate> candidates = new ArrayList<>();
    for (LabelEntry entry : index.entries) {
      if (!entry.isRegister()) {
        double letters = byLetters(key, Folding.join(entry.words));
        double nearness = Math.max(letters, WORDS_AT_MOST * byWords(words, entry.words));
        if (nearness >= LEAST) {
          candidates.add(new Candidate(entry, nearness, letters));
        }
      }
    }
    candidates.sort(new NearestFirst());
    List<NearTerm> near = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Candidate candidate : candidates) {
      if (near.size() < atMost && seen.add(candidate.entry.concept.id())) {
        near.add(new NearTerm(candidate.entry.concept, candidate.entry.label, candidate.nearness));
      }
    }
    return near;
  }

  /** 0 where more than a third of the letters differ. */
  private static double byLetters(String a, String b) {
    int longest = Math.max(a.length(), b.length());
    int most = Math.max(1, longest / 3);
    if (Math.abs(a.length() - b.length()) > most) {
      return 0;
    }
    int distance = Slips.between(a, b);
    return distance > most ? 0 : 1.0 - (double) distance / longest;
  }

  /** Sørensen's index over the words that tell labels apart. */
  private double byWords(List<String> phrase, List<String> label) {
    int inPhrase = 0;
    int inLabel = 0;
    int shared = 0;
    for (String word : label) {
      inLabel += common.contains(word) ? 0 : 1;
    }
    for (String word : phrase) {
      if (!common.contains(word)) {
        inPhrase++;
        for (String other : label) {
          if (!common.contains(other) && alike(word, other)) {
            shared++;
            break;
          }
        }
      }
    }
    return inPhrase + inLabel == 0 ? 0 : 2.0 * Math.min(shared, inLabel) / (inPhrase + inLabel);
  }

  private static boolean alike(String a, String b) {
    return a.equals(b)
        || (Math.min(a.length(), b.length()) >= 4
            && Math.abs(a.length() - b.length()) <= 1
            && Slips.between(a, b) <= 1);
  }

  private static final class Candidate {
    private final LabelEntry entry;
    private final double nearness;
    private final double letters;

    private Candidate(LabelEntry entry, double nearness, double letters) {
      this.entry = entry;
      this.nearness = nearness;
      this.letters = letters;
    }
  }

  private static final class NearestFirst implements Comparator<Candidate> {
    private final Comparator<LabelEntry> labels = new PhraseMatcher.BestLabelFirst();

    @Override
    public int compare(Candidate a, Candidate b) {
      int byNearness = Double.compare(b.nearness, a.nearness);
      int byLetters = byNearness != 0 ? byNearness : Double.compare(b.letters, a.letters);
      return byLetters != 0 ? byLetters : labels.compare(a.entry, b.entry);
    }
  }
}
