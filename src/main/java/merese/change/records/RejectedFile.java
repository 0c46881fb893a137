package merese.change.records;

import java.io.ByteArrayOutputStream;
import java.util.List;
import merese.exchange.Refused;
import merese.exchange.Wrapping;

/** Refused records as a file that can be mended and brought in. */
final class RejectedFile {
  private RejectedFile() {}

  static byte[] of(List<Refused> records, Wrapping wrapping) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(wrapping.before().getBytes(wrapping.charset()));
    for (int i = 0; i < records.size(); i++) {
      if (i > 0) {
        out.writeBytes(wrapping.between().getBytes(wrapping.charset()));
      }
      out.writeBytes(records.get(i).verbatim());
    }
    out.writeBytes(wrapping.after().getBytes(wrapping.charset()));
    return out.toByteArray();
  }
}
