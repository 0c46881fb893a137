/**
 * What sources say, word for word, with the place and whatever corrects it.
 *
 * <p>Read {@link merese.answer.quote.Quoting} first.
 */
package merese.answer.quote;
