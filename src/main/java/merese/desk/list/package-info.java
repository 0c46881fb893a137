/**
 * What the desk gives out: a list of sources to cite, a list of what to take from the shelf, and
 * features to be shown to people.
 *
 * <p>Read {@link merese.desk.list.Question}, which holds what is asked as an address, then {@link
 * merese.desk.list.ReadingListPage}.
 */
package merese.desk.list;
