package merese.shelf;

import merese.model.CharacterKey;

/**
 * The key to look-alikes that answers use.
 *
 * @param ofLibrary false where the library has none and the program's own stands in
 */
public record KeyInUse(CharacterKey key, boolean ofLibrary) {}
