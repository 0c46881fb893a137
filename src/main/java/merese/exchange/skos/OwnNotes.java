package merese.exchange.skos;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;
import merese.model.Homonym;
import merese.model.ReceivedRecord;
import merese.vocabulary.Thesaurus;

/**
 * What SKOS has no property for, as sentences in its notes: for a person to read, and for us to
 * read back. A concept is named in them by its preferred label with its id in square brackets.
 */
final class OwnNotes {
  static final String LANGUAGE = "en";

  private static final String MISTAKEN = "Mistaken for ";
  private static final String IS_MISTAKEN = "] is mistaken for this";
  private static final String HOW_TO_TELL = "How to tell: ";
  private static final String UNCERTAIN = "Status: uncertain; usage varies";
  private static final String ELSEWHERE = " is also used for something else";
  private static final String TERM = "The term in ";
  private static final String IS = " is ";
  private static final String NO_ADDRESS = "Match without an address, ";
  private static final String HEAD_NOUN = "Head noun: ";
  private static final String LEFT_OUT = "May be left out: ";
  private static final String ASKS = " asks which is meant:";

  private OwnNotes() {}

  static String mistakenFor(String id, String displayed, Optional<String> test) {
    return MISTAKEN + named(id, displayed) + test.map(t -> ": " + t).orElse("");
  }

  /** What stands under the other concept of a pair; the test then describes this one. */
  static String isMistaken(String id, String displayed, Optional<String> test) {
    return displayed + " [" + id + IS_MISTAKEN + test.map(t -> ": " + t).orElse("");
  }

  static String howToTell(String remark) {
    return HOW_TO_TELL + remark;
  }

  static Optional<String> status(Concept.Status status) {
    return status == Concept.Status.UNCERTAIN ? Optional.of(UNCERTAIN) : Optional.empty();
  }

  static String elsewhere(String displayed) {
    return quoted(displayed) + ELSEWHERE;
  }

  static String term(String displayed, String text) {
    return TERM + quoted(displayed) + IS + quoted(text);
  }

  static String matchWithoutAddress(Concept.Match match) {
    return NO_ADDRESS + match.kind().code() + ": " + match.uri();
  }

  static String headNoun(String noun) {
    return HEAD_NOUN + noun;
  }

  static String mayBeLeftOut(String word) {
    return LEFT_OUT + word;
  }

  static String asks(Homonym homonym) {
    StringBuilder out = new StringBuilder(quoted(homonym.word())).append(ASKS);
    homonym.concepts().forEach(id -> out.append(" [").append(id).append(']'));
    homonym.remark().ifPresent(remark -> out.append("; ").append(remark));
    return out.toString();
  }

  /**
   * A label as it is displayed, taken apart: what stands in brackets at its end is its scope.
   * Brackets inside a scope are part of it.
   */
  static Concept.Label label(String displayed) {
    if (displayed.endsWith(")")) {
      for (int at = displayed.indexOf(" ("); at > 0; at = displayed.indexOf(" (", at + 1)) {
        if (closes(displayed, at + 1) == displayed.length() - 1) {
          String text = displayed.substring(0, at);
          String scope = displayed.substring(at + 2, displayed.length() - 1);
          if (!text.isBlank() && !scope.isBlank()) {
            return new Concept.Label(text, Optional.of(scope), false);
          }
        }
      }
    }
    return Concept.Label.of(displayed);
  }

