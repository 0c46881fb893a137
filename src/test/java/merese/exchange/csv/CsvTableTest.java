package merese.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTableTest {
  @Test
  void nothingInItIsRunByASpreadsheet() throws IOException {
    StringWriter out = new StringWriter();
    CsvTable.write(List.of(List.of("=A1", "a\"b"), List.of("plain", "+1")), out);
    assertEquals("\uFEFF'=A1,\"a\"\"b\"\r\nplain,'+1\r\n", out.toString());
  }
}
