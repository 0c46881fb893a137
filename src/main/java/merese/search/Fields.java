package merese.search;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Set;

/** The names of the index's fields. */
final class Fields {
  /** What kind of document it is: one of those below, or what a caller calls its records. */
  static final String TYPE = "type";

  static final String SOURCE = "source";
  static final String STAMP = "stamp";

  /** The file that brought the document, so that it can be taken out again. */
  static final String FILE = "file";

  /** On the document that holds a file's stamp: the file's path. */
  static final String STAMP_OF = "stampOf";

  /** There too: the folder that the file is in. */
  static final String STAMP_IN = "stampIn";

  /** A page's file and number. */
  static final String UNIQUE = "unique";

  /** On a note: its edition's key. */
  static final String IN_SOURCE = "inSource";

  static final String CONCEPT = "concept";

  /** What is said of a concept, and in what place: see {@link NoteCriterion.Says}. */
  static final String SAYS = "says";

  static final String MEANING = "meaning";
  static final String POSSIBLE = "possible";
  static final String UNASSIGNED = "unassigned";
  static final String YES = "yes";

  /** What is so of all namings of a note together. */
  static final String TOGETHER = "together";

  /** A printed term whose meaning the text gives; and the same with that meaning after it. */
  static final String MEANT_IN_TEXT = "meantInText";

  /** A meaning that a text gives, and then the printed term, where that has several words. */
  static final String WORDS_IN_TEXT = "wordsInText";

  /** Every run of consecutive words of a printed term, so that any phrase in it is one term. */
  static final String PRINTED = "printed";

  static final String PRINTED_WHOLE = "printedWhole";
  static final String PIECE = "piece";

  /** The key of an edition that a place of the note corrects. */
  static final String CORRECTS = "corrects";

  /** The user's own piece that a note is linked to. */
  static final String OBJECT = "object";

  /** A label of the vocabulary or a word of the register, folded. */
  static final String LABEL = "label";

  /** On a line of a check log: its concept, and {@link #checked} what else is so of it. */
  static final String CHECKED = "checked";

  /** On the document that holds what every answer needs of an edition: its key. */
  static final String BRIEF_SOURCE = "briefSource";

  /** There too: the name of its file, without the folders. */
  static final String FILE_NAME = "fileName";

  /** There too: a year as a term whose order is that of the years, or {@link #UNDATED}. */
  static final String SOURCE_YEAR = "sourceYear";

  /** Sorts after all years. */
  static final String UNDATED = "undated";

  /** There too: its key in small letters, where it has others. */
  static final String KEY_IN_SMALL = "keyInSmall";

  /** There too: the name of its file in small letters, where it has others. */
  static final String FILE_IN_SMALL = "fileInSmall";

  /** There too: what it would have in common with its double. */
  static final String MARK = "mark";

  static final String SOURCE_KIND = "sourceKind";

  /** There too: {@link #YES} where the user has a copy. */
  static final String OWN_COPY = "ownCopy";

  /** There too: {@link #YES} for an article or film of the user's own. */
  static final String OWN_WORK = "ownWork";

  /** There too: author and year, by which answers call a source. */
  static final String REFERENCE = "reference";

  /** On a page: a concept whose name stands on it, or what is broader. */
  static final String PAGE_NAMES = "pageNames";

  /**
   * There too: such a concept, and a number from 2 that as many names of it as that stand there.
   */
  static final String PAGE_PLACES = "pagePlaces";

  /** There too: its source, and a key of the printed page or plate. */
  static final String PAGE_AT = "pageAt";

  /** There too: the file that it is in, by which pages are told apart without being read. */
  static final String PAGE_FILE = "pageFile";

  /** The words of a page, folded, with their positions. */
  static final String PAGE = "page";

  /** The same with letters that are taken for each other made the same. */
  static final String PAGE_LOOSE = "pageLoose";

  /** What runs over the end of a page, and the words there: see {@link OverPageEnd}. */
  static final String PAGE_END = "pageEnd";

  /** The text of a page, with what it goes on with on the next, for those who want to read it. */
  static final String PAGE_TEXT = "pageText";

  /** On the document that holds all of an edition: its key. */
  static final String WHOLE_SOURCE = "wholeSource";

  /** What a document can be found by in words; {@link Part} says what is in which. */
  static final String TERM = "term";

  static final String QUOTATION = "quotation";
  static final String CLAIM = "claim";
  static final String READING = "reading";
  static final String TITLE = "title";
  static final String AUTHOR = "author";
  static final String IMPRINT = "imprint";
  static final String PLACE = "place";
  static final String DEFINITION = "definition";
  static final String OWN = "own";

  /** All words, each as often as its parts weigh: what the ranking counts. */
  static final String ALL = "all";

  /** The words that a person may call a source by: of its key, its author and year, its title. */
  static final String NAMED_BY = "namedBy";

  static final String EDITION = "edition";
  static final String ABOUT = "about";
  static final String YEAR = "year";
  static final String KIND = "kind";
  static final String PICTURED = "pictured";

  /** What kind of hit a document is; only one that can be found has it. */
  static final String FOUND = "found";

  /** What the document gives back. */
  static final String STORED = "stored";

