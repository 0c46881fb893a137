/**
 * What a careful librarian would find in a library, file by file and across them: likely slips,
 * which are warnings, and a few faults that the store cannot see.
 *
 * <p>{@link merese.change.checks.Checking} is the way in. A false alarm is worse than a miss, so
 * each check says nothing where it cannot be sure that it compares like with like.
 *
 * <p>May use {@code shelf} and what is below it, and {@code change.records}.
 */
package merese.change.checks;
