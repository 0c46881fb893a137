package merese.change;

import java.util.List;

/**
 * What a split does, or did.
 *
 * @param from the id of the work that the editions were of
 * @param work the id of the new work
 * @param moved the keys of its editions
 * @param staying the keys of those that stay
 */
public record SplitPreview(
    String from,
    String work,
    String title,
    List<String> moved,
    List<String> staying,
    List<Effect> effects) {}
