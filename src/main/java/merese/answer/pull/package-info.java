/**
 * Which books and pieces to take out for a talk or a shoot, and what to open each at.
 *
 * <p>Read {@link merese.answer.pull.Pulls} first. {@link merese.answer.pull.Pull} is the whole
 * answer: the same books twice, in the order of need and in the order of the shelf. {@link
 * merese.answer.pull.Spoken} says a number, a year or a place as one says it aloud.
 *
 * <p>A copy that is lent, missing or elsewhere is never used silently: {@link
 * merese.answer.pull.Shelving} says which copy is at hand, {@link merese.answer.pull.Substitutes}
 * what to take instead.
 */
package merese.answer.pull;
