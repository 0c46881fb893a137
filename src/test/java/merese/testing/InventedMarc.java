package merese.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Invented sources as MARC 21 records in UTF-8, by ISO 2709 or as MARCXML; made by hand, without a
 * library for MARC.
 */
public final class InventedMarc {
  private static final char FIELD_END = '\u001e';
  private static final char RECORD_END = '\u001d';
  private static final char SUBFIELD = '\u001f';
  private static final String LEADER_START = "00000n";

  /**
   * A field.
   *
   * @param indicators two characters, or none for a control field, of which the parts are one
   *     without code
   * @param parts each a code and what it says
   */
  private record Field(String tag, String indicators, List<String> parts) {}

  private InventedMarc() {}

  /** Sources from a number to before another. */
  public static void write(int from, int to, OutputStream out) throws IOException {
    for (int number = from; number < to; number++) {
      InventedSource source = InventedSource.of(number);
      out.write(record(leader(source), fields(source)));
    }
    out.flush();
  }

  public static void writeXml(int from, int to, Writer out) throws IOException {
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.write("<collection xmlns=\"http://www.loc.gov/MARC21/slim\">\n");
    for (int number = from; number < to; number++) {
      InventedSource source = InventedSource.of(number);
      out.write("  <record>\n    <leader>" + leader(source) + "22000004a 4500</leader>\n");
      for (Field field : fields(source)) {
        xml(field, out);
      }
      out.write("  </record>\n");
    }
    out.write("</collection>\n");
    out.flush();
  }

  /** Up to the character set, with a length of nought. */
  private static String leader(InventedSource source) {
    boolean part = source.journal().isPresent() || source.collection().isPresent();
    return LEADER_START + (part ? "ab" : "am") + " a";
  }

  private static List<Field> fields(InventedSource source) {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field("001", "", List.of("inv" + source.number())));
    fields.add(new Field("003", "", List.of("XX-Inv")));
    fields.add(new Field("005", "", List.of("20200101120000.0")));
    String fixed =
        "200101s" + source.year() + "    xx a     b    000 0 " + source.language() + " d";
    fields.add(new Field("008", "", List.of(fixed)));
    source.isbn().ifPresent(i -> fields.add(field("020", "  ", "a" + i, "qpbk.")));
    source.doi().ifPresent(d -> fields.add(field("024", "7 ", "a" + d, "2doi")));
    fields.add(field("040", "  ", "aXX-Inv", "beng", "cXX-Inv"));
    InventedSource.Person first = source.people().get(0);
    fields.add(field("100", "1 ", "a" + first.inverted() + ",", "eauthor."));
    boolean subtitled = source.subtitle().isPresent();
    String title = "a" + source.title() + (subtitled ? " :" : " /");
    String by = "c" + first.given() + " " + first.family() + ".";
    fields.add(
        subtitled
            ? field("245", "10", title, "b" + source.subtitle().get() + " /", by)
            : field("245", "10", title, by));
    if (source.journal().isEmpty() && source.collection().isEmpty()) {
      boolean newer = source.number() % 2 == 0;
      fields.add(
          field(
              newer ? "264" : "260",
              newer ? " 1" : "  ",
              "a" + source.town() + " :",
              "b" + source.publisher() + ",",
              "c" + source.year() + "."));
      fields.add(field("300", "  ", "a" + (source.pages() * 10) + " p. :", "bill. ;", "c25 cm"));
    }
    fields.add(field("520", "  ", "a" + source.summary()));
    fields.add(field("650", " 0", "a" + source.title() + ".", "xHistory."));
    for (InventedSource.Person person : source.people().subList(1, source.people().size())) {
      fields.add(field("700", "1 ", "a" + person.inverted() + ",", "eauthor."));
    }
    if (source.journal().isPresent()) {
      String host = InventedWords.journal(source.journal().getAsInt());
      String at = "Vol. " + source.volume() + " (" + source.year() + "), p. " + source.pageRange();
      fields.add(field("773", "0 ", "t" + host + ".", "g" + at));
    } else if (source.collection().isPresent()) {
      InventedSource host = InventedSource.of(source.collection().getAsInt());
      String made = "d" + host.town() + " : " + host.publisher() + ", " + host.year();
      fields.add(
          field("773", "0 ", "t" + host.wholeTitle() + ".", made, "gp. " + source.pageRange()));
    }
    return fields;
  }

  private static Field field(String tag, String indicators, String... parts) {
    return new Field(tag, indicators, List.of(parts));
  }

  private static byte[] record(String leader, List<Field> fields) throws IOException {
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    StringBuilder directory = new StringBuilder();
    for (Field field : fields) {
      StringBuilder text = new StringBuilder(field.indicators());
      for (String part : field.parts()) {
        text.append(field.indicators().isEmpty() ? "" : String.valueOf(SUBFIELD)).append(part);
      }
      byte[] bytes = text.append(FIELD_END).toString().getBytes(StandardCharsets.UTF_8);
      directory.append(field.tag()).append(number(bytes.length, 4)).append(number(data.size(), 5));
      data.write(bytes);
    }
    directory.append(FIELD_END);
    int base = 24 + directory.length();
    String start = number(base + data.size() + 1, 5) + leader.substring(5);
    ByteArrayOutputStream record = new ByteArrayOutputStream();
    record.write((start + "22" + number(base, 5) + "4a 4500").getBytes(StandardCharsets.UTF_8));
    record.write(directory.toString().getBytes(StandardCharsets.UTF_8));
    record.write(data.toByteArray());
    record.write(RECORD_END);
    return record.toByteArray();
  }

  private static String number(int number, int digits) {
    return String.format(Locale.ROOT, "%0" + digits + "d", number);
  }

  private static void xml(Field field, Writer out) throws IOException {
    if (field.indicators().isEmpty()) {
      String text = escaped(field.parts().get(0));
      out.write("    <controlfield tag=\"" + field.tag() + "\">" + text + "</controlfield>\n");
      return;
    }
    String first = field.indicators().substring(0, 1);
    String second = field.indicators().substring(1);
    out.write("    <datafield tag=\"" + field.tag() + "\"");
    out.write(" ind1=\"" + first + "\" ind2=\"" + second + "\">\n");
    for (String part : field.parts()) {
      out.write("      <subfield code=\"" + part.charAt(0) + "\">");
      out.write(escaped(part.substring(1)) + "</subfield>\n");
    }
    out.write("    </datafield>\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }
}
