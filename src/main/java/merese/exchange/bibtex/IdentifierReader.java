package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import merese.exchange.identifier.Identifiers;
import merese.model.Identifier;

/** The numbers of an entry; a field may hold several. */
final class IdentifierReader {
  private static final int LONGEST = 2000;

  private final List<Identifier> identifiers = new ArrayList<>();
  private final List<String> remarks;

  private IdentifierReader(List<String> remarks) {
    this.remarks = remarks;
  }

  /**
   * @param noted an ISBN that our own export could only note, since it is wrong
   * @param remarks takes what is wrong with one, as a sentence without its full stop
   */
  static List<Identifier> of(EntryFields fields, Optional<String> noted, List<String> remarks) {
    IdentifierReader reader = new IdentifierReader(remarks);
    fields.plain("isbn").ifPresent(text -> reader.several(text, Identifiers::isbn));
    noted.ifPresent(text -> reader.add(text, Identifiers::isbn));
    fields.plain("issn").ifPresent(text -> reader.several(text, Identifiers::issn));
    fields.latex("doi").map(WebField::address).ifPresent(t -> reader.add(t, Identifiers::doi));
    return reader.identifiers;
  }

  private void several(String text, Function<String, Identifier> read) {
    if (text.length() > LONGEST) {
      remarks.add("A field of more than " + LONGEST + " characters was not read as numbers");
      return;
    }
    for (String item : TextList.of(text.replace(" and ", ", "), ",;")) {
      List<String> words = TextList.of(item, " ");
      boolean eachIsOne = words.stream().allMatch(w -> !read.apply(w).wrongInPrint());
      (eachIsOne ? words : List.of(item)).forEach(number -> add(number, read));
    }
  }

  private void add(String text, Function<String, Identifier> read) {
    if (text.chars().noneMatch(c -> c >= '0' && c <= '9')) {
      return;
    }
    Identifier identifier = read.apply(text);
    Optional<String> fault = Identifiers.fault(identifier);
    fault.ifPresent(f -> remarks.add(f + "; recorded as it stands, as wrong in print"));
    if (!identifiers.contains(identifier)) {
      identifiers.add(identifier);
    }
  }
}
