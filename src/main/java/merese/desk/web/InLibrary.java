package merese.desk.web;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names the files of the library as they are called below its folder. A message names them by where
 * the folder is on this machine, as a terminal needs it; a page that is shown, printed or kept does
 * not.
 */
final class InLibrary {
  private static final Pattern TYPED =
      Pattern.compile("<textarea\\b.*?</textarea>", Pattern.DOTALL);

  private final String plain;
  private final String escaped;

  InLibrary(Path folder) {
    this.plain = folder + folder.getFileSystem().getSeparator();
    this.escaped = plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** A message, with "works/x.json, line 4:" for a place in a file. */
  String words(String message) {
    return named(message, plain);
  }

  /** A page; what somebody has typed stays as it is. */
  String page(String html) {
    if (!html.contains(escaped)) {
      return html;
    }
    StringBuilder out = new StringBuilder();
    Matcher typed = TYPED.matcher(html);
    int at = 0;
    while (typed.find()) {
      out.append(named(html.substring(at, typed.start()), escaped)).append(typed.group());
      at = typed.end();
    }
    return out.append(named(html.substring(at), escaped)).toString();
  }

  /** Not where it begins the value of an attribute, which is what was typed. */
  private static String named(String text, String folder) {
    String quoted = "(?<![=\\w]\")" + Pattern.quote(folder);
    return text.replaceAll(quoted + "([^\\s:<>\"]+):(\\d+):\\d+:", "$1, line $2:")
        .replaceAll(quoted, "");
  }
}
