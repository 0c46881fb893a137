/**
 * Answers as files: what the terminal writes and what the desk saves are the same, letter by
 * letter.
 *
 * <p>Read {@link merese.answer.written.ListForm}.
 */
package merese.answer.written;
