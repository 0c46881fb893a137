/**
 * What nobody has looked for, what was looked for in vain, what no source names or pictures, and
 * how to say so. Read {@link merese.answer.gaps.Gaps} first.
 *
 * <p>May use {@code answer}, {@code shelf} and what is below them; no other room of {@code answer}.
 */
package merese.answer.gaps;
