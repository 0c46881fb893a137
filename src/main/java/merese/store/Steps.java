package merese.store;

import java.io.IOException;

/**
 * The steps of a change of several files, each told of before it is taken. Tests break a change off
 * at one of them, as a full disk or a power cut does.
 */
interface Steps {
  Steps NONE = what -> {};

  void before(String what) throws IOException;
}
