/**
 * From a phrase to what it may mean, and from a concept to its kin.
 *
 * <p>Read {@link merese.vocabulary.Thesaurus} first: it answers which concepts a phrase names, what
 * is broader, narrower or mistaken for something, and what a printed word could mean. {@link
 * merese.vocabulary.Folding} says when two spellings are the same word; {@link
 * merese.vocabulary.SkosIntegrity} says whether a vocabulary is sound; {@link
 * merese.vocabulary.Filing} gives the keys that put headings in order.
 *
 * <p>Folding, Thesaurus and what they return are on the path of every question that a cold process
 * answers. They use the JDK alone, and neither regular expressions, {@code String.format}, streams,
 * lambdas nor string concatenation, each of which costs tens of milliseconds the first time. Only
 * Filing uses ICU4J, when a key is made and never when keys are compared.
 */
package merese.vocabulary;
