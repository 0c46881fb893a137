package merese.exchange;

import java.io.IOException;
import java.io.Writer;
import java.util.Collection;
import java.util.List;
import merese.model.ReceivedRecord;

/** Writes sources in one format; the same sources give the same text. */
public interface RecordWriter {
  /**
   * @param sources each once
   * @param kept the library's records that describe no source; a format takes its own
   */
  void write(Collection<Outgoing> sources, List<ReceivedRecord> kept, Writer out)
      throws IOException;
}
