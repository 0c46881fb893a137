/**
 * The desk: the answers and changes of the terminal as pages for a browser on this machine.
 *
 * <p>Read {@link merese.desk.Desk}: it lists the pages. Each is a class that says which addresses
 * it answers, asks the rooms {@code answer} and {@code change}, and hands the record to a template
 * of {@code src/main/jte}; what can be asked is in the address, so that a page can be kept, sent to
 * the printer or opened twice. No rule lives in a page.
 *
 * <p>May use everything but {@code cli}.
 */
package merese.desk;
