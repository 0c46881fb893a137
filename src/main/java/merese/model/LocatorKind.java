package merese.model;

/**
 * What a locator counts. The constants stand in physical order (rule R5): the two that can hold a
 * whole book first, then the book from its front endpaper to its back one. The order of what R5
 * leaves open (columns, paragraphs, notes, captions, photographs) is common practice, no source.
 */
public enum LocatorKind {
  VOLUME("vol.", "vols"),
  PART("part", "parts"),
  FRONT_ENDPAPER("front endpaper", "front endpapers"),
  FRONTISPIECE("frontispiece", "frontispieces"),
  /** A page. Roman-numbered pages, in small or large letters, are preliminaries. */
  PAGE("p.", "pp."),
  PLATE("pl.", "pls"),
  FIGURE("fig.", "figs"),
  /** A plate of the separate colour sequence; "col." alone never means this. */
  COLOUR_PLATE("colour pl.", "colour pls"),
  CATALOGUE_NUMBER("cat. no.", "cat. nos"),
  /** A numbered entry, or the number of a newsletter. */
  NUMBER("no.", "nos"),
  LOT("lot", "lots"),
  PATTERN("pattern", "patterns"),
  /** A numbered item of a list, or of a plate ("plate 1:16"). */
  ITEM("item", "items"),
  FOLIO("fol.", "fols"),
  /** A moment, or a stretch, of a film or recording. */
  TIMESTAMP("", ""),
  COLUMN("col.", "cols"),
  PARAGRAPH("para.", "paras"),
  NOTE("n.", "nn."),
  CAPTION("caption", "captions"),
  PHOTO("photo", "photos"),
  /** An unnumbered leaf known by what it faces; it sorts directly after that. */
  INSERT("facing", "facing"),
  BACK_ENDPAPER("back endpaper", "back endpapers");

  private final String singular;
  private final String plural;

  LocatorKind(String singular, String plural) {
    this.singular = singular;
    this.plural = plural;
  }

  /** The house label for one, such as "pl."; empty for a timestamp, which is written bare. */
  public String singular() {
    return singular;
  }

  /** The house label for several, such as "pls". */
  public String plural() {
    return plural;
  }

  /** Whether a place of this kind usually is a picture; a note's medium decides in the end. */
  public boolean usuallyPicture() {
    return switch (this) {
      case FRONTISPIECE, PLATE, COLOUR_PLATE, FIGURE, PHOTO, INSERT -> true;
      default -> false;
    };
  }

  /** Whether this is a numbered entry of a catalogue, sale, pattern book or list. */
  boolean isEntry() {
    return switch (this) {
      case CATALOGUE_NUMBER, NUMBER, LOT, PATTERN, ITEM -> true;
      default -> false;
    };
  }

  boolean isPlate() {
    return this == PLATE || this == COLOUR_PLATE;
  }

  /** Whether there is no sense in this kind except inside another one. */
  boolean isAlwaysInside() {
    return this == COLUMN || this == NOTE || this == CAPTION;
  }

  /** Whether the kind is written without a number, as a note that is the only one may be. */
  boolean mayLackNumber() {
    return switch (this) {
      case FRONT_ENDPAPER, FRONTISPIECE, BACK_ENDPAPER, CAPTION, NOTE -> true;
      default -> false;
    };
  }

  /**
   * Whether a comma after one of this kind and before one of the inner kind means "in it" ("pl.
   * XII, fig. 3"). Otherwise the second stands beside the first ("p. 33, colour pl. III"): a plate
   * is a leaf of its own. Common practice, no source.
   */
  boolean holds(LocatorKind inner) {
    if (inner == this || inner == VOLUME) {
      return false;
    }
    return switch (this) {
      case VOLUME -> true;
      case PART -> true;
      case PAGE, FOLIO -> inner.isEntry() || inner == FIGURE || inner == PHOTO || isDetail(inner);
      case INSERT ->
          inner.isPlate()
              || inner.isEntry()
              || inner == FIGURE
              || inner == PHOTO
              || isDetail(inner);
      case CATALOGUE_NUMBER, NUMBER, LOT, PATTERN, ITEM ->
          inner == PAGE
              || inner == FOLIO
              || inner == FIGURE
              || inner == PHOTO
              || inner == PART
              || inner == ITEM
              || isDetail(inner);
      case FRONT_ENDPAPER, FRONTISPIECE, BACK_ENDPAPER, PLATE, COLOUR_PLATE ->
          inner == FIGURE || inner.isEntry() || inner == NOTE || inner == CAPTION;
      case FIGURE, PHOTO -> inner.isEntry() || inner == PART || inner == NOTE || inner == CAPTION;
      case COLUMN -> inner.isEntry() || inner == FIGURE || isDetail(inner);
      case PARAGRAPH -> inner.isEntry() || inner == NOTE;
      case TIMESTAMP -> inner == CAPTION;
      case NOTE, CAPTION -> false;
    };
  }

  private static boolean isDetail(LocatorKind inner) {
    return inner == COLUMN || inner == PARAGRAPH || inner == NOTE || inner == CAPTION;
  }
}
