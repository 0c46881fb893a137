package merese.answer;

import java.util.List;
import java.util.Optional;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * That a source corrects what another, or the same, says.
 *
 * @param by the source that corrects
 * @param note the id of its note
 * @param at where it does
 * @param corrected where in the corrected source, as the correction says; empty where it does not
 * @param words its own, as noted; none where the note has none
 * @param mine whether it is an article or film of the user's own
 */
public record Correction(
    SourceLine by,
    String note,
    List<Locator> at,
    Optional<Locator> corrected,
    List<String> words,
    boolean mine) {}
