/**
 * The command line: one small class a command, which reads its words, asks {@code answer} or {@code
 * change}, and renders what they say. It decides nothing about glass or books.
 *
 * <p>Read {@link merese.cli.Main} first, then {@code Commands}: the list of all commands, where a
 * new one is one line. {@code Errors} is the only place that turns an exception into words. A
 * command prints through the {@code Context} that it is given and never through {@code System.out}.
 *
 * <p>A question is answered by a process that has just started, so this package keeps off what is
 * slow to load before the answer: only the command that is named is built, and no regular
 * expression, {@code String.format} or data binding runs on that path.
 */
package merese.cli;
