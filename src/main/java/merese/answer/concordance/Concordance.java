package merese.answer.concordance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.answer.witnesses.Dependence;

/**
 * The answer to a {@link ConcordanceQuestion}.
 *
 * @param asked the terms as they were typed
 * @param concepts those that some source has, in the order asked
 * @param rows the sources that have one of them, by year
 * @param folded sources that are no witnesses of their own
 * @param without concepts that no source has
 * @param others how many sources have none of the concepts
 * @param names what each concept is called, by the first naming of each note
 * @param words what each of those words means in this library, alphabetically
 * @param agreement how far independent works use the same words
 */
public record Concordance(
    List<String> asked,
    List<Heading> concepts,
    List<Row> rows,
    List<Folded> folded,
    List<Heading> without,
    int others,
    List<Apart> apart,
    List<Names> names,
    List<Word> words,
    Agreement agreement) {

  /** What is counted, in one line. */
  public String counted() {
    if (rows.isEmpty()) {
      return "No source in this library has " + (without.size() == 1 ? "it." : "any of these.");
    }
    long independent = rows.stream().filter(Row::independent).count();
    String works = independent == rows.size() ? "" : " (" + independent + " independent)";
    return many(rows.size(), "source") + works + " and " + many(concepts.size(), "concept") + ".";
  }

  private static String many(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /**
   * What one source calls the concepts.
   *
   * @param independent whether it is a witness of its own
   * @param cells those that hold something, in the order of the concepts
   */
  public record Row(SourceLine source, boolean independent, List<Cell> cells) {
    /** What it calls a concept; none where it does not have it. */
    public List<Passage> terms(String concept) {
      for (Cell cell : cells) {
        if (cell.concept().equals(concept)) {
          return cell.terms();
        }
      }
      return List.of();
    }
  }

  /**
   * What one source calls one concept.
   *
   * @param terms each printed term with its own places: exact ones first, then narrower
   */
  public record Cell(String concept, List<Passage> terms) {}

  /**
   * A source that is counted with another.
   *
   * @param witness the source that speaks for it
   */
  public record Folded(SourceLine source, SourceLine witness, List<Dependence> why) {}

  /** Why notes stand apart from the table; none of them is counted. */
  public enum Why {
    OWN_WORK,
    SAYS_NOT_SHOWN,
    HOW_IT_IS_MADE,
    MEANING_NOT_STATED
  }

  /** Notes that stand apart, one entry a source. */
  public record Apart(Why why, List<Entry> entries) {}

  /**
   * What one concept is called.
   *
   * @param names the one that most sources use first
   * @param unnamed sources that have it and print no word for it first
   * @param alsoPrinted terms that stand only second or later in a note
   */
  public record Names(
      Heading concept, List<Name> names, List<SourceLine> unnamed, List<String> alsoPrinted) {}

  /**
   * One word for a concept.
   *
   * @param word as most sources print it
   * @param spellings all forms that count as this word (R7)
   * @param sources who uses it, by year
   * @param independent how many witnesses those are
   */
  public record Name(
      String word, List<String> spellings, List<SourceLine> sources, int independent) {}

  /** Whether a word can be used without saying what is meant. */
  public enum Safety {
    /** It has several meanings. */
    NOT_SAFE,
    /** It has one stated meaning, but a source leaves it open or a picture gives it another. */
    NOT_CERTAIN,
    /** It has one meaning in this library; a kind and its narrower kinds are one. */
    SAFE
  }

  /**
   * What a word means in this library.
   *
   * @param notStated sources that print just this and do not say what it means
   */
  public record Word(
      String word, Safety safety, List<Meaning> meanings, List<SourceLine> notStated) {}

  /**
   * One meaning of a word.
   *
   * @param stated sources whose text gives it
   * @param seen sources where only a picture, or the user's reading, gives it
   * @param byVocabulary whether the vocabulary has the word for it
   */
  public record Meaning(
      ConceptLine concept, List<SourceLine> stated, List<SourceLine> seen, boolean byVocabulary) {}

  /** Why there is no number, or none that says much. */
  public enum Lack {
    NO_WORDS,
    ONE_WORK,
    NO_PAIRS,
    ONE_CONCEPT,
    ONE_WORD
  }

  /** How to take a number, by the bounds that Krippendorff gives. */
  public enum Degree {
    /** 0.8 or more. */
    RELIABLE,
    /** From 0.667: for tentative conclusions only. */
    TENTATIVE,
    /** Above 0, and too low to rely on. */
    LOW,
    /** 0 or less. */
    NONE
  }

  /**
   * How far independent works use the same words for the same concepts.
   *
   * @param alpha Krippendorff's alpha for nominal data; empty where there is a lack
   * @param without the least and the greatest alpha when any one work is left out; empty where one
   *     of those cannot be told
   * @param works those with a word for a concept that another names too
   * @param concepts those that two or more works name
   * @param words how many words they use for them in all, one for each work and concept
   */
  public record Agreement(
      OptionalDouble alpha,
      Optional<Lack> lack,
      Optional<Degree> degree,
      Optional<Range> without,
      int works,
      int concepts,
      int words) {}

  /** From the least to the greatest. */
  public record Range(double least, double greatest) {}
}
