/**
 * What the library's notes say of the rights in pictures.
 *
 * <p>Read {@link merese.answer.rights.Clearing} first. It tells what was noted, by whom, and what
 * was not; what the law is, it never says.
 */
package merese.answer.rights;
