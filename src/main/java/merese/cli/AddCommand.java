package merese.cli;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import merese.answer.json.AnswerJson;
import merese.change.AddRequest;
import merese.change.AddResult;
import merese.change.Adding;
import merese.change.DoubleException;
import merese.change.EntryException;
import merese.change.SourceEntry;
import merese.change.SourceField;
import merese.model.Copy;
import merese.model.Edition.Lineage;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import picocli.CommandLine.Model.CommandSpec;

/** Adds a work with its edition, a further edition of a work, or a copy of an edition. */
final class AddCommand extends LibraryCommand {
  private static final int SHOWN = 3;

  private final Given<String> editionOf =
      option(
          String.class,
          "WORK",
          "Add an edition of this work, named by itself or by the key of another edition.",
          "--edition-of");

  private final Given<String> copyOf =
      option(String.class, "SOURCE", "Add a copy of this source.", "--copy-of");

  private final Map<SourceField, Given<?>> fields = new EnumMap<>(SourceField.class);

  private final Given<String> key;
  private final Given<Boolean> mine;
  private final Given<String> form;
  private final Given<Integer> originalYear;
  private final Given<Boolean> copy;
  private final Given<String> shelfMark;
  private final Given<String> holder;
  private final Given<String> lentTo;
  private final Given<Boolean> missing;
  private final Given<String> remark;
  private final Given<Boolean> asPrinted;
  private final Given<Boolean> anyway;
  private final Given<Boolean> json;

  AddCommand(Context context) {
    super(
        context,
        "Add a source: a work with its edition, a further edition, or a copy.\n"
            + "What is left out is asked, where somebody is at the terminal. Its key is made of the"
            + " family name and the year.",
        "merese add",
        "merese add --kind leaflet --title \"Rings and Rims\" --year 1952",
        "merese add --edition-of quenby-1949 --year 1955 --form revised",
        "merese add --copy-of quenby-1949 --shelf-mark A3");
    for (SourceField field : SourceField.values()) {
      fields.put(
          field,
          field.isMany()
              ? options(field.label(), field.description() + " May be repeated.", field.option())
              : option(String.class, field.label(), field.description(), field.option()));
    }
    key =
        option(String.class, "KEY", "The key to cite it by, if not family name and year.", "--key");
    mine = flag("It is a work of your own: listed apart, and never a witness.", "--mine");
    form =
        option(
            String.class,
            "FORM",
            "With --edition-of: revised, reprint, facsimile, translation or twin of the edition"
                + " named there.",
            "--form");
    originalYear =
        option(
            Integer.class,
            "YEAR",
            "The year in which what is reprinted first came out.",
            "--original-year");
    copy = flag("You have a copy.", "--copy");
    shelfMark = option(String.class, "MARK", "Where your copy stands.", "--shelf-mark");
    holder = option(String.class, "NAME", "Who has the copy, if not you.", "--holder");
    lentTo = option(String.class, "NAME", "Who has borrowed it.", "--lent-to");
    missing = flag("It should be there and is not.", "--missing");
    remark = option(String.class, "TEXT", "What else there is to say of the copy.", "--remark");
    asPrinted =
        flag("Keep a number that fails its check digit, marked as wrong in print.", "--as-printed");
    anyway = flag("Add it although it looks like one that is there.", "--anyway");
    json = flag("Print what was added as JSON.", "--json");
  }

  @Override
  void layOut(CommandSpec help) {
    help.usageMessage().customSynopsis("merese add [OPTION VALUE]...");
  }

  @Override
  int run() {
    LibraryFolder library = library();
    Optional<Asking> asking = Asking.of(context());
    AddRequest request = copyOf.value().isPresent() ? copyRequest() : sourceRequest(asking);
    Watcher watcher = new ShelfProgress(context());
    AddResult result;
    try {
      result = Adding.apply(library, request, watcher);
    } catch (DoubleException e) {
      if (asking.isEmpty()) {
        throw e;
      }
      asking.get().say("It may be there already: " + e.found() + ".");
      if (!asking.get().yes("Add it even so?")) {
        throw new CommandException("nothing was added", e);
      }
      result = Adding.apply(library, request.evenSo(), watcher);
    }
    if (json.isSet()) {
      AnswerJson.print(context().out(), result);
    } else {
      print(result);
    }
    if (!result.unread().isEmpty()) {
      Page page = new Page(context().err(), context().errorScreen());
      page.heading("Not compared with what is in files that cannot be read:");
      result.unread().stream().limit(SHOWN).forEach(p -> page.hanging("  ", p.toString()));
      page.hanging("  ", "merese check says more.");
    }
    return ExitCode.DONE;
  }

