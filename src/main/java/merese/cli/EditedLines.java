package merese.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Lines that are typed at a terminal, with editing, the lines before and completion. */
final class EditedLines implements SittingLines {
  private final Context context;
  private final Terminal terminal;
  private final LineReader reader;

  private EditedLines(Context context, Terminal terminal, LineReader reader) {
    this.context = context;
    this.terminal = terminal;
    this.reader = reader;
  }

  static EditedLines open(Context context, SittingCompletion completion) throws IOException {
    Terminal terminal =
        TerminalBuilder.builder()
            .name("merese")
            .system(true)
            .providers("exec")
            .encoding(StandardCharsets.UTF_8)
            .dumb(true)
            .build();
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("merese")
            .parser(new WholeWords())
            .completer((in, line, candidates) -> complete(completion, line, candidates))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            .option(LineReader.Option.AUTO_FRESH_LINE, false)
            .option(LineReader.Option.AUTO_GROUP, false)
            .option(LineReader.Option.INSERT_TAB, false)
            .variable(LineReader.ERRORS, 0)
            .variable(LineReader.LIST_MAX, Integer.MAX_VALUE)
            .variable(LineReader.BELL_STYLE, "off")
            .build();
    return new EditedLines(context, terminal, reader);
  }

  @Override
  public String next(String prompt, String begun) {
    context.out().flush();
    context.err().flush();
    try {
      return reader.readLine(prompt, null, (Character) null, begun);
    } catch (EndOfFileException e) {
      return null;
    } catch (UserInterruptException e) {
      throw new GivenUpException(e.getPartialLine().isBlank());
    }
  }

  @Override
  public boolean somebody() {
    return true;
  }

  @Override
  public boolean edited() {
    return true;
  }

  @Override
  public void close() throws IOException {
    terminal.close();
  }

  private static void complete(
      SittingCompletion completion, ParsedLine line, List<Candidate> candidates) {
    int sort = 0;
    for (SittingCompletion.Ending ending :
        completion.endings(line.line().substring(0, line.cursor()))) {
      candidates.add(
          new Candidate(
              ending.word(), ending.word(), null, ending.about(), null, null, true, sort++));
    }
  }

  /** What is completed may have several words: all since the last bar or option. */
  private static final class WholeWords implements Parser {
    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
      String word = line.substring(SittingCompletion.begin(line.substring(0, cursor)), cursor);
      return new Begun(line, cursor, word);
    }
  }

  private record Begun(String line, int cursor, String word) implements ParsedLine {
    @Override
    public int wordCursor() {
      return word.length();
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(word);
    }
  }
}
