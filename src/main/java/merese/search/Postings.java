package merese.search;

import java.io.Closeable;
import java.io.IOException;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What the documents of some terms give back. */
interface Postings extends Closeable {
  /** Takes values one by one. */
  interface Taker {
    void take(StoredValue value);
  }

  /**
   * Documents that have of each list at least one term, and do not have another term.
   *
   * @param allOf terms as {@link Fields} makes them
   */
  record Selection(List<List<String>> allOf, String without) {}

  /**
   * The values of all documents that have at least one of the terms, sorted.
   *
   * @param terms as {@link Fields} makes them
   */
  List<StoredValue> values(List<String> terms) throws IOException;

  /** The same one by one, unsorted: nothing is kept of those that the taker lets go. */
  void each(List<String> terms, Taker taker) throws IOException;

  /** The values of all documents of a selection, unsorted. */
  void each(Selection selection, Taker taker) throws IOException;

  /**
   * The documents that have at least one of the terms, by their edition, unread.
   *
   * @param pictured terms of which one makes a document one of a picture
   * @param without numbers of documents that are left out
   */
  Collection<NotesOfSource> gather(List<String> terms, List<String> pictured, BitSet without)
      throws IOException;

  /** The value of a document by its number. */
  StoredValue value(int document) throws IOException;

  /** How many documents have a term. */
  int count(String term) throws IOException;

  /** How many documents a selection has. */
  int count(Selection selection) throws IOException;

  /** The terms, as {@link Fields} makes them, that begin so; at most so many, sorted. */
  List<String> termsFrom(String begun, int most) throws IOException;

  /** The value of any one document that has a term; empty where none has. */
  Optional<StoredValue> anyValue(String term) throws IOException;
}
