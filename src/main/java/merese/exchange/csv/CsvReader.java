package merese.exchange.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import merese.exchange.FilePlace;
import merese.exchange.InFileOrder;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.exchange.csv.RowSplitter.Flaw;
import merese.exchange.csv.RowSplitter.Row;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * Reads a table: one header row, then a source a row. Cells are parted by commas, semicolons or
 * tabs, whichever the headers make sense with; the text is UTF-8, UTF-16 with a byte-order mark,
 * or, row by row, Windows-1252.
 */
public final class CsvReader implements RecordReader {
  private final CsvMapping mapping;
  private Wrapping wrapping = Wrapping.NONE;

  public CsvReader(CsvMapping mapping) {
    this.mapping = mapping;
  }

  public CsvReader() {
    this(CsvMapping.NONE);
  }

  /** The header row, once a file has been read. */
  @Override
  public Wrapping wrapping() {
    return wrapping;
  }

  /** What the columns of a file are taken as; empty for a file without a header row. */
  public Optional<CsvExplanation> explain(InputStream in) throws IOException {
    Table table = new Table(in);
    return table.open() ? Optional.of(table.header.explained(table.separator)) : Optional.empty();
  }

  @Override
  public void read(String file, InputStream in, Receiver to) throws IOException {
    Table table = new Table(in);
    if (!table.open()) {
      to.refused(
          new Refused(
              new FilePlace(file, 1, 1, 1),
              table.fault,
              "give a table with a header row, saved as CSV in UTF-8",
              table.first));
      return;
    }
    wrapping = new Wrapping(table.headerText() + "\r\n", "\r\n", "\r\n");
    if (!table.header.hasTitle()) {
      to.refused(
          new Refused(
              new FilePlace(file, table.headerLine, 1, 1),
              "no column is the title",
              "call one of them Title, or say in a mapping file which it is",
              table.first));
      return;
    }
    Run run = new Run(file, table, to);
    for (Row row = table.rows.next(); row != null; row = table.rows.next()) {
      run.row(row);
    }
    run.to.finish();
  }

  /** A file up to its first source. */
  private final class Table {
    private final RowSplitter rows;
    private HeaderRow header;
    private char separator;
    private byte[] first = new byte[0];
    private int headerLine;
    private boolean windows;
    private String fault = "there is nothing in the file";

    Table(InputStream in) throws IOException {
      rows = new RowSplitter(Utf8Stream.of(in));
    }

    /** Whether there is a header row. */
    boolean open() throws IOException {
      byte[] line = rows.line();
      if (line == null) {
        return false;
      }
      first = line;
      for (byte b : line) {
        if (b == 0) {
          fault = "the file is UTF-16 without a byte-order mark, or no text";
          return false;
        }
      }
      Optional<Character> stated = stated(line);
      if (stated.isPresent()) {
        rows.skipLine();
        first = rows.line();
        if (first == null) {
          first = line;
          return false;
        }
      }
      separator = stated.orElseGet(() -> Separator.of(first, Integer.MAX_VALUE / 20_000));
      headerLine = rows.lineNumber();
      rows.expect(separator, -1);
      Row row = rows.next();
      if (row.flaw() != Flaw.NONE) {
        fault = "the header row cannot be read: " + what(row);
        return false;
      }
      if (row.count() > RowSplitter.MOST_CELLS) {
        fault = "the header row has " + row.count() + " cells, and at most 10,000 are read";
        return false;
      }
      windows = row.windows();
      header = new HeaderRow(row.cells(), mapping);
      rows.expect(separator, header.width());
      return true;
    }

    /** The separator where a first line "sep=;" states it, as spreadsheets write it. */
    private Optional<Character> stated(byte[] line) {
      String text = new String(line, StandardCharsets.US_ASCII);
      boolean states = text.startsWith("sep=") && text.length() == 5 && text.charAt(4) < 128;
      return states ? Optional.of(text.charAt(4)) : Optional.empty();
    }

    private String headerText() {
      return new String(first, windows ? RowSplitter.WINDOWS : StandardCharsets.UTF_8);
    }
  }

