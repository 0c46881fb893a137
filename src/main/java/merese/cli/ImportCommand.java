package merese.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.json.AnswerJson;
import merese.change.records.ImportOptions;
import merese.change.records.ImportResult;
import merese.change.records.RecordFormat;
import merese.change.records.SourceImport;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.RecordReader;
import merese.exchange.Refused;
import merese.exchange.csv.CsvMapping;
import merese.exchange.csv.CsvReader;
import merese.model.ReceivedRecord;

/** Brings in what other programs and libraries know: sources, and the concepts of a vocabulary. */
final class ImportCommand extends LibraryCommand {
  private static final String ALL = "all";
  private static final String UNCHANGED = "Stopped: nothing has been written.";
  private static final String ALL_OR_NOTHING =
      "Stopped while writing: either all of it is in the library or nothing is; the next command\n"
          + "sees to that.";

  /** Fewer are done before anybody would wonder. */
  private static final int WORTH_SHOWING = 500;

  private final Given<List<String>> files =
      words("FILE", "A bibliography, catalogue records, a table or a vocabulary; - for the input.");

  private final Given<Boolean> apply =
      flag("Do it; without this, only say what would be done.", "--apply");
  private final Given<String> as =
      option(
          String.class,
          "FORMAT",
          "What the files are, where it can't be told from them: "
              + String.join(", ", RecordFormat.codes())
              + ".",
          "--as");
  private final Given<String> join =
      option(
          String.class,
          "KEYS",
          "Take these as editions of the works proposed, with commas between; all for all.",
          "--join");
  private final Given<Boolean> replace =
      flag("Where a file says otherwise, take its word; without this, yours stays.", "--replace");
  private final Given<Path> mapping =
      option(
          Path.class,
          "FILE",
          "For a table: two columns, a header of it and the column of ours that it is.",
          "--mapping");
  private final Given<Boolean> explain =
      flag("For a table: only say how each of its columns is read.", "--explain");
  private final Given<List<String>> choose =
      options(
          "KEY=VALUE", "For a vocabulary: the answer to a question of the preview.", "--choose");
  private final Given<String> facet =
      option(
          String.class,
          "FACET",
          "For a vocabulary: where new concepts go that nothing else places.",
          "--facet");
  private final Given<String> language =
      option(
          String.class,
          "TAG",
          "For a vocabulary: take the labels in this language; without it, the library's.",
          "--language");
  private final Given<Boolean> all = flag("Print every line of a long preview.", "--all");
  private final Given<Boolean> json = flag("Print the preview or the result as JSON.", "--json");

  ImportCommand(Context context) {
    super(
        context,
        "Bring in sources or concepts from other programs; first a preview.\n"
            + "Reads BibTeX, BibLaTeX, CSL-JSON, MARC 21, MARCXML, tables (CSV) and SKOS.",
        "merese import shelf.bib",
        "merese import shelf.bib --join all --apply",
        "merese import list.csv --mapping columns.csv --explain");
  }

  @Override
  int run() throws IOException {
    List<RecordFile> opened = new ArrayList<>();
    try (StopNotice notice = StopNotice.of(context().err(), UNCHANGED)) {
      for (String typed : files.required()) {
        opened.add(RecordFile.open(context(), typed, format()));
      }
      if (explain.isSet()) {
        return explained(opened);
      }
      return opened.get(0).format().holdsSources()
          ? sources(opened, notice)
          : concepts(opened, notice);
    } finally {
      for (RecordFile file : opened) {
        file.close();
      }
    }
  }

  private int concepts(List<RecordFile> opened, StopNotice notice) throws IOException {
    if (opened.size() > 1) {
      throw CommandException.wrongUse("bring vocabularies in one by one");
    }
    ConceptsIn.Given given =
        new ConceptsIn.Given(
            apply.isSet(),
            replace.isSet(),
            facet.value(),
            language.value(),
            choose.value().orElse(List.of()),
            all.isSet(),
            json.isSet());
    if (apply.isSet()) {
      notice.nowSay(ALL_OR_NOTHING);
    }
    return new ConceptsIn(context(), library(), given).read(opened.get(0));
  }

