package merese.exchange.identifier;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The name of a digital object: "10.", a registrant's number, a stroke and whatever the registrant
 * likes (ISO 26324). It has no check digit.
 */
final class Doi {
  private static final String[] SCHEMES = {"https://", "http://", "//"};
  private static final String[] HOSTS = {"doi.org/", "dx.doi.org/", "www.doi.org/"};
  private static final String[] LABELS = {"info:doi/", "urn:doi:", "doi"};

  private Doi() {}

  /** Without label, resolver and a sentence's full stop; empty where that is no DOI. */
  static Optional<String> bare(String printed) {
    String text = printed.strip();
    Optional<String> path = afterResolver(text);
    String name = path.map(Doi::decoded).orElse(text);
    name = withoutFullStop(withoutLabel(name));
    return isDoi(name) ? Optional.of(name) : Optional.empty();
  }

  private static Optional<String> afterResolver(String text) {
    int host = 0;
    for (String scheme : SCHEMES) {
      if (starts(text, 0, scheme)) {
        host = scheme.length();
        break;
      }
    }
    for (String name : HOSTS) {
      if (starts(text, host, name)) {
        return Optional.of(text.substring(host + name.length()));
      }
    }
    return Optional.empty();
  }

  private static String withoutLabel(String text) {
    for (String label : LABELS) {
      if (starts(text, 0, label)) {
        int at = label.length();
        while (at < text.length() && (text.charAt(at) == ':' || isSpace(text.charAt(at)))) {
          at++;
        }
        Optional<String> path = afterResolver(text.substring(at));
        return path.map(Doi::decoded).orElse(text.substring(at));
      }
    }
    return text;
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  private static boolean starts(String text, int at, String with) {
    return text.regionMatches(true, at, with, 0, with.length());
  }

  private static String withoutFullStop(String name) {
    int last = name.length() - 1;
    return last > 0
            && name.charAt(last) == '.'
            && (Character.isLetterOrDigit(name.charAt(last - 1))
                || ")]>".indexOf(name.charAt(last - 1)) >= 0)
        ? name.substring(0, last)
        : name;
  }

  private static boolean isDoi(String name) {
    int stroke = name.indexOf('/');
    if (!name.startsWith("10.") || stroke < 4 || stroke == name.length() - 1) {
      return false;
    }
    for (int i = 3; i < stroke; i++) {
      char c = name.charAt(i);
      boolean dot = c == '.' && name.charAt(i - 1) != '.' && i + 1 < stroke;
      if (!Digits.isDigit(c) && !dot) {
        return false;
      }
    }
    for (int i = stroke + 1; i < name.length(); i++) {
      if (isSpace(name.charAt(i)) || Character.isISOControl(name.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** With %xx decoded as UTF-8 (RFC 3986); as it is where that is not what it holds. */
  private static String decoded(String path) {
    if (path.indexOf('%') < 0) {
      return path;
    }
    byte[] bytes = path.getBytes(StandardCharsets.UTF_8);
    ByteBuffer decoded = ByteBuffer.allocate(bytes.length);
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] != '%') {
        decoded.put(bytes[i]);
        continue;
      }
      int high = i + 2 < bytes.length ? Character.digit(bytes[i + 1], 16) : -1;
      int low = high < 0 ? -1 : Character.digit(bytes[i + 2], 16);
      if (low < 0) {
        return path;
      }
      decoded.put((byte) (high * 16 + low));
      i += 2;
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(decoded.flip()).toString();
    } catch (CharacterCodingException e) {
      return path;
    }
  }

  /** Two DOIs that differ in the case of ASCII letters are one. */
  static String folded(String doi) {
    StringBuilder folded = new StringBuilder(doi.length());
    for (int i = 0; i < doi.length(); i++) {
      char c = doi.charAt(i);
      folded.append(c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c);
    }
    return folded.toString();
  }

  static Optional<String> fault(String value) {
    return bare(value).isPresent()
        ? Optional.empty()
        : Optional.of(
            "\""
                + value
                + "\" is not a DOI: one has \"10.\", a number, a stroke and more, without spaces, as"
                + " in 10.1000/182");
  }
}
