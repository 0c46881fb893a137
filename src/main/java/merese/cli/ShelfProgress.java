package merese.cli;

import merese.shelf.Watcher;

/** Shows on standard error that an index is being made; a quick update stays silent. */
final class ShelfProgress implements Watcher {
  /** Fewer files than this are read before anybody would wonder. */
  private static final int WORTH_SHOWING = 50;

  private final Context context;
  private final int worthShowing;
  private Progress progress;
  private boolean building;

  ShelfProgress(Context context) {
    this(context, WORTH_SHOWING);
  }

  /**
   * @param worthShowing fewer files than this are read in silence
   */
  ShelfProgress(Context context, int worthShowing) {
    this.context = context;
    this.worthShowing = worthShowing;
  }

  @Override
  public void building(String why) {
    building = true;
    ErrorLines.print(context, "Making the index: " + why + ".");
  }

  @Override
  public void start(int files) {
    if (building || files >= worthShowing) {
      progress = context.progress();
      progress.start("Reading files", files);
    }
  }

  @Override
  public void at(int files) {
    if (progress != null) {
      progress.at(files);
    }
  }

  @Override
  public void end() {
    if (progress != null) {
      progress.close();
      progress = null;
    }
    building = false;
  }

  @Override
  public void lacking(int files, String first) {
    if (context.screen().terminal() && context.errorScreen().terminal()) {
      context.err().println();
    }
    String changed = " changed by hand since the index was made, ";
    String which =
        files == 1
            ? first + " was" + changed
            : Page.many(files, "file") + " were" + changed + first + " first, ";
    ErrorLines.print(context, which + "and this answer lacks that: ask again.");
  }
}
