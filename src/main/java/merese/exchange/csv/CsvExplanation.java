package merese.exchange.csv;

import java.util.List;

/**
 * What a reader makes of the headers of a file.
 *
 * @param separator in words: comma, semicolon or tab
 * @param columns of the file, in their order
 * @param missing our columns that the file does not have
 */
public record CsvExplanation(String separator, List<Use> columns, List<String> missing) {
  public CsvExplanation {
    columns = List.copyOf(columns);
    missing = List.copyOf(missing);
  }

  /** Why a column is taken as what it is. */
  public enum Why {
    OWN_NAME("it is the name of our column"),
    OTHER_NAME("it is another name of our column"),
    MAPPING("the mapping file says so"),
    UNKNOWN("no column of ours is called so; kept without a home"),
    LEFT_OUT("the mapping file leaves it without a home"),
    TAKEN("another column before it is taken so; kept without a home"),
    NO_HEADER("it has no header; kept without a home");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * What becomes of a column.
   *
   * @param header as it stands in the file
   * @param field the name under which its cells are kept: that of our column, or its own
   * @param hasHome whether it is one of our columns
   */
  public record Use(String header, String field, boolean hasHome, Why why) {}
}
