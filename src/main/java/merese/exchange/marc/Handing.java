package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import merese.exchange.FilePlace;
import merese.exchange.InFileOrder;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;

/** Hands on the records of a file: what is of a source, what is of something else, what is bad. */
final class Handing {
  private final InFileOrder to;

  Handing(Receiver to) {
    this.to = new InFileOrder(to);
  }

  void finish() {
    to.finish();
  }

  /**
   * @param where words that say where a bad record starts; "" where the place says it
   * @param length of the record in the file, about
   * @param verbatim the bytes of the record, asked for where it is refused
   */
  void record(
      int length,
      FilePlace place,
      String where,
      MarcRecord record,
      List<String> remarks,
      Supplier<byte[]> verbatim) {
    to.add(length, () -> understood(place, where, record, remarks, verbatim));
  }

  private static Consumer<Receiver> understood(
      FilePlace place,
      String where,
      MarcRecord record,
      List<String> remarks,
      Supplier<byte[]> verbatim) {
    ReceivedRecord received = record.received();
    if (!MarcMeaning.isOfSource(record)) {
      return receiver -> receiver.kept(place, received);
    }
    Optional<MarcMeaning> meaning = MarcMeaning.of(received, record);
    if (meaning.isEmpty()) {
      boolean unimarc = record.first("200").isPresent();
      Refused refused =
          refusal(
              place,
              where,
              new BadRecord(
                  unimarc
                      ? "it has no title in 245 $a, but one in 200, as UNIMARC has"
                      : "it has no title (245 $a)",
                  unimarc ? "have it converted to MARC 21" : "give it one"),
              verbatim.get());
      return receiver -> receiver.refused(refused);
    }
    List<String> all = new ArrayList<>(remarks);
    all.addAll(meaning.get().remarks());
    Optional<String> key = Optional.of(received.id()).filter(id -> !id.isEmpty());
    Incoming source = new Incoming(place, key, meaning.get().work(), all);
    return receiver -> receiver.source(source);
  }

  void refused(FilePlace place, String where, BadRecord bad, byte[] verbatim) {
    Refused refused = refusal(place, where, bad, verbatim);
    to.add(verbatim.length, () -> receiver -> receiver.refused(refused));
  }

  private static Refused refusal(FilePlace place, String where, BadRecord bad, byte[] verbatim) {
    String what = where.isEmpty() ? bad.getMessage() : where + ": " + bad.getMessage();
    return new Refused(place, what, bad.remedy(), verbatim);
  }
}
