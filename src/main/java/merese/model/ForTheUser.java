package merese.model;

/**
 * An exception whose message is written for the user: what is wrong, where, and what to do. Every
 * other exception counts as a fault of the program.
 */
public interface ForTheUser {
  String getMessage();
}
