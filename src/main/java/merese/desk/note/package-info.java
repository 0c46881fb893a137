/**
 * Where notes are taken, and what was changed is looked through, mended or taken back.
 *
 * <p>Read {@link merese.desk.note.NotePage} first.
 */
package merese.desk.note;
