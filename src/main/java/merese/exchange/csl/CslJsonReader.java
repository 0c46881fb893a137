package merese.exchange.csl;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;
import merese.exchange.FilePlace;
import merese.exchange.InFileOrder;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.exchange.csl.ItemSplitter.Kind;
import merese.exchange.csl.ItemSplitter.Piece;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.ReceivedRecord;

/**
 * Reads CSL-JSON: a list of items, one item, or one item a line, in UTF-8. An item is at most 4
 * MiB.
 */
public final class CslJsonReader implements RecordReader {
  @Override
  public void read(String file, InputStream in, Receiver to) throws IOException {
    new Run(file, in, to).read();
  }

  @Override
  public Wrapping wrapping() {
    return new Wrapping("[\n", ",\n", "\n]\n");
  }

  /** One reading of one file. */
  private static final class Run {
    private final String file;
    private final ItemSplitter splitter;
    private final InFileOrder to;
    private int record;
    private boolean broken;

    Run(String file, InputStream in, Receiver to) {
      this.file = file;
      this.splitter = new ItemSplitter(in);
      this.to = new InFileOrder(to);
    }

    void read() throws IOException {
      for (Piece next = splitter.next(); next != null; next = splitter.next()) {
        Piece piece = next;
        record++;
        broken |= piece.kind() != Kind.ITEM;
        switch (piece.kind()) {
          case ITEM -> {
            int number = record;
            to.add(piece.bytes().length, () -> item(piece, number));
          }
          case TOO_LONG ->
              refuse(
                  piece,
                  "the item is longer than 4 MiB; this is its beginning",
                  "take it out, and enter it by hand");
          case STRAY -> refuse(piece, "this is no item", "an item stands in braces: {…}");
          case OTHER_FORMAT -> otherFormat(piece);
        }
      }
      to.finish();
      if (record == 0 && !splitter.hasList()) {
        refuse(new byte[0], "there is nothing in the file", "give a file of CSL-JSON");
      } else if (splitter.isListOpen() && !broken) {
        refuse(
            new byte[0],
            "the file ends before its list is closed, so it may have been cut short",
            "compare it with where it is from; if it is whole, add ]");
      }
      to.finish();
    }

    private void refuse(byte[] verbatim, String what, String remedy) {
      FilePlace place = new FilePlace(file, splitter.line(), splitter.column(), record + 1);
      Refused refused = new Refused(place, what, remedy, verbatim);
      to.add(verbatim.length, () -> receiver -> receiver.refused(refused));
    }

    private void refuse(Piece piece, String what, String remedy) {
      FilePlace place = new FilePlace(file, piece.line(), piece.column(), record);
      Refused refused = new Refused(place, what, remedy, piece.bytes());
      to.add(piece.bytes().length, () -> receiver -> receiver.refused(refused));
    }

    private void otherFormat(Piece piece) {
      byte[] bytes = piece.bytes();
      boolean wide = false;
      for (int i = 0; i < Math.min(4, bytes.length); i++) {
        wide |= bytes[i] == 0 || bytes[i] == (byte) 0xFE || bytes[i] == (byte) 0xFF;
      }
      if (wide) {
        refuse(piece, "the file is UTF-16 or UTF-32", "save it as UTF-8, as JSON has to be");
      } else {
        refuse(
            piece,
            "this is no CSL-JSON, which begins with [ or {",
            "name the format of the file when importing it");
      }
    }

    private Consumer<Receiver> item(Piece piece, int number) {
      if (Utf8.isSound(piece.bytes())) {
        Optional<Json> read = JsonParsing.tried(piece.bytes());
        if (read.isPresent()) {
          return item(piece, number, (Members) read.get());
        }
      }
      String text = new String(piece.bytes(), StandardCharsets.UTF_8);
      if (text.indexOf('\uFFFD') >= 0) {
        Optional<ItemFault> fault = ItemFault.ofEncoding(piece.bytes());
        if (fault.isPresent()) {
          return refused(piece, number, fault.get());
        }
      }
      try {
        return item(piece, number, (Members) JsonParsing.parse(text));
      } catch (JsonProcessingException e) {
        return refused(piece, number, ItemFault.of(text, e));
      }
    }

    private Consumer<Receiver> item(Piece piece, int number, Members item) {
      Optional<ItemFault> misnamed = names(item);
      if (misnamed.isPresent()) {
        return refused(piece, number, misnamed.get());
      }
      ReceivedRecord received = ItemRecord.of(item);
      Optional<CslMeaning> meaning = CslMeaning.of(item, received);
      if (meaning.isEmpty()) {
        boolean list = item.get("items").isPresent() || item.get("references").isPresent();
        return refused(
            piece,
            number,
            new ItemFault(
                0,
                list
                    ? "a list of items stands inside an object"
                    : "the item has neither a title nor a type",
                list ? "take out the list and import that" : "give it a \"title\" and a \"type\""));
      }
      FilePlace place = new FilePlace(file, piece.line(), piece.column(), number);
      Optional<String> key = Optional.of(received.id()).filter(id -> !id.isBlank());
      Incoming source = new Incoming(place, key, meaning.get().work(), meaning.get().remarks());
      return receiver -> receiver.source(source);
    }

    /** A variable without a name, or with half a character in it, cannot be kept. */
    private static Optional<ItemFault> names(Members item) {
      for (Member member : item.members()) {
        if (Variables.isKnown(member.name())) {
          continue; // mostly
        }
        if (member.name().isBlank()) {
          return Optional.of(new ItemFault(0, "a variable has no name", "name it, or take it out"));
        }
        if (!JsonText.whole(member.name()).equals(member.name())) {
          return Optional.of(
              new ItemFault(
                  0, "the name of a variable holds half a character", "correct the name"));
        }
      }
      return Optional.empty();
    }

    private Consumer<Receiver> refused(Piece piece, int number, ItemFault fault) {
      String text = new String(piece.bytes(), StandardCharsets.UTF_8);
      int line = piece.line();
      int column = piece.column();
      for (int i = 0; i < Math.min(fault.at(), text.length()); i++) {
        char c = text.charAt(i);
        if (c == '\n') {
          line++;
          column = 1;
        } else if (!Character.isLowSurrogate(c)) {
          column++;
        }
      }
      FilePlace place = new FilePlace(file, line, column, number);
      Refused refused = new Refused(place, fault.what(), fault.remedy(), piece.bytes());
      return receiver -> {
        broken = true;
        receiver.refused(refused);
      };
    }
  }
}
