package merese.change.records;

import java.util.List;
import java.util.Optional;
import merese.exchange.FilePlace;

/** What one record of a file is to the library. */
public sealed interface Item {
  FilePlace place();

  /** The key of the source in the library. */
  String key();

  /** What was noticed, each a sentence without its full stop. */
  List<String> remarks();

  /**
   * A source that the library does not have.
   *
   * @param line who, what and when, in one line
   * @param work the id of its work; that of another source where it joins one
   * @param proposal the work that it may be an edition of
   * @param again another source that it may be the same as
   */
  record New(
      FilePlace place,
      String key,
      String line,
      String work,
      Optional<Proposal> proposal,
      Optional<Again> again,
      List<String> remarks)
      implements Item {}

  /**
   * A source that is there.
   *
   * @param why what shows that it is the same: "same ISBN", "same key and title"
   * @param differences none where the library already says all that the record does
   * @param changes whether anything would be written
   */
  record There(
      FilePlace place,
      String key,
      List<String> why,
      List<Difference> differences,
      boolean changes,
      List<String> remarks)
      implements Item {}

  /**
   * That a source may be another edition of a work.
   *
   * @param work the id of the work
   * @param beside the key of the source of that work that it is most like
   * @param why what speaks for it
   * @param taken whether the user has said yes
   */
  record Proposal(String work, String beside, List<String> why, boolean taken) {}

  /**
   * That a source may be one that there is already, which another record was found to be.
   *
   * @param key of that source
   * @param place of its record, where it came in with the same import
   * @param why what speaks for it
   */
  record Again(String key, Optional<FilePlace> place, List<String> why) {}
}
