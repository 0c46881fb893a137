package merese.cli;

import java.util.ArrayList;
import java.util.List;

/** Every command by its name. A command is built only when it is named. */
final class Commands {
  /** The headings of {@code merese --help}, in their order. */
  enum Group {
    ASK("Ask the shelf"),
    KEEP("Keep the library"),
    TOOL("About the tool");

    private final String heading;

    Group(String heading) {
      this.heading = heading;
    }

    String heading() {
      return heading;
    }
  }

  /** All of them, in the order of {@code merese --help}. A new one is one line here. */
  static final List<Entry> ALL =
      List.of(
          new Entry(Group.ASK, "covers", CoversCommand.class),
          new Entry(Group.ASK, "fewest", FewestCommand.class),
          new Entry(Group.ASK, "concordance", ConcordanceCommand.class),
          new Entry(Group.ASK, "witnesses", WitnessesCommand.class),
          new Entry(Group.ASK, "editions", EditionsCommand.class),
          new Entry(Group.ASK, "first", FirstCommand.class),
          new Entry(Group.ASK, "gaps", GapsCommand.class),
          new Entry(Group.ASK, "pull", PullCommand.class),
          new Entry(Group.ASK, "claims", ClaimsCommand.class),
          new Entry(Group.ASK, "identify", IdentifyCommand.class),
          new Entry(Group.ASK, "quote", QuoteCommand.class),
          new Entry(Group.ASK, "rights", RightsCommand.class),
          new Entry(Group.ASK, "literature", LiteratureCommand.class),
          new Entry(Group.ASK, "find", FindCommand.class),
          new Entry(Group.ASK, "reading-list", ReadingListCommand.class),
          new Entry(Group.ASK, "cite", CiteCommand.class),
          new Entry(Group.ASK, "export", ExportCommand.class),
          new Entry(Group.ASK, "desk", DeskCommand.class),
          new Entry(Group.KEEP, "new", NewCommand.class),
          new Entry(Group.KEEP, "note", NoteCommand.class),
          new Entry(Group.KEEP, "sitting", SittingCommand.class),
          new Entry(Group.KEEP, "list", ListCommand.class),
          new Entry(Group.KEEP, "looked", LookedCommand.class),
          new Entry(Group.KEEP, "pages", PagesCommand.class),
          new Entry(Group.KEEP, "undo", UndoCommand.class),
          new Entry(Group.KEEP, "history", HistoryCommand.class),
          new Entry(Group.KEEP, "import", ImportCommand.class),
          new Entry(Group.KEEP, "add", AddCommand.class),
          new Entry(Group.KEEP, "edit", EditCommand.class),
          new Entry(Group.KEEP, "remove", RemoveCommand.class),
          new Entry(Group.KEEP, "check", CheckCommand.class),
          new Entry(Group.KEEP, "backup", BackupCommand.class),
          new Entry(Group.KEEP, "restore", RestoreCommand.class),
          new Entry(Group.KEEP, "merge", MergeCommand.class),
          new Entry(Group.KEEP, "split", SplitCommand.class),
          new Entry(Group.KEEP, "concept", ConceptCommand.class),
          new Entry(Group.KEEP, "coin", CoinCommand.class),
          new Entry(Group.KEEP, "prefer", PreferCommand.class),
          new Entry(Group.KEEP, "object", ObjectCommand.class),
          new Entry(Group.TOOL, "completion", CompletionCommand.class),
          new Entry(Group.TOOL, "help", HelpCommand.class));

  private Commands() {}

  /** The entry of a name, or null. */
  static Entry find(String name) {
    for (Entry entry : ALL) {
      if (entry.name().equals(name)) {
        return entry;
      }
    }
    return null;
  }

  /** What they are called, in their order. */
  static List<String> names() {
    List<String> names = new ArrayList<>();
    for (Entry entry : ALL) {
      names.add(entry.name());
    }
    return names;
  }

  /**
   * One command.
   *
   * @param group the heading that it stands under in {@code merese --help}
   * @param type its class, with a constructor that takes a {@link Context}; a class and not a
   *     lambda, since the first lambda of a process costs it some 10 ms
   */
  record Entry(Group group, String name, Class<? extends Command> type) {
    Command make(Context context) {
      try {
        return type.getDeclaredConstructor(Context.class).newInstance(context);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(type + " has no constructor that takes a context", e);
      }
    }
  }
}
