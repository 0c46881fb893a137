package merese.change.checks;

import java.nio.file.Path;

/**
 * One thing that was put right.
 *
 * @param what in words, such as "quenby-1949: the check for ring-bladed stood there twice"
 */
public record Mended(Path file, String what) {}