  private static String what(Row row) {
    return switch (row.flaw()) {
      case OPEN -> "a quotation mark is not closed";
      case TEXT_BEHIND -> "text follows a closing quotation mark";
      case TOO_LONG -> "the row is longer than 4 MiB; this is its beginning";
      case ENCODING -> "the text is neither UTF-8 nor Windows-1252";
      case WRONG_COUNT, NONE -> "the row has " + row.count() + " cells";
    };
  }

  private static String remedy(Row row) {
    return switch (row.flaw()) {
      case OPEN, TEXT_BEHIND -> "close it, or write \"\" for a quotation mark inside a cell";
      case TOO_LONG -> "shorten it, or enter it by hand";
      case ENCODING -> "save the file as UTF-8";
      case WRONG_COUNT, NONE ->
          "give it one cell a column, in quotation marks where there is a separator inside";
    };
  }

  /** One reading of one file. */
  private static final class Run {
    private final String file;
    private final HeaderRow header;
    private final RowSplitter rows;
    private final InFileOrder to;
    private int record;

    Run(String file, Table table, Receiver to) {
      this.file = file;
      this.header = table.header;
      this.rows = table.rows;
      this.to = new InFileOrder(to);
    }

    void row(Row row) {
      boolean isEmpty = row.flaw() == Flaw.NONE && row.cells().stream().allMatch(String::isBlank);
      if (isEmpty) {
        return;
      }
      record++;
      FilePlace place = new FilePlace(file, row.line(), 1, record);
      if (row.flaw() != Flaw.NONE) {
        String count = row.flaw() == Flaw.WRONG_COUNT ? ", the header row " + header.width() : "";
        FilePlace flaw = new FilePlace(file, row.flawLine(), 0, record);
        Refused refused = new Refused(flaw, what(row) + count, remedy(row), row.bytes());
        to.add(row.bytes().length, () -> receiver -> receiver.refused(refused));
        return;
      }
      byte[] verbatim = rows.lastRow();
      to.add(verbatim.length, () -> understood(place, row, verbatim));
    }

    private Consumer<Receiver> understood(FilePlace place, Row row, byte[] verbatim) {
      ReceivedRecord received = record(row.cells());
      Optional<CsvMeaning> meaning = CsvMeaning.of(received);
      if (meaning.isEmpty()) {
        Refused refused =
            new Refused(place, "the row says nothing of a source", "give it a title", verbatim);
        return receiver -> receiver.refused(refused);
      }
      List<String> remarks = new ArrayList<>(meaning.get().remarks());
      if (row.windows()) {
        remarks.add(0, "the row is not UTF-8 and was read as Windows-1252");
      }
      if (row.holdsRows()) {
        remarks.add(
            0,
            "a cell runs on over lines that look like rows of their own; a quotation mark may be"
                + " missing");
      }
      Optional<String> key = Optional.of(received.id()).filter(id -> !id.isEmpty());
      Incoming source = new Incoming(place, key, meaning.get().work(), remarks);
      return receiver -> receiver.source(source);
    }

    private ReceivedRecord record(List<String> cells) {
      String id = "";
      List<Field> fields = new ArrayList<>(cells.size());
      for (int i = 0; i < cells.size(); i++) {
        String cell = FormulaCells.undone(cells.get(i));
        if (cell.isEmpty()) {
          continue;
        }
        Optional<Column> column = header.column(i);
        if (column.isPresent() && column.get() == Column.KEY) {
          id = cell.strip();
        } else if (column.isPresent() && column.get().isList()) {
          addToList(fields, header.field(i), cell);
        } else {
          fields.add(new Field(header.field(i), cell));
        }
      }
      return new ReceivedRecord(CsvMeaning.FORMAT, "", id, fields);
    }

    /** Several columns of one list, such as two for authors, become one cell. */
    private static void addToList(List<Field> fields, String name, String cell) {
      for (int i = 0; i < fields.size(); i++) {
        if (fields.get(i).name().equals(name)) {
          fields.set(i, new Field(name, fields.get(i).value() + "; " + cell));
          return;
        }
      }
      fields.add(new Field(name, cell));
    }
  }
}
