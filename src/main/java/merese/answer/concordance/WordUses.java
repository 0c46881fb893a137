package merese.answer.concordance;

import java.util.List;
import merese.answer.Choice;
import merese.answer.Coverage.Heading;

/**
 * Which word means what for whom.
 *
 * @param asked the terms as they were typed
 * @param choices terms of several meanings, all of which are taken in
 * @param concepts what the terms mean, in the order asked
 * @param words the words that sources print for just these concepts, with all that each of them
 *     means in this library, alphabetically
 */
public record WordUses(
    List<String> asked,
    List<Choice> choices,
    List<Heading> concepts,
    List<Concordance.Word> words) {}
