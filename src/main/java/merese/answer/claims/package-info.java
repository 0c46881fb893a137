/**
 * Who claims what of a feature: dates, places, makers, methods, frequency, and warnings of copies.
 *
 * <p>Read {@link merese.answer.claims.Claims} first. One row is one claim in its source's own
 * words; nothing is averaged or merged. What is computed from words is marked so. A source without
 * a claim is silent, which is neither for nor against.
 */
package merese.answer.claims;
