package merese.desk.web;

import merese.store.HistoryEntry;

/** A change in words: what was done, or what was taken back or put back. */
public final class DoneWords {
  private static final String UNDO = "undo of ";

  private DoneWords() {}

  /** "Taken back: note n4", with the words of the change that it is about in the end. */
  public static String said(HistoryEntry entry) {
    return switch (times(entry.what())) {
      case 0 -> "On the disk: " + original(entry.what());
      default ->
          (times(entry.what()) % 2 == 1 ? "Taken back: " : "Put back: ") + original(entry.what());
    };
  }

  /** The same for a list of changes. */
  public static String listed(String what) {
    int times = times(what);
    return times == 0 ? what : (times % 2 == 1 ? "taken back: " : "put back: ") + original(what);
  }

  public static String button(HistoryEntry entry) {
    return button(entry.what());
  }

  /** What taking a change back is called: a change that took back is put back. */
  public static String button(String what) {
    return times(what) % 2 == 1 ? "Put it back" : "Take it back";
  }

  private static int times(String what) {
    int times = 0;
    String rest = what;
    while (inner(rest) != null) {
      rest = inner(rest);
      times++;
    }
    return times;
  }

  private static String original(String what) {
    String rest = what;
    while (inner(rest) != null) {
      rest = inner(rest);
    }
    return rest;
  }

  /** What stands behind "undo of 9: "; null where it is no undo. */
  private static String inner(String what) {
    if (!what.startsWith(UNDO)) {
      return null;
    }
    int at = UNDO.length();
    while (at < what.length() && what.charAt(at) >= '0' && what.charAt(at) <= '9') {
      at++;
    }
    return at > UNDO.length() && what.startsWith(": ", at) ? what.substring(at + 2) : null;
  }
}
