package merese.exchange;

import merese.model.ReceivedRecord;

/**
 * Takes what a reader finds, in the order of the file. To break a reading off, a method throws; the
 * reader lets that pass.
 */
public interface Receiver {
  void source(Incoming source);

  /**
   * What is part of the file and describes no source, but belongs to those that do: BibTeX's
   * {@code @preamble}, a set, data that entries share.
   */
  void kept(FilePlace place, ReceivedRecord record);

  void refused(Refused record);
}
