package merese.cli;

import java.util.List;
import picocli.CommandLine.Help;
import picocli.CommandLine.IHelpSectionRenderer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What {@code merese} says without a command: which there are, and which version it is. */
final class RootCommand extends Command {
  private final Given<Boolean> version = flag("Show the version.", "-V", "--version");

  RootCommand(Context context) {
    super(
        context,
        "Which book pictures it, on which plate, and what it calls it.",
        "merese covers bladed ring",
        "merese help covers");
  }

  @Override
  void layOut(CommandSpec help) {
    help.name("merese");
    UsageMessageSpec usage = help.usageMessage();
    usage.customSynopsis("merese COMMAND [OPTION | WORD]...");
    usage.sectionKeys(
        List.of(
            UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
            UsageMessageSpec.SECTION_KEY_SYNOPSIS,
            UsageMessageSpec.SECTION_KEY_DESCRIPTION_HEADING,
            UsageMessageSpec.SECTION_KEY_DESCRIPTION,
            UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
            UsageMessageSpec.SECTION_KEY_OPTION_LIST_HEADING,
            UsageMessageSpec.SECTION_KEY_OPTION_LIST,
            UsageMessageSpec.SECTION_KEY_FOOTER_HEADING,
            UsageMessageSpec.SECTION_KEY_FOOTER));
    usage.sectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, new CommandList());
  }

  /** Reached only by options, since every other first word is looked up as a command. */
  @Override
  int run() {
    if (version.isSet()) {
      String build = Main.class.getPackage().getImplementationVersion();
      context().out().println("merese " + (build == null ? "(not packaged)" : build));
      context()
          .out()
          .println(
              "Java "
                  + System.getProperty("java.version")
                  + ", "
                  + System.getProperty("java.vendor"));
      return ExitCode.DONE;
    }
    return Shell.run(context());
  }

  /** The commands under the headings of their groups. A class, since a lambda starts slowly. */
  private static final class CommandList implements IHelpSectionRenderer {
    @Override
    public String render(Help help) {
      int column = 0;
      for (Commands.Entry entry : Commands.ALL) {
        column = Math.max(column, 2 + entry.name().length() + 2);
      }
      int width = help.commandSpec().usageMessage().width();
      StringBuilder list = new StringBuilder();
      for (Commands.Group group : Commands.Group.values()) {
        list.append('\n').append(group.heading()).append(":\n");
        for (Commands.Entry entry : Commands.ALL) {
          if (entry.group() == group) {
            String says =
                help.subcommands().get(entry.name()).commandSpec().usageMessage().description()[0];
            String name = "  " + entry.name();
            String lead = name + " ".repeat(column - name.length());
            for (String line : Wrap.lines(says, width, lead, " ".repeat(column))) {
              list.append(line).append('\n');
            }
          }
        }
      }
      return list.toString();
    }
  }
}
