/**
 * Attaching the text of a book's own pages to its edition, and the map that says which printed page
 * each is. Read {@link merese.change.pages.Attaching}.
 */
package merese.change.pages;
