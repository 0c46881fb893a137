package merese.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.answer.Exported.Format;
import merese.change.records.RecordFormat;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.testing.DemoLibrary;
import merese.testing.Exports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The README's table of what a format carries of a source, taken from the demo library: each source
 * is written, read again and compared part by part.
 */
class WhatFormatsCarryTest {
  private static final List<Format> FORMATS = List.of(Format.values());

  @TempDir private Path folder;

  @Test
  void isWhatTheReadmeSays() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    try (Shelf shelf = DemoLibrary.open(folder.resolve("shelf"))) {
      Map<Format, Map<String, Work>> read = new HashMap<>();
      for (Format format : FORMATS) {
        read.put(format, read(format, Exports.of(shelf, format, List.of())));
      }
      for (Aspect part : Aspect.values()) {
        StringBuilder row = new StringBuilder("| ").append(part.words()).append(" |");
        for (Format format : FORMATS) {
          row.append(' ').append(carried(shelf, read.get(format), part)).append(" |");
        }
        assertTrue(readme.contains(row), () -> "the README lacks the row\n" + row);
      }
    }
  }

  /**
   * "yes" where every source that says something of a part says the same when it is read again, "in
   * part" where some do or something of it is read.
   */
  private static String carried(Shelf shelf, Map<String, Work> read, Aspect part) {
    boolean all = true;
    boolean some = false;
    for (Source source : shelf.sources()) {
      Work ours = source.work();
      Work theirs = read.get(source.key());
      if (!part.isSilent(ours)) {
        boolean same = part.isSame(ours, theirs);
        all &= same;
        some |= same || !part.isSilent(theirs);
      }
    }
    return all ? "yes" : some ? "in part" : "–";
  }

  private static Map<String, Work> read(Format format, String text) throws IOException {
    Map<String, Work> works = new HashMap<>();
    Receiver receiver =
        new Receiver() {
          @Override
          public void source(Incoming source) {
            works.put(source.key().orElseThrow(), source.work());
          }

          @Override
          public void kept(FilePlace place, ReceivedRecord record) {}

          @Override
          public void refused(Refused record) {
            throw new AssertionError(record);
          }
        };
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    RecordFormat.of(bytes)
        .orElseThrow()
        .reader()
        .read(format.code(), new ByteArrayInputStream(bytes), receiver);
    return works;
  }
}
