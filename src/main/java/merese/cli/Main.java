package merese.cli;

import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** Where the program starts. Everything but the streams of the process is handed in. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.exit(
        run(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            System.getenv(),
            Path.of("").toAbsolutePath(),
            args));
  }

  /**
   * Runs one command.
   *
   * @param out where the answer goes, as UTF-8
   * @param err where errors and progress go, as UTF-8
   * @param environment the variables of the process; {@link Screen} says which are read
   * @param workingDirectory the absolute folder that relative paths start from
   * @return 0 done, 1 failed, 2 wrong use
   */
  public static int run(
      InputStream in,
      OutputStream out,
      OutputStream err,
      Map<String, String> environment,
      Path workingDirectory,
      String... args) {
    PrintWriter errors = writer(err);
    Context context =
        new Context(
            in,
            writer(new AnswerStream(out)),
            errors,
            environment,
            workingDirectory,
            Screen.ofAnswers(environment),
            Screen.ofErrors(environment));
    try {
      int code = Shell.run(context, args);
      context.out().flush();
      return code;
    } catch (AnswerStream.Lost e) {
      return e.report(errors);
    } finally {
      errors.flush();
    }
  }

  private static PrintWriter writer(OutputStream stream) {
    Writer encoding = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
    return new PrintWriter(new BufferedWriter(encoding), false); // else each line is encoded alone
  }
}
