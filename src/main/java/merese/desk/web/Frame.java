package merese.desk.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.store.HistoryEntry;

/**
 * What stands around the content of every page.
 *
 * @param library the library's title
 * @param title of the page
 * @param here the tab that is open
 * @param token what every change must bring along
 * @param shortfalls what answers lack because files are damaged, a line each
 * @param edits where the file of such a line is edited; not every one has an address
 * @param done the change that was just made, to be said and to be taken back
 * @param assets addresses of the style and the scripts
 */
public record Frame(
    String library,
    String title,
    Tab here,
    String token,
    List<String> shortfalls,
    Map<String, String> edits,
    Optional<HistoryEntry> done,
    Assets assets) {

  /** The parts of the desk that every page leads to, in their order. */
  public enum Tab {
    LOOK_UP("Look up", "/", Section.ASK),
    FIND("Find words", "/find", Section.ASK),
    CONCORDANCE("Concordance", "/concordance", Section.ASK),
    TIMELINE("Timeline", "/timeline", Section.ASK),
    WORDS("Words", "/words", Section.ASK),
    WITNESSES("Witnesses", "/witnesses", Section.ASK),
    SHELF("Shelf", "/shelf", Section.KEEP),
    VOCABULARY("Vocabulary", "/vocabulary", Section.KEEP),
    PIECES("My pieces", "/pieces", Section.KEEP),
    NOTE("Note", "/note", Section.KEEP),
    CHANGES("Changes", "/changes", Section.KEEP),
    READING_LIST("Reading list", "/reading-list", Section.USE),
    PULL("Pull list", "/pull", Section.USE),
    SHOW("Show", "/show", Section.USE);

    private final String label;
    private final String address;
    private final Section section;

    Tab(String label, String address, Section section) {
      this.label = label;
      this.address = address;
      this.section = section;
    }

    public String label() {
      return label;
    }

    public String address() {
      return address;
    }

    public Section section() {
      return section;
    }
  }

  /** What one comes to the desk for. */
  public enum Section {
    ASK("Ask"),
    KEEP("Keep"),
    USE("Use");

    private final String label;

    Section(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }
  }
}
