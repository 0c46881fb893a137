package merese.exchange.bibtex;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import merese.exchange.Outgoing;
import merese.exchange.bibtex.NoteField.Topic;
import merese.model.Contributor.Role;
import merese.model.Edition;
import merese.model.Name;
import merese.model.Work;

/** Who made a source, in the fields of an entry of biblatex. */
final class BiblatexPeople {
  private final Outgoing source;
  private final Work work;
  private final Edition edition;
  private final BiblatexType type;
  private final Map<String, String> fields;
  private final Set<Topic> fielded;
  private final List<String> unplaced;

  /**
   * @param fields of the entry, to add to
   * @param fielded what has a field, to add to
   * @param unplaced sentences for what has none, to add to
   */
  BiblatexPeople(
      Outgoing source,
      BiblatexType type,
      Map<String, String> fields,
      Set<Topic> fielded,
      List<String> unplaced) {
    this.source = source;
    this.work = source.work();
    this.edition = source.edition();
    this.type = type;
    this.fields = fields;
    this.fielded = fielded;
    this.unplaced = unplaced;
  }

  private void set(String field, String latex) {
    if (!latex.isEmpty()) {
      fields.put(field, latex);
    }
  }

  /** Adds the fields of all of them, and a title to sort by where there are none. */
  void add() {
    List<Name> authors = authors();
    BibtexNames.list(authors).ifPresent(names -> set("author", names));
    if (source.part().isPresent()) {
      people("bookauthor", "The book is by ", Makers.names(work, Role.AUTHOR));
    }
    List<Name> editors = Makers.names(work, Role.EDITOR);
    List<Name> organisers = Makers.names(work, Role.ORGANISER);
    boolean organised =
        editors.isEmpty() && authors.isEmpty() || editors.isEmpty() && isPartOfCollection();
    if (organised && type.takes("editor") && !organisers.isEmpty()) {
      editors = organisers;
      set("editor", BibtexNames.list(organisers).orElse(""));
      set("editortype", fields.containsKey("editor") ? EditorRole.type(Role.ORGANISER) : "");
      fielded.add(Topic.ORGANISER);
    } else {
      people("editor", "Edited by ", editors);
    }
    people("translator", "Translated by ", Makers.names(work, Role.TRANSLATOR));
    helpers();
    if (authors.isEmpty() && editors.isEmpty()) {
      String title = source.part().map(Edition.Part::title).orElse(work.title());
      String filed = BibtexTitle.filed(title, work.language());
      set("sorttitle", filed.equals(title) ? "" : LatexText.of(filed));
    }
  }

  private boolean isPartOfCollection() {
    return source.part().isPresent() && type == BiblatexType.INCOLLECTION;
  }

  List<Name> authors() {
    if (source.part().isPresent()) {
      return source.part().get().authors();
    }
    List<Name> writers = Makers.names(work, Role.AUTHOR);
    if (!writers.isEmpty() || !Makers.names(work, Role.EDITOR).isEmpty()) {
      return writers;
    }
    Optional<String> body =
        BiblatexType.isSale(work)
            ? edition.occasion().flatMap(Edition.Occasion::house).filter(h -> !h.isBlank())
            : BiblatexType.firm(edition);
    if (body.isPresent()) {
      return List.of(new Name.Body(body.get()));
    }
    return type.takes("editor") ? List.of() : Makers.names(work, Role.ORGANISER);
  }

  private void people(String field, String lead, List<Name> names) {
    if (type.takes(field)) {
      BibtexNames.list(names).ifPresent(list -> set(field, list));
    } else if (!names.isEmpty()) {
      unplaced.add(lead + names.stream().map(Name::full).collect(Collectors.joining(" and ")));
    }
  }

  /**
   * Those who helped, in the three fields there are for them; styles print an unknown type as it
   * is.
   */
  private void helpers() {
    if (!type.takes("editora")) {
      return;
    }
    String next = "editora";
    if (!fielded.contains(Topic.ORGANISER)) {
      next = helper(next, Role.ORGANISER, Topic.ORGANISER);
    }
    next = helper(next, Role.ILLUSTRATOR, Topic.ILLUSTRATOR);
    next = helper(next, Role.PHOTOGRAPHER, Topic.PHOTOGRAPHER);
    helper(next, Role.INTERVIEWER, Topic.INTERVIEWER);
  }

  /** The field that is free after it; none is left after the last. */
  private String helper(String field, Role role, Topic topic) {
    Optional<String> names = BibtexNames.list(Makers.names(work, role));
    if (names.isEmpty() || field.isEmpty()) {
      return field;
    }
    fielded.add(topic);
    set(field, names.get());
    set(field + "type", EditorRole.type(role));
    return field.equals("editora") ? "editorb" : field.equals("editorb") ? "editorc" : "";
  }
}