  private int explained(List<RecordFile> opened) throws IOException {
    TableText text = new TableText(new Page(context().out(), context().screen()));
    for (RecordFile file : opened) {
      if (file.format() != RecordFormat.CSV) {
        throw CommandException.wrongUse(
            "--explain: " + file.name() + " is no table; it is " + file.format().words());
      }
      text.print(file.name(), new CsvReader(columns()).explain(file.in()));
    }
    return ExitCode.DONE;
  }

  private CsvMapping columns() throws IOException {
    if (mapping.value().isEmpty()) {
      return CsvMapping.NONE;
    }
    Path file = mapping.value().get();
    try (InputStream in = Files.newInputStream(context().resolve(file))) {
      return CsvMapping.read(file.toString(), in);
    }
  }

  private Optional<RecordFormat> format() {
    Optional<RecordFormat> format = as.value().flatMap(RecordFormat::named);
    if (as.value().isPresent() && format.isEmpty()) {
      throw CommandException.wrongUse(
          "--as: there is no format \""
              + as.value().get()
              + "\"; the formats are "
              + String.join(", ", RecordFormat.codes()));
    }
    return format;
  }

  private int sources(List<RecordFile> opened, StopNotice notice) throws IOException {
    ImportResult result = read(opened, notice);
    if (json.isSet()) {
      AnswerJson.print(context().out(), result);
    } else {
      print(result);
    }
    boolean failed = !result.refused().isEmpty() && (apply.isSet() || result.bringsNothing());
    return failed ? ExitCode.FAILED : ExitCode.DONE;
  }

  private ImportResult read(List<RecordFile> opened, StopNotice notice) throws IOException {
    SourceImport importing = new SourceImport(library(), options(), apply.isSet());
    try (Progress progress = context().progress()) {
      for (RecordFile file : opened) {
        if (!file.format().holdsSources()) {
          throw CommandException.wrongUse("bring in " + file.name() + ", a vocabulary, by itself");
        }
        RecordReader reader =
            file.format() == RecordFormat.CSV ? new CsvReader(columns()) : file.format().reader();
        reader.read(file.name(), file.in(), new Counted(importing, progress, file.name()));
        importing.endOfFile(file.lastName(), reader.wrapping());
      }
    }
    if (!apply.isSet()) {
      return importing.result();
    }
    notice.nowSay(ALL_OR_NOTHING);
    return applied(importing);
  }

  private ImportResult applied(SourceImport importing) {
    try (Progress progress = context().progress()) {
      if (importing.works() >= WORTH_SHOWING) {
        progress.start("Writing works", importing.works());
      }
      return importing.apply(progress::at);
    }
  }

  private ImportOptions options() {
    Set<String> keys = new TreeSet<>();
    for (String key : join.value().orElse("").split(",")) {
      if (!key.isBlank()) {
        keys.add(key.strip());
      }
    }
    return new ImportOptions(replace.isSet(), keys, keys.contains(ALL));
  }

  private void print(ImportResult result) {
    Page page = new Page(context().out(), context().screen());
    new ImportText(page, all.isSet(), apply.isSet()).print(result);
    page.text(conclusion(result));
  }

  private String conclusion(ImportResult result) {
    if (result.changesNothing()) {
      return result.isEmpty()
          ? "There is no record in " + String.join(", ", files.required()) + "."
          : "Nothing to do: the library has all of it.";
    }
    if (!apply.isSet()) {
      return result.bringsNothing()
          ? "Nothing can be brought in."
          : "Nothing has been written. With --apply, this is done.";
    }
    String mend =
        result.mend().isEmpty()
            ? ""
            : " What could not be read is in "
                + String.join(", ", result.mend())
                + ": mend it there, and import that file.";
    return "Done." + mend;
  }

  /** Hands records on, and shows how many there have been once there are many. */
  private static final class Counted implements Receiver {
    private final SourceImport importing;
    private final Progress progress;
    private final String name;
    private int records;

    Counted(SourceImport importing, Progress progress, String name) {
      this.importing = importing;
      this.progress = progress;
      this.name = name;
    }

    private void count() {
      records++;
      if (records == WORTH_SHOWING) {
        progress.start("Reading " + name, 0);
      }
      if (records >= WORTH_SHOWING) {
        progress.at(records);
      }
    }

    @Override
    public void source(Incoming source) {
      importing.source(source);
      count();
    }

    @Override
    public void kept(FilePlace place, ReceivedRecord record) {
      importing.kept(place, record);
    }

    @Override
    public void refused(Refused record) {
      importing.refused(record);
      count();
    }
  }
}
