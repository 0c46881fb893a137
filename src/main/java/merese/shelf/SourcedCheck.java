package merese.shelf;

import merese.model.Check;

/** A line of a check log and the source it belongs to. */
public record SourcedCheck(Source source, Check check) {}
