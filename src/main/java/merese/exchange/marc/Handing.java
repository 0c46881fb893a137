package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.model.ReceivedRecord;

/** Hands on the records of a file: what is of a source, what is of something else, what is bad. */
final class Handing {
  private final Receiver to;

  Handing(Receiver to) {
    this.to = to;
  }

  /**
   * @param where words that say where a bad record starts; "" where the place says it
   * @param verbatim the bytes of the record, asked for where it is refused
   */
  void record(
      FilePlace place,
      String where,
      MarcRecord record,
      List<String> remarks,
      Supplier<byte[]> verbatim) {
    ReceivedRecord received = record.received();
    if (!MarcMeaning.isOfSource(record)) {
      to.kept(place, received);
      return;
    }
    Optional<MarcMeaning> meaning = MarcMeaning.of(received, record);
    if (meaning.isEmpty()) {
      boolean unimarc = record.first("200").isPresent();
      refused(
          place,
          where,
          new BadRecord(
              unimarc
                  ? "it has no title in 245 $a, but one in 200, as UNIMARC has"
                  : "it has no title (245 $a)",
              unimarc ? "have it converted to MARC 21" : "give it one"),
          verbatim.get());
      return;
    }
    List<String> all = new ArrayList<>(remarks);
    all.addAll(meaning.get().remarks());
    Optional<String> key = Optional.of(received.id()).filter(id -> !id.isEmpty());
    to.source(new Incoming(place, key, meaning.get().work(), all));
  }

  void refused(FilePlace place, String where, BadRecord bad, byte[] verbatim) {
    String what = where.isEmpty() ? bad.getMessage() : where + ": " + bad.getMessage();
    to.refused(new Refused(place, what, bad.remedy(), verbatim));
  }
}
