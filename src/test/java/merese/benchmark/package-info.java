/**
 * What is measured, not tested: read {@link merese.benchmark.Benchmarks} first. A comparison that
 * needs a small heap, such as building an index in 256 MB, starts a process with {@code -Xmx256m}
 * through {@link merese.benchmark.Timed}.
 */
package merese.benchmark;
