/**
 * Numbers that name publications: checked, and written in their usual form.
 *
 * <p>{@link merese.exchange.identifier.Identifiers} is the way in. A number that fails its check is
 * never mended: what it was meant to be is not known.
 *
 * <p>May use merese.model. The ranges of the ISBN agency are a file in the jar of isbn-core; its
 * code is not used, as it needs an XML binding that Java no longer has.
 */
package merese.exchange.identifier;
