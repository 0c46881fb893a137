/**
 * What is measured, not tested: read {@link merese.benchmark.Benchmarks} first. What is asked of a
 * warm process is measured by JMH ({@link merese.benchmark.InProcess}), whole processes from
 * outside through the launcher that a user has ({@link merese.benchmark.Timed}).
 */
package merese.benchmark;
