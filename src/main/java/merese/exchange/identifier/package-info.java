/**
 * Numbers that name publications: checked, and written in their usual form.
 *
 * <p>May use merese.model and the library that knows the ranges of the ISBN agency.
 */
package merese.exchange.identifier;
