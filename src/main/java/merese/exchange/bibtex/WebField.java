package merese.exchange.bibtex;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Addresses on the web as fields hold them, where people escape what they need not. */
final class WebField {
  private static final Pattern URL_ONLY =
      Pattern.compile("\\{?\\\\(?:url|path|nolinkurl)\\s*\\{([^{}]*)\\}\\s*\\}?\\.?");
  private static final Pattern BARE = Pattern.compile("(?i)https?://[^\\s{}\\\\]+");

  private WebField() {}

  /** The address in a field for addresses. */
  static String address(String field) {
    Matcher wrapped = URL_ONLY.matcher(field.strip());
    String raw = wrapped.matches() ? wrapped.group(1) : field;
    StringBuilder address = new StringBuilder();
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      boolean escapes =
          c == '\\' && i + 1 < raw.length() && "_%#&~$".indexOf(raw.charAt(i + 1)) >= 0;
      if (!escapes && c != '{' && c != '}' && !Character.isISOControl(c)) {
        address.append(c);
      }
    }
    return address.toString().strip();
  }

  /** The address that is all a text for people says. */
  static Optional<String> alone(String field) {
    String text = field.strip();
    return URL_ONLY.matcher(text).matches() || BARE.matcher(text).matches()
        ? Optional.of(address(text)).filter(a -> !a.isEmpty())
        : Optional.empty();
  }
}
