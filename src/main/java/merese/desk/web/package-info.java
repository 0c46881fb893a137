/**
 * What all pages of the desk share: who may ask, which shelves are open, how a page is filled in.
 *
 * <p>Read {@link merese.desk.web.Site}, then {@link merese.desk.web.Page}.
 */
package merese.desk.web;
