package merese.exchange.marc;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.FilePlace;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Wrapping;

/**
 * Reads MARC 21 records in the exchange format of ISO 2709 (".mrc").
 *
 * <p>Guarantees: a bad record costs none of the others; holdings, authorities and classes are kept
 * and are no sources; in UTF-8 or MARC-8. A record has at most 1,000,000 bytes, ten times what the
 * format allows; what is longer is refused in parts. See {@code Iso2709Pieces} for how records are
 * told apart, {@code Iso2709Fields} for what is mended and {@link MarcMeaning} for what is
 * understood.
 */
public final class MarcReader implements RecordReader {
  @Override
  public void read(String file, InputStream in, Receiver to) throws IOException {
    Handing handing = new Handing(to);
    MarcCharacters characters = new MarcCharacters();
    Iso2709Pieces pieces = new Iso2709Pieces(in);
    int number = 0;
    for (Optional<Iso2709Pieces.Piece> piece = pieces.next();
        piece.isPresent();
        piece = pieces.next()) {
      FilePlace place = new FilePlace(file, 0, 0, ++number);
      byte[] bytes = piece.get().bytes();
      List<String> remarks = new ArrayList<>();
      String where = "from byte " + (piece.get().offset() + 1) + " of the file";
      try {
        MarcRecord record = Iso2709Fields.read(characters, bytes, remarks);
        handing.record(bytes.length, place, where, record, remarks, () -> bytes);
      } catch (BadRecord bad) {
        handing.refused(place, where, bad, bytes);
      }
    }
    handing.finish();
  }

  @Override
  public Wrapping wrapping() {
    return new Wrapping("", "", "");
  }
}
