/**
 * Pictures that a user took, brought in from a camera or a telephone: upright, and with nothing in
 * them but the picture. Read {@link merese.exchange.picture.PictureCopy}.
 *
 * <p>The metadata reader and ImageIO are used here alone.
 */
package merese.exchange.picture;
