package merese.exchange.marc;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.FilePlace;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Wrapping;
import merese.exchange.marc.XmlPieces.Piece;

/**
 * Reads MARC 21 records in MARCXML, alone, in a collection or in an answer of OAI-PMH or SRU.
 *
 * <p>Guarantees: what is broken costs no other record; a document type declaration is refused, and
 * no entity is expanded and nothing fetched; memory for one record at a time, of 16,000,000 bytes
 * at most. See {@code XmlPieces} for how records are told apart and {@link MarcMeaning} for what is
 * understood.
 */
public final class MarcXmlReader implements RecordReader {
  private static final int SHOWN = 30;

  private Wrapping wrapping = Wrapping.NONE;

  @Override
  public void read(String file, InputStream in, Receiver to) throws IOException {
    XmlEncoding encoding = XmlEncoding.of(in);
    XmlPieces pieces =
        new XmlPieces(encoding.in(), encoding.charset().equals(StandardCharsets.UTF_8));
    Handing handing = new Handing(to);
    Reading reading = new Reading(file, encoding, handing);
    for (Optional<Piece> piece = pieces.next(); piece.isPresent(); piece = pieces.next()) {
      reading.piece(piece.get());
    }
    wrapping = wrapping(encoding, pieces.scopes().prefixes());
    if (!pieces.sawMarc() && reading.number == 0) {
      reading.nothing(pieces.head());
    }
    handing.finish();
  }

  private static Wrapping wrapping(XmlEncoding encoding, Iterable<String> prefixes) {
    StringBuilder before = new StringBuilder();
    before.append(encoding.declaration());
    before.append("<collection xmlns=\"").append(XmlScopes.MARC).append('"');
    for (String prefix : prefixes) {
      before.append(" xmlns:").append(prefix).append("=\"").append(XmlScopes.MARC).append('"');
    }
    return new Wrapping(
        before.append(">\n").toString(), "\n", "\n</collection>\n", encoding.ofFile());
  }

  /** A collection with the prefixes that the records have; known after a reading. */
  @Override
  public Wrapping wrapping() {
    return wrapping;
  }

  /** The reading of one file. */
  private static final class Reading {
    private final String file;
    private final XmlEncoding encoding;
    private final Handing handing;
    private final XmlFields fields = new XmlFields();
    private int number;

    Reading(String file, XmlEncoding encoding, Handing handing) {
      this.file = file;
      this.encoding = encoding;
      this.handing = handing;
    }

    void piece(Piece piece) {
      FilePlace place = new FilePlace(file, piece.line(), piece.column(), ++number);
      switch (piece.kind()) {
        case RECORD -> record(place, piece);
        case UNCLOSED ->
            refuse(
                place,
                piece,
                "the record is not closed before the next, or the end of the file",
                "close it, or get the whole file");
        case STRAY ->
            refuse(
                place,
                piece,
                "fields of MARC stand here outside a record",
                "put <record> and </record> round those of one record");
        case DOCTYPE ->
            refuse(
                place,
                piece,
                "the file has a document type declaration (DOCTYPE); it is not read, since it could"
                    + " fetch other files, and the entities that it defines are not known",
                "take it out, and write what its entities stand for");
        case TOO_LONG ->
            refuse(
                place,
                piece,
                "there is no end of a record in " + XmlPieces.LIMIT + " bytes",
                "close the record");
      }
    }

    private void refuse(FilePlace place, Piece piece, String what, String remedy) {
      refuse(place, piece, new BadRecord(what, remedy));
    }

    private void refuse(FilePlace place, Piece piece, BadRecord bad) {
      handing.refused(place, "", bad, encoding.inFile(piece.bytes()));
    }

    private void record(FilePlace place, Piece piece) {
      String text;
      try {
        text = decoded(piece.bytes());
      } catch (CharacterCodingException e) {
        refuse(
            place,
            piece,
            "the record is not in " + encoding.ofFile().name(),
            "save the file as UTF-8, or name its encoding in its first line");
        return;
      }
      List<String> remarks = new ArrayList<>();
      try {
        Optional<MarcRecord> plain = PlainXml.read(text);
        MarcRecord record = plain.isPresent() ? plain.get() : fields.read(text, remarks);
        handing.record(
            piece.bytes().length, place, "", record, remarks, () -> encoding.inFile(piece.bytes()));
      } catch (BadRecord bad) {
        refuse(place, piece, bad);
      } catch (XmlFields.Broken broken) {
        broken(place, piece, text, broken);
      }
    }

    private String decoded(byte[] bytes) throws CharacterCodingException {
      Charset charset = encoding.charset();
      String text = new String(bytes, charset);
      return text.indexOf('\ufffd') < 0
          ? text
          : charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    private void broken(FilePlace start, Piece piece, String text, XmlFields.Broken broken) {
      int from = 0;
      for (int line = 1; line < broken.line() && from >= 0; line++) {
        from = text.indexOf('\n', from) + 1;
      }
      int at = Math.min(text.length(), from + broken.column() - 1);
      int column = 1 + text.codePointCount(Math.min(from, at), at);
      boolean first = broken.line() <= 1;
      FilePlace place =
          new FilePlace(
              file,
              start.line() + Math.max(1, broken.line()) - 1,
              first ? start.column() + column - 1 : column,
              start.record());
      String near = text.substring(Math.max(0, at - SHOWN), at).strip();
      refuse(
          place,
          piece,
          "the record that starts at line "
              + start.line()
              + " breaks off as XML after \""
              + near.replaceAll("\\s+", " ")
              + "\"",
          "mend it; & and < in a text are written &amp; and &lt;");
    }

    /** Not one element of MARC. */
    void nothing(byte[] head) {
      if (!new String(head, StandardCharsets.ISO_8859_1).isBlank()) {
        FilePlace place = new FilePlace(file, 1, 1, 1);
        BadRecord bad =
            new BadRecord("there is no MARC record in the file", "name the format that it is in");
        handing.refused(place, "", bad, encoding.inFile(head));
      }
    }
  }
}
