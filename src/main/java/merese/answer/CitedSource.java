package merese.answer;

import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.Work;

/**
 * One source as a style cites it; the three citations carry the mark-up that was asked for.
 *
 * @param id the key, with the part's id after "#" where there is one
 * @param locators the places cited
 * @param note the first mention
 * @param shortNote a later mention
 * @param entry the line of a bibliography, without the places
 * @param edition which of several editions this is; empty where the library has no other
 * @param others the other editions of the work in this library, by year
 * @param remarks what the style cannot do
 */
public record CitedSource(
    String id,
    List<Locator> locators,
    String note,
    String shortNote,
    String entry,
    Optional<OneEdition> edition,
    List<OneEdition> others,
    List<String> remarks) {

  /**
   * An edition among others.
   *
   * @param words what sets it apart, in plain words: "2nd edn, revised, 1949"
   */
  public record OneEdition(String key, String words) {
    /**
     * @param beside the title that goes without saying
     */
    static OneEdition of(Work work, Edition edition, String beside) {
      Edition.Imprint imprint = edition.imprint();
      String year =
          imprint
              .yearPrinted()
              .filter(y -> !y.isBlank())
              .orElseGet(
                  () ->
                      imprint.year().isPresent()
                          ? Integer.toString(imprint.year().getAsInt())
                          : "n.d.");
      Optional<String> statement = imprint.statement().or(() -> form(edition));
      String words = statement.map(s -> s + ", " + year).orElse(year);
      String title = work.title().equals(beside) ? "" : work.title() + ", ";
      return new OneEdition(edition.key(), title + words);
    }

    private static Optional<String> form(Edition edition) {
      return edition.lineage().map(lineage -> lineage.form().code());
    }
  }
}
