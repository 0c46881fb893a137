package merese.testing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;

/** Invented sources as CSL-JSON. */
public final class InventedCsl {
  private InventedCsl() {}

  /** Sources from a number to before another. */
  public static void write(int from, int to, Writer out) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out).useDefaultPrettyPrinter()) {
      json.writeStartArray();
      for (int number = from; number < to; number++) {
        item(InventedSource.of(number), json);
      }
      json.writeEndArray();
    }
  }

  private static void item(InventedSource source, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", source.key());
    json.writeStringField("type", type(source));
    json.writeStringField("title", source.wholeTitle());
    json.writeArrayFieldStart(
        source.kind() == InventedSource.Kind.COLLECTION ? "editor" : "author");
    for (InventedSource.Person person : source.people()) {
      json.writeStartObject();
      json.writeStringField("family", person.family());
      json.writeStringField("given", person.given());
      if (person.particle().isPresent()) {
        json.writeStringField("non-dropping-particle", person.particle().get());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("issued");
    json.writeArrayFieldStart("date-parts");
    json.writeStartArray();
    json.writeNumber(source.year());
    json.writeEndArray();
    json.writeEndArray();
    json.writeEndObject();
    place(source, json);
    if (source.isbn().isPresent()) {
      json.writeStringField("ISBN", source.isbn().get());
    }
    if (source.doi().isPresent()) {
      json.writeStringField("DOI", source.doi().get());
    }
    json.writeStringField("language", source.language());
    json.writeStringField("abstract", source.summary());
    json.writeEndObject();
  }

  private static void place(InventedSource source, JsonGenerator json) throws IOException {
    if (source.journal().isPresent()) {
      json.writeStringField("container-title", InventedWords.journal(source.journal().getAsInt()));
      json.writeStringField("volume", Integer.toString(source.volume()));
    } else {
      if (source.collection().isPresent()) {
        json.writeStringField(
            "container-title", InventedSource.of(source.collection().getAsInt()).wholeTitle());
      }
      json.writeStringField("publisher", source.publisher());
      json.writeStringField("publisher-place", source.town());
    }
    if (source.journal().isPresent() || source.collection().isPresent()) {
      json.writeStringField("page", source.pageRange());
    }
  }

  private static String type(InventedSource source) {
    return switch (source.kind()) {
      case BOOK, COLLECTION -> "book";
      case ARTICLE -> "article-journal";
      case CHAPTER -> "chapter";
      case THESIS -> "thesis";
    };
  }
}