  private static int closes(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      if (text.charAt(i) == '(') {
        depth++;
      } else if (text.charAt(i) == ')') {
        depth--;
        if (depth == 0) {
          return i;
        }
      }
    }
    return -1;
  }

  /** A label as displayed, with the term in it where a note names that. */
  static Concept.Label label(String displayed, SkosConcept.Own own) {
    boolean elsewhere = own.elsewhere().contains(displayed);
    Concept.Label label = label(displayed);
    for (SkosConcept.Own.Term term : own.terms()) {
      if (term.displayed().equals(displayed)) {
        label = withTerm(displayed, term.text());
      }
    }
    return new Concept.Label(label.text(), label.scope(), elsewhere);
  }

  private static Concept.Label withTerm(String displayed, String text) {
    int from = text.length() + 2;
    int to = displayed.length() - 1;
    return displayed.startsWith(text + " (") && displayed.endsWith(")") && from < to
        ? new Concept.Label(text, Optional.of(displayed.substring(from, to)), false)
        : Concept.Label.of(text);
  }

  /** Takes the notes of one concept apart; what is none of ours is left. */
  static final class Reader {
    private final Map<String, String> displayedById;
    private final Set<String> labels;
    private final List<Concept.LookAlike> lookAlikes = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<Concept.Status> status = new ArrayList<>();
    private final Set<String> elsewhere = new LinkedHashSet<>();
    private final List<SkosConcept.Own.Term> terms = new ArrayList<>();
    private final List<Concept.Match> odd = new ArrayList<>();
    private final List<ReceivedRecord.Field> notes = new ArrayList<>();

    /**
     * @param displayedById the preferred labels of the file's concepts by their notations
     * @param labels of this concept, as displayed
     */
    Reader(Map<String, String> displayedById, Set<String> labels) {
      this.displayedById = displayedById;
      this.labels = labels;
    }

    SkosConcept.Own own() {
      return new SkosConcept.Own(lookAlikes, remarks, status, elsewhere, terms, odd, notes);
    }

    /** Whether the note was one of ours and is taken. */
    boolean take(String property, RdfTerm.Literal literal) {
      String note = literal.text();
      boolean ours =
          literal.language().orElse("").equals(LANGUAGE)
              && (lookAlike(note)
                  || isMistaken(note)
                  || remark(note)
                  || status(note)
                  || ofLabel(note)
                  || odd(note));
      if (ours) {
        notes.add(new ReceivedRecord.Field(property, literal.printed()));
      }
      return ours;
    }

    private boolean lookAlike(String note) {
      if (!note.startsWith(MISTAKEN)) {
        return false;
      }
      Concept.LookAlike found = null;
      for (int at = note.indexOf(" ["); at >= 0; at = note.indexOf(" [", at + 1)) {
        int end = note.indexOf(']', at);
        String id = end < 0 ? "" : note.substring(at + 2, end);
        String after = end < 0 ? "" : note.substring(end + 1);
        if (displayedById.containsKey(id)
            && (after.isEmpty() || (after.startsWith(": ") && !after.substring(2).isBlank()))) {
          Optional<String> test =
              after.isEmpty() ? Optional.empty() : Optional.of(after.substring(2));
          boolean named =
              at > MISTAKEN.length()
                  && displayedById.get(id).equals(note.substring(MISTAKEN.length(), at));
          if (named || found == null) {
            found = new Concept.LookAlike(id, test);
          }
          if (named) {
            break;
          }
        }
      }
      if (found != null) {
        lookAlikes.add(found);
      }
      return found != null;
    }

    /** The same pair is stated under the other concept. */
    private boolean isMistaken(String note) {
      int end = note.indexOf(IS_MISTAKEN);
      int start = end < 0 ? -1 : note.lastIndexOf(" [", end);
      if (start < 0) {
        return false;
      }
      String after = note.substring(end + IS_MISTAKEN.length());
      return displayedById.containsKey(note.substring(start + 2, end))
          && (after.isEmpty() || after.startsWith(": "));
    }

    private boolean remark(String note) {
      boolean ours = note.startsWith(HOW_TO_TELL) && remarks.isEmpty();
      if (ours) {
        remarks.add(note.substring(HOW_TO_TELL.length()));
      }
      return ours;
    }

    private boolean status(String note) {
      boolean ours = note.equals(UNCERTAIN);
      if (ours && status.isEmpty()) {
        status.add(Concept.Status.UNCERTAIN);
      }
      return ours;
    }

    private boolean ofLabel(String note) {
      for (String label : labels) {
        String start = TERM + quoted(label) + IS + "“";
        if (note.equals(OwnNotes.elsewhere(label))) {
          elsewhere.add(label);
          return true;
        }
        if (note.startsWith(start) && note.endsWith("”") && note.length() > start.length() + 1) {
          String text = note.substring(start.length(), note.length() - 1);
          terms.add(new SkosConcept.Own.Term(label, text));
          return true;
        }
      }
      return false;
    }

    private boolean odd(String note) {
      if (note.startsWith(NO_ADDRESS)) {
        for (Concept.Match.Kind kind : Concept.Match.Kind.values()) {
          String start = NO_ADDRESS + kind.code() + ": ";
          if (note.startsWith(start) && note.length() > start.length()) {
            odd.add(new Concept.Match(kind, note.substring(start.length())));
            return true;
          }
        }
      }
      return false;
    }
  }

  static Optional<String> readHeadNoun(String note) {
    return after(note, HEAD_NOUN);
  }

  static Optional<String> readMayBeLeftOut(String note) {
    return after(note, LEFT_OUT);
  }

  private static Optional<String> after(String note, String start) {
    return note.startsWith(start) && note.length() > start.length()
        ? Optional.of(note.substring(start.length()))
        : Optional.empty();
  }

  /** A word of the register; empty for a note that is none of ours. */
  static Optional<Homonym> readAsks(String note) {
    int end = note.indexOf("”" + ASKS);
    if (!note.startsWith("“") || end < 2) {
      return Optional.empty();
    }
    String word = note.substring(1, end);
    int at = end + 1 + ASKS.length();
    List<String> ids = new ArrayList<>();
    while (note.startsWith(" [", at) && note.indexOf(']', at) > at + 2) {
      int close = note.indexOf(']', at);
      ids.add(note.substring(at + 2, close));
      at = close + 1;
    }
    String after = note.substring(at);
    boolean remarked = after.startsWith("; ") && !after.substring(2).isBlank();
    if (ids.isEmpty() || word.isBlank() || !(after.isEmpty() || remarked)) {
      return Optional.empty();
    }
    Optional<String> remark = remarked ? Optional.of(after.substring(2)) : Optional.empty();
    return Optional.of(new Homonym(word, ids, remark));
  }

  /** How a label is displayed, and whether that can be taken apart again as it is. */
  static boolean isPlain(Concept.Label label) {
    Concept.Label again = label(Thesaurus.display(label));
    return again.text().equals(label.text()) && again.scope().equals(label.scope());
  }

  private static String named(String id, String displayed) {
    return displayed + " [" + id + "]";
  }

  private static String quoted(String text) {
    return "“" + text + "”";
  }
}
