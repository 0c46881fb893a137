package merese.answer.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import merese.model.Locator;

/**
 * Prints the records of an answer as JSON: a field a component, locators as printed, dates as
 * 2025-03-02, what is absent as null. Data binding is loaded here and nowhere else, as it slows a
 * start down.
 */
public final class AnswerJson {
  private AnswerJson() {}

  public static void print(PrintWriter out, Object answer) {
    JsonMapper mapper =
        JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(
                new SimpleModule()
                    .addSerializer(Locator.class, ToStringSerializer.instance)
                    .addSerializer(Path.class, ToStringSerializer.instance)
                    .addSerializer(LocalDate.class, ToStringSerializer.instance))
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
            .build();
    try {
      mapper.writeValue(out, answer);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    out.println();
  }
}
