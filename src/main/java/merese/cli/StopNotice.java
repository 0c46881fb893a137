package merese.cli;

import java.io.PrintWriter;

/**
 * Says what is done and what is not, should the process be stopped from outside (Ctrl-C) before
 * this is closed.
 */
final class StopNotice implements AutoCloseable {
  private final Thread hook;
  private volatile String words;

  private StopNotice(PrintWriter err, String words) {
    this.words = words;
    this.hook = new Thread(() -> say(err));
  }

  /**
   * @param words for a stop from now on
   */
  static StopNotice of(PrintWriter err, String words) {
    StopNotice notice = new StopNotice(err, words);
    Runtime.getRuntime().addShutdownHook(notice.hook);
    return notice;
  }

  /** Other words for a stop from now on. */
  void nowSay(String others) {
    words = others;
  }

  private void say(PrintWriter err) {
    err.println();
    err.println(words);
    err.flush();
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // the process is being stopped just now, and the words are being said
    }
  }
}
