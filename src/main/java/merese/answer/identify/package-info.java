/**
 * The key to look-alikes: which kinds fit what was seen and felt, what rules the others out, what
 * was not looked at, which tests remain and where each kind is pictured. Read {@link
 * merese.answer.identify.Identify} first.
 *
 * <p>Where the key is silent it never rules out, and what was looked for and not found rules
 * nothing out either. The key is common practice, no source; pictures are the literature's. What a
 * piece is, nothing here says.
 *
 * <p>May use {@code answer}, {@code shelf} and what is below them; no other room of {@code answer}.
 */
package merese.answer.identify;
