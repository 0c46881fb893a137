package merese.change;

import java.util.OptionalInt;

/**
 * A change that was made.
 *
 * @param result what was done
 * @param change what the history calls it; empty where nothing was written
 */
public record Made<T>(T result, OptionalInt change) {}
