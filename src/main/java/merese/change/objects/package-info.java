/**
 * The user's own pieces: what they are, what was seen or felt of them, what they show and which
 * photographs there are.
 *
 * <p>Read {@link merese.change.objects.PieceChange}: it does what a {@link
 * merese.change.objects.PieceRequest} asks.
 *
 * <p>May use {@code store}, {@code exchange.picture}, {@code vocabulary} and what is below them.
 */
package merese.change.objects;
