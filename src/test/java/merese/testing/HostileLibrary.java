package merese.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Identifier;
import merese.model.Locator;
import merese.model.Name;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PictureRights;
import merese.model.Place;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * A library whose every text tries to be something else: a command, mark-up, an end of its field.
 */
public final class HostileLibrary {
  private static final List<String> PIECES =
      List.of(
          "\\input{/etc/passwd} \\write18{touch owned}",
          "\\csname end\\endcsname \\end{thebibliography} ^^5cinput \\",
          "$x^2_3$ 100% #1 & ~ | \\\\",
          "{{{ } unbalanced } } \" ` '",
          "<script>alert(1)</script> <img src=x onerror=alert(1)>",
          "[x](javascript:alert(1)) **b** `c` <https://x.example> &lt; _d_",
          "} @book{evil, title={x}} @string{a=\"b\"}",
          "%@comment{ \n@comment{x\r\n\r\n# heading\n- item\u2028> quote",
          "ri\u0000\u0007\u001b[31m\u202e\u2066\u200f\ufeff\uffff\u0085ng",
          "a, b, c, d and others and {e",
          "?` !` '' `` -- --- ,, \"\"",
          "é \u0141\u00f3\u017a \u00c6 \u0153 “‘x’” 1–2 … £5 §",
          "x\" onmouseover=\"alert(1)",
          "javascript:alert(1)//");

  private int next;

  private HostileLibrary() {}

  /**
   * Each kind of source, alone and inside a journal or book, with every field filled. The pieces
   * take turns, so that a field has another one in each work.
   */
  public static SmallLibrary make() {
    SmallLibrary library = new SmallLibrary();
    HostileLibrary maker = new HostileLibrary();
    int number = 0;
    for (SourceKind kind : SourceKind.values()) {
      for (boolean contained : new boolean[] {false, true}) {
        library.work(maker.work(kind, contained, number++));
      }
    }
    return library;
  }

  private String text() {
    String piece = PIECES.get(next % PIECES.size());
    next++;
    return piece;
  }

  private Optional<String> some() {
    return Optional.of(text());
  }

  private Work work(SourceKind kind, boolean contained, int number) {
    List<Contributor> all = new ArrayList<>();
    for (Role role : Role.values()) {
      all.add(new Contributor(role, new Name.Person(text(), some(), some(), some())));
      all.add(new Contributor(role, new Name.Body(text())));
    }
    return new Work(
        "hostile-" + number,
        kind,
        text(),
        some(),
        List.of(text(), text()),
        all,
        Optional.of(number % 3 == 0 ? "fr" : "en"),
        false,
        List.of(edition("k}" + number + "\\input{x},%\"@#~ é", contained, number)),
        List.of());
  }

  private Edition edition(String key, boolean contained, int number) {
    Lineage.Form[] forms = Lineage.Form.values();
    return new Edition(
        key,
        new Edition.Imprint(
            some(),
            OptionalInt.of(2),
            OptionalInt.of(1900 + number),
            some(),
            List.of(text(), text()),
            some(),
            OptionalInt.of(3),
            some(),
            List.of(Identifier.of(Identifier.Scheme.ISBN, text())),
            some()),
        Optional.of(
            new Lineage(
                forms[number % forms.length],
                Optional.empty(),
                OptionalInt.of(1850),
                some(),
                List.of())),
        contained
            ? Optional.of(
                new Edition.Container(
                    text(),
                    some(),
                    some(),
                    some(),
                    some(),
                    OptionalInt.of(1800),
                    Optional.of(place())))
            : Optional.empty(),
        Optional.of(new Edition.Occasion(some(), some(), some(), some(), some(), List.of(text()))),
        Optional.of(new Edition.Archive(text(), some(), some(), some(), some())),
        Optional.of(new Edition.Online("https://evil.example/" + text(), some(), some())),
        Optional.empty(),
        List.of(
            new Edition.Part(
                "p",
                text(),
                List.of(new Name.Person(text(), some(), some(), some())),
                Optional.of(place()))),
        List.of(),
        List.of(note()),
        List.of(),
        List.of());
  }

  private static Locator place() {
    return Locator.parse("fig. 3 (\\input{/etc/passwd} %$#&_^~<script>)");
  }

  private Note note() {
    return new Note(
        "n1",
        List.of(new Naming(text(), Optional.of("ring-bladed"), Optional.of(Naming.Why.TEXT))),
        List.of(
            new Place(
                place(),
                Place.Stance.PICTURES,
                Place.Medium.PHOTO,
                Optional.of(Place.Shows.EXAMPLE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())),
        List.of(),
        some(),
        some(),
        Optional.of("p"),
        Optional.empty(),
        some().map(PictureRights::ofWords),
        Optional.empty());
  }
}
