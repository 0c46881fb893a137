package merese.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.PriorityQueue;
import merese.search.SegmentTable.Term;

/**
 * Counts notes and editions of one commit by what is said of them, without reading one. What it
 * costs grows with the number of segments and with how many have what is asked for, up to a bit for
 * each edition or document; not with what the notes hold.
 */
public final class Census {
  private final CommitTables tables;

  Census(CommitTables tables) {
    this.tables = tables;
  }

  private interface OfSegment {
    NumberSet of(SegmentTable segment, int number);
  }

  private NumberSet[] each(OfSegment what) {
    SegmentTable[] segments = tables.segments();
    NumberSet[] found = new NumberSet[segments.length];
    try {
      for (int i = 0; i < segments.length; i++) {
        found[i] = what.of(segments[i], i);
      }
    } catch (RuntimeException e) {
      throw NoteIndex.damaged(e);
    }
    return found;
  }

  private record Having(List<Term> anyOf) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.having(anyOf);
    }
  }

  private record EditionsHaving(List<Term> anyOf) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.editionsHaving(anyOf);
    }
  }

  /** No editions. */
  public SourceSet none() {
    return sources(List.of());
  }

  public NoteSet noNotes() {
    return notes(List.of());
  }

  /** The notes that meet at least one of the criteria. */
  public NoteSet having(Collection<? extends NoteCriterion> anyOf) {
    return notes(NoteIndex.terms(anyOf));
  }

  /** Those of some notes that meet at least one of the criteria. */
  public NoteSet among(NoteSet some, Collection<? extends NoteCriterion> anyOf) {
    return new NoteSet(each(new Among(some, CommitTables.terms(NoteIndex.terms(anyOf)))));
  }

  private record Among(NoteSet some, List<Term> anyOf) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.among(some.bySegment()[number], anyOf);
    }
  }

  /**
   * The notes that print one of some terms, among other words or alone.
   *
   * @param anyOf folded words, with a space between
   */
  public NoteSet printing(Collection<String> anyOf) {
    List<String> terms = new ArrayList<>();
    for (String words : anyOf) {
      terms.add(Fields.term(new NoteCriterion.Prints(words)));
    }
    return notes(terms);
  }

  /** The notes that have a naming without a concept. */
  public NoteSet unassigned() {
    return notes(List.of(Fields.term(Fields.UNASSIGNED, Fields.YES)));
  }

  /** The lines of check logs on one of some concepts. */
  public NoteSet checks(Collection<String> concepts) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.CHECKED, concept));
    }
    return notes(terms);
  }

  /** Those of them that looked for what is in some scope only. */
  public NoteSet limitedChecks(Collection<String> concepts) {
    return notes(checked(concepts, true));
  }

  /** The editions with such a line that looked for anything. */
  public SourceSet checkedWithoutLimit(Collection<String> concepts) {
    return sources(checked(concepts, false));
  }

  private static List<String> checked(Collection<String> concepts, boolean limited) {
    List<String> terms = new ArrayList<>();
    for (String concept : concepts) {
      terms.add(Fields.term(Fields.CHECKED, Fields.checked(concept, limited)));
    }
    return terms;
  }

  NoteSet notes(List<String> terms) {
    return new NoteSet(each(new Having(CommitTables.terms(terms))));
  }

  /** The editions with a note that meets at least one of the criteria. */
  public SourceSet saying(Collection<NoteCriterion.Says> anyOf) {
    return sources(NoteIndex.terms(anyOf));
  }

  private SourceSet sources(List<String> terms) {
    return new SourceSet(each(new EditionsHaving(CommitTables.terms(terms))));
  }

  /**
   * The editions with a note that meets at least one of the criteria and is not left out.
   *
   * @param without notes that are left out
   */
  public SourceSet saying(Collection<NoteCriterion.Says> anyOf, NoteSet without) {
    List<Term> terms = CommitTables.terms(NoteIndex.terms(anyOf));
    return new SourceSet(each(new SayingWithout(terms, without)));
  }

  /** Few notes are left out as a rule: only the editions that these are of are looked at again. */
  private record SayingWithout(List<Term> anyOf, NoteSet without) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      NumberSet editions = segment.editionsHaving(anyOf);
      NumberSet leftOut = segment.among(without.bySegment()[number], anyOf);
      if (leftOut.isEmpty()) {
        return editions;
      }
      NumberSet inDoubt = segment.editionsOf(leftOut);
      NumberSet left = segment.among(segment.documentsOf(inDoubt), anyOf).without(leftOut);
      return editions.without(inDoubt).or(segment.editionsOf(left));
    }
  }

  /**
   * The editions whose text says that a term means a concept.
   *
   * @param forms the term as folded words, in all forms that it may have
   */
  public SourceSet meaningInText(Collection<List<String>> forms, String concept) {
    List<String> terms = new ArrayList<>();
    for (List<String> words : forms) {
      terms.add(Fields.term(Fields.MEANT_IN_TEXT, Fields.meant(words, concept)));
    }
    return sources(terms);
  }

  /** The editions that some notes or checks are of. */
  public SourceSet of(NoteSet notes) {
    return new SourceSet(each(new EditionsOf(notes)));
  }

  private record EditionsOf(NoteSet notes) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.editionsOf(notes.bySegment()[number]);
    }
  }

  /** All notes and checks of some editions, and the editions themselves. */
  public NoteSet of(SourceSet sources) {
    return new NoteSet(each(new DocumentsOf(sources)));
  }

  private record DocumentsOf(SourceSet sources) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.documentsOf(sources.bySegment()[number]);
    }
  }

  /** What holds all that every answer needs of some editions. */
  NumberSet[] briefs(SourceSet sources) {
    return each(new Briefs(sources));
  }

  private record Briefs(SourceSet sources) implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.firstsOf(sources.bySegment()[number]);
    }
  }

  /** The editions of the user's own articles and films. */
  public SourceSet ownWork() {
    return sources(List.of(Fields.term(Fields.OWN_WORK, Fields.YES)));
  }

  /** The editions that have one of the keys. */
  public SourceSet called(Collection<String> keys) {
    List<String> terms = new ArrayList<>();
    for (String key : keys) {
      terms.add(Fields.term(Fields.BRIEF_SOURCE, key));
    }
    return of(notes(terms));
  }

  /**
   * The editions that some files of works brought.
   *
   * @param paths no two of these files have one name
   */
  public SourceSet inFiles(Collection<String> paths) {
    List<String> terms = new ArrayList<>();
    for (String path : paths) {
      terms.add(Fields.term(Fields.FILE_NAME, path.substring(path.lastIndexOf('/') + 1)));
    }
    return of(notes(terms));
  }

  /** The editions of a selection. */
  public SourceSet selected(SourceSelection selection) {
    SourceSet selected = new SourceSet(each(new All()));
    for (List<String> anyOf : selection.terms()) {
      selected = selected.and(sources(anyOf));
    }
    return selected.without(ownWork());
  }

  private record All() implements OfSegment {
    @Override
    public NumberSet of(SegmentTable segment, int number) {
      return segment.allEditions();
    }
  }

  /** How many works some editions are of. */
  public int works(SourceSet sources) {
    int works = 0;
    try {
      for (int i = 0; i < tables.segments().length; i++) {
        works += tables.segments()[i].works(sources.bySegment()[i]); // a work is in one segment
      }
    } catch (RuntimeException e) {
      throw NoteIndex.damaged(e);
    }
    return works;
  }

  /** The first of some editions, by year, author and key (R4). */
  public SourceSet first(SourceSet sources, int most) {
    if (sources.size() <= most) {
      return sources;
    }
    PriorityQueue<Next> queue = new PriorityQueue<>();
    NumberSet[] first = new NumberSet[tables.segments().length];
    try {
      Next[] nexts = new Next[first.length];
      for (int i = 0; i < first.length; i++) {
        nexts[i] = new Next(tables.segments()[i], sources.bySegment()[i]);
        add(nexts[i], queue);
      }
      for (int left = most; left > 0; left--) {
        Next next = queue.remove();
        next.taken++;
        add(next, queue);
      }
      for (int i = 0; i < first.length; i++) {
        first[i] = sources.bySegment()[i].first(nexts[i].taken);
      }
    } catch (RuntimeException e) {
      throw NoteIndex.damaged(e);
    }
    return new SourceSet(first);
  }

  private static void add(Next next, PriorityQueue<Next> queue) {
    if (next.advance()) {
      queue.add(next);
    }
  }

  /** The next edition of a segment. */
  private static final class Next implements Comparable<Next> {
    private final SegmentTable segment;
    private final NumberSet editions;
    private int edition = -1;
    private int taken;
    private byte[] standing;

    Next(SegmentTable segment, NumberSet editions) {
      this.segment = segment;
      this.editions = editions;
    }

    boolean advance() {
      edition = editions.next(edition + 1);
      if (edition >= 0) {
        standing = segment.owner(edition).standing();
      }
      return edition >= 0;
    }

    @Override
    public int compareTo(Next other) {
      return Arrays.compareUnsigned(standing, other.standing);
    }
  }
}
