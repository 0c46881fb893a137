/**
 * What stands on the shelf: all sources in an order, and one source with all that the library has
 * of it.
 *
 * <p>Read {@link merese.answer.holdings.Holdings} and {@link merese.answer.holdings.Holding}.
 */
package merese.answer.holdings;