  private AddRequest copyRequest() {
    if (editionOf.value().isPresent()) {
      throw CommandException.wrongUse("--copy-of and --edition-of are two things; do one by one");
    }
    for (Map.Entry<SourceField, Given<?>> field : fields.entrySet()) {
      if (field.getValue().value().isPresent()) {
        throw CommandException.wrongUse(
            field.getKey().option() + " is said of an edition, and --copy-of adds a copy alone");
      }
    }
    return new AddRequest(
        copyOf.value(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(theCopy()),
        false,
        false);
  }

  private AddRequest sourceRequest(Optional<Asking> asking) {
    SourceEntry entry = new SourceEntry(asPrinted.isSet(), WritingCommand.clock());
    try {
      fields.forEach((field, given) -> put(entry, field, given));
      entry.requireWhole();
    } catch (EntryException e) {
      throw CommandException.wrongUse(e.getMessage());
    }
    boolean edition = editionOf.value().isPresent();
    Optional<Lineage.Form> lineage = form.value().map(AddCommand::form);
    if (lineage.isPresent() && !edition) {
      throw CommandException.wrongUse("--form says how it stands to --edition-of; name that");
    }
    if (originalYear.value().isPresent() && lineage.isEmpty()) {
      throw CommandException.wrongUse("--original-year needs --form, such as --form reprint");
    }
    Optional<Copy> ofIt = hasCopy() ? Optional.of(theCopy()) : Optional.empty();
    boolean whole =
        edition
            ? entry.has(SourceField.YEAR)
            : entry.has(SourceField.KIND) && entry.has(SourceField.TITLE);
    if (!whole) {
      if (asking.isEmpty()) {
        throw CommandException.wrongUse(
            edition
                ? "say which edition it is: --year is needed, n.d. for none"
                : "a source needs "
                    + (entry.has(SourceField.KIND) ? "" : "--kind")
                    + (entry.has(SourceField.KIND) || entry.has(SourceField.TITLE) ? "" : " and ")
                    + (entry.has(SourceField.TITLE) ? "" : "--title"));
      }
      AddQuestions questions = new AddQuestions(asking.get(), entry);
      if (edition) {
        questions.ofEdition();
        lineage = lineage.or(questions::form);
      } else {
        questions.ofWork();
      }
      ofIt = ofIt.or(questions::copy);
    }
    return new AddRequest(
        editionOf.value(),
        Optional.of(entry),
        key.value(),
        lineage,
        originalYear.value().map(OptionalInt::of).orElse(OptionalInt.empty()),
        ofIt,
        mine.isSet(),
        anyway.isSet());
  }

  private static void put(SourceEntry entry, SourceField field, Given<?> given) {
    Object value = given.value().orElse(null);
    if (value instanceof List<?> several) {
      several.forEach(one -> entry.put(field, (String) one));
    } else if (value != null) {
      entry.put(field, (String) value);
    }
  }

  private static Lineage.Form form(String typed) {
    for (Lineage.Form form : Lineage.Form.values()) {
      if (form.code().equalsIgnoreCase(typed)) {
        return form;
      }
    }
    throw CommandException.wrongUse(
        "--form: there is no \""
            + typed
            + "\"; it is revised, reprint, facsimile, translation or"
            + " twin");
  }

  private boolean hasCopy() {
    return copy.isSet()
        || missing.isSet()
        || shelfMark.value().isPresent()
        || holder.value().isPresent()
        || lentTo.value().isPresent()
        || remark.value().isPresent();
  }

  /** Its id is given when it is added. */
  private Copy theCopy() {
    return new Copy(
        "new", holder.value(), shelfMark.value(), lentTo.value(), missing.isSet(), remark.value());
  }

  private void print(AddResult result) {
    Page page = new Page(context().out(), context().screen());
    page.text("Added: " + result.reference() + ", " + result.title() + " (" + result.what() + ").");
    page.blank();
    page.columns("", "Key", 4).line(result.key());
    result.copy().ifPresent(c -> page.columns("", "Copy", 4).line(words(c)));
    page.columns("", "File", 4).line(context().fromHere(result.file()).toString());
    page.blank();
    page.text("Next: merese note " + result.key() + " …  (merese undo takes it back)");
  }

  private static String words(Copy copy) {
    return copy.id()
        + copy.shelfMark().map(mark -> ", " + mark).orElse("")
        + copy.holder().map(name -> ", " + name).orElse("")
        + copy.lentTo().map(name -> ", lent to " + name).orElse("")
        + (copy.missing() ? ", missing" : "");
  }
}
