package merese.desk;

import java.time.Clock;
import java.util.function.Consumer;
import merese.store.LibraryFolder;

/**
 * How a desk is set up.
 *
 * @param port to listen to; 0 for any that is free
 * @param clock in the time zone of whoever notes
 * @param by who notes, where a form does not say so
 * @param faults where faults of the program are told, for whoever started it
 */
public record DeskSettings(
    LibraryFolder library, int port, Clock clock, String by, Consumer<String> faults) {}
