package merese.exchange;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * What stands round and between records so that a file of them can be read.
 *
 * @param charset of the file
 */
public record Wrapping(String before, String between, String after, Charset charset) {
  public static final Wrapping NONE = new Wrapping("", "\n", "");

  /** Of a file in UTF-8, or one that has ASCII's bytes for these. */
  public Wrapping(String before, String between, String after) {
    this(before, between, after, StandardCharsets.UTF_8);
  }
}