  /** The fields that a question names terms of. */
  static final List<String> ASKED =
      List.of(
          TYPE,
          STAMP_OF,
          STAMP_IN,
          IN_SOURCE,
          CONCEPT,
          SAYS,
          TOGETHER,
          MEANING,
          POSSIBLE,
          UNASSIGNED,
          MEANT_IN_TEXT,
          WORDS_IN_TEXT,
          PRINTED,
          PRINTED_WHOLE,
          PIECE,
          CORRECTS,
          OBJECT,
          LABEL,
          CHECKED,
          BRIEF_SOURCE,
          FILE_NAME,
          KEY_IN_SMALL,
          FILE_IN_SMALL,
          MARK,
          SOURCE_YEAR,
          SOURCE_KIND,
          OWN_COPY,
          OWN_WORK,
          REFERENCE,
          NAMED_BY,
          PAGE_NAMES,
          PAGE_PLACES,
          PAGE_AT,
          WHOLE_SOURCE);

  /** Those of them by which sources are counted unread. */
  static final Set<String> BY_SOURCE =
      Set.of(SAYS, MEANT_IN_TEXT, CHECKED, OWN_WORK, OWN_COPY, SOURCE_KIND, SOURCE_YEAR);

  /** In chars, of which each has at most three bytes. */
  private static final int LONGEST_TERM = 10_000;

  private static final int CUT_TERM = 1_000;

  private Fields() {}

  static String page(String file, int page) {
    return file + '\n' + page;
  }

  /**
   * @param count from 2
   */
  static String places(String concept, int count) {
    return concept + '\n' + count;
  }

  static String at(String edition, String key) {
    return edition + '\n' + key;
  }

  /** The folder of a path, "" for none. */
  static String folderOf(String path) {
    return path.substring(0, Math.max(0, path.lastIndexOf('/')));
  }

  static String piece(String edition, String piece) {
    return edition + '\n' + piece;
  }

  /**
   * A text as a term: Lucene takes none of more than 32,766 bytes, and a damaged or a strange file
   * may have any. One that is longer than any real one is cut, and told from others by its hash.
   */
  static String bounded(String text) {
    String sound = hasSurrogate(text) ? new String(text.getBytes(UTF_8), UTF_8) : text;
    return sound.length() <= LONGEST_TERM
        ? sound
        : sound.substring(0, sound.offsetByCodePoints(0, CUT_TERM))
            + '\n'
            + sound.length()
            + '\n'
            + sound.hashCode();
  }

  /** Half a letter, which a strange file may have, is stored as another and looked for as that. */
  private static boolean hasSurrogate(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE) {
        return true;
      }
    }
    return false;
  }

  /** A field and a text in it, as one string that sorts by field. */
  static String term(String field, String text) {
    return field + '\0' + bounded(text);
  }

  /** The same for all names that differ in capitals alone, as {@link String#equalsIgnoreCase}. */
  static String small(String name) {
    StringBuilder small = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i += Character.charCount(name.codePointAt(i))) {
      small.appendCodePoint(Character.toLowerCase(Character.toUpperCase(name.codePointAt(i))));
    }
    return small.toString();
  }

  static String nameOf(String term) {
    return term.substring(0, term.indexOf('\0'));
  }

  static String textOf(String term) {
    return term.substring(term.indexOf('\0') + 1);
  }

  /** A concept, and a letter for each of what is said of it. */
  static String says(NoteCriterion.Says says) {
    char how = (char) ('a' + says.how().ordinal());
    char place = (char) ('a' + says.place().ordinal());
    return says.concept() + '\n' + how + place + (says.pictured() ? 'p' : 'w');
  }

  /** A term and its meaning. */
  static String meant(List<String> words, String concept) {
    return String.join(" ", words) + '\n' + concept;
  }

  /**
   * @param limited whether the check looked for what is in some scope only
   */
  static String checked(String concept, boolean limited) {
    return concept + (limited ? "\nlimited" : "\n");
  }

  static String together(NoteCriterion.Together what) {
    return switch (what) {
      case SEVERAL -> "several";
      case EACH_PRESENT -> "present";
      case EACH_PICTURED -> "pictured";
      case SOME_PRESENT -> "some present";
      case SOME_PICTURED -> "some pictured";
    };
  }

  static String term(NoteCriterion criterion) {
    if (criterion instanceof NoteCriterion.Means means) {
      return term(MEANING, means.concept());
    } else if (criterion instanceof NoteCriterion.MeansExactly exactly) {
      return term(CONCEPT, exactly.concept());
    } else if (criterion instanceof NoteCriterion.Says says) {
      return term(SAYS, says(says));
    } else if (criterion instanceof NoteCriterion.Namings namings) {
      return term(TOGETHER, together(namings.what()));
    } else if (criterion instanceof NoteCriterion.MayMean may) {
      return term(POSSIBLE, may.concept());
    } else if (criterion instanceof NoteCriterion.Prints prints) {
      return term(PRINTED, prints.words());
    } else if (criterion instanceof NoteCriterion.PrintsExactly exactly) {
      return term(PRINTED_WHOLE, String.join(" ", exactly.words()));
    } else if (criterion instanceof NoteCriterion.SpeaksOf piece) {
      return term(PIECE, piece(piece.edition(), piece.piece()));
    } else if (criterion instanceof NoteCriterion.Corrects corrects) {
      return term(CORRECTS, corrects.edition());
    } else if (criterion instanceof NoteCriterion.LinkedTo linked) {
      return term(OBJECT, linked.object());
    } else if (criterion instanceof NoteCriterion.InSource source) {
      return term(IN_SOURCE, source.edition());
    }
    throw new IllegalArgumentException("no term for " + criterion);
  }
}
