package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * A group of concepts that is kept in one file.
 *
 * @param id the file's name without its ending
 * @param headNoun the noun that a phrase may leave out when this facet is named: "bladed" under
 *     rings
 * @param optionalWords words that its labels may have or lack: "neck" in "bladed neck ring"
 */
public record Facet(String id, Optional<String> headNoun, List<String> optionalWords) {
  public Facet {
    Require.text(id, "a facet's id");
    optionalWords = List.copyOf(optionalWords);
  }
}
