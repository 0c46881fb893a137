/**
 * The Lucene index of a library, and the only place that knows Lucene.
 *
 * <p>Read {@link merese.search.NoteIndex} for what can be asked and {@link
 * merese.search.IndexUpdate} for how the index is written. Everything comes back as a hit with the
 * bytes that were stored with it; what the bytes mean, and what the hits add up to, is decided
 * elsewhere. An index that cannot be read raises {@link merese.search.IndexDamagedException}, so
 * that its owner can build it again.
 *
 * <p>A question in words starts at {@link merese.search.FindQuery}, which reads it and refuses with
 * a caret what can mean nothing; {@code FindLucene} makes Lucene's queries of it, {@code Finder}
 * asks them, and {@link merese.search.Highlights} finds the words again in the texts of the few
 * hits that are shown. {@link merese.search.Part} says how much a word counts where.
 *
 * <p>May use {@code model} and {@code vocabulary}.
 */
package merese.search;
