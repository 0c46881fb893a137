package merese.desk.shelf;

import merese.change.SourceField;

/** What a form calls the fields of a source. */
final class FieldWords {
  private FieldWords() {}

  /** The name of the field of the form. */
  static String name(SourceField field) {
    return field.option().substring(2);
  }

  static String label(SourceField field) {
    return switch (field) {
      case KIND -> "Sort of source";
      case AUTHOR -> "Author";
      case STATEMENT -> "Edition, as printed";
      case PLACE -> "Place of publication";
      case ISBN -> "ISBN";
      case ISSN -> "ISSN of the journal";
      case DOI -> "DOI";
      case IN -> "Journal, or volume of essays";
      case ISSUE -> "Issue or number";
      case PAGES -> "Pages";
      case HOUSE -> "Auction house";
      case DATES -> "Dates, as printed";
      case SALE_CODE -> "Code of the sale";
      case CONSIGNOR -> "Whose property was sold";
      case REPOSITORY -> "Archive or library that has it";
      case REFERENCE -> "Shelf-mark or reference there";
      case FIRM -> "Firm whose list or papers it is";
      case FOLIATED_BY -> "Whose numbers the folios follow";
      case URL -> "Address on the web";
      case ACCESSED -> "Read there on";
      case NOTED_AS -> "What else a citation should carry";
      case INTERVIEWER -> "Who asked or noted it down";
      case VOLUMES -> "Number of volumes";
      default -> capital(field.name());
    };
  }

  private static String capital(String name) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      words.append(c == '_' ? ' ' : i == 0 ? c : Character.toLowerCase(c));
    }
    return words.toString();
  }

  /** Invented, as it would be typed. */
  static String example(SourceField field) {
    return switch (field) {
      case KIND -> "monograph";
      case TITLE -> "Neck and Stopper";
      case SUBTITLE -> "Decanters of Two Centuries";
      case AUTHOR -> "Quenby, Ada";
      case EDITOR -> "Tressick, Bernard";
      case PHOTOGRAPHER -> "Ollery, Jane";
      case TRANSLATOR -> "Varnell, Hugh";
      case ILLUSTRATOR -> "Norrish, Susan";
      case ORGANISER -> "Brackenford Museum";
      case INTERVIEWER -> "Haskeld, Mary";
      case YEAR -> "1949, or [c. 1926] where you supply it, or n.d.";
      case PLACE, CITY, VENUE -> "Brackenford";
      case PUBLISHER -> "Lantern Press";
      case STATEMENT -> "2nd edn, revised";
      case VOLUMES -> "2";
      case SERIES -> "Handbooks for Collectors, 4";
      case ISBN -> "978-0-00-000000-2";
      case ISSN -> "0000-0019";
      case DOI -> "10.9999/necks.12";
      case IN -> "Cullet Society Journal";
      case SOCIETY -> "Cullet Society";
      case VOLUME -> "12";
      case ISSUE -> "3";
      case PAGES -> "pp. 22–38";
      case HOUSE -> "Harkaway & Thornaby";
      case DATES -> "4 and 5 May 1931";
      case SALE_CODE -> "LAMP-31";
      case CONSIGNOR -> "the late Miss Tolland";
      case REPOSITORY -> "Brackenford Record Office";
      case REFERENCE -> "BR/12/4";
      case FIRM -> "Brannock & Yelland";
      case FOLIATED_BY -> "pencilled by the archivist";
      case DEGREE -> "MA";
      case URL -> "https://rings.example/necks";
      case ACCESSED -> "2025-03-02";
      case LANGUAGE -> "de";
      case NOTED_AS -> "Printed for subscribers only.";
    };
  }
}
