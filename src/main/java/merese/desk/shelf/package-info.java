/**
 * The shelf: all sources, one source, and how sources are added, edited, joined and taken out.
 *
 * <p>Read {@link merese.desk.shelf.ShelfPage}, then {@link merese.desk.shelf.EditPage} for what
 * happens where two windows have one file open.
 */
package merese.desk.shelf;
