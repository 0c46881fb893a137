package merese.citation;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import merese.model.Nearest;

/**
 * The citation styles that come with the tool, some 2,800, and the 8,000 names of journals and
 * publishers that follow one of them; and a user's own style file.
 *
 * <p>Listing names reads no style. A {@linkplain #heading heading} reads the start of one file.
 */
public final class StyleCatalogue {
  /** Notes and bibliography as British books on the arts have them. */
  public static final String DEFAULT = "mhra-notes";

  private static final String ENDING = ".csl";
  private static final String DEPENDENT = "dependent/";
  private static final int MAX_BYTES = 4 << 20;
  private static final int HEAD_BYTES = 16 << 10;

  private final TreeSet<String> own = new TreeSet<>();
  private final TreeSet<String> following = new TreeSet<>();

  private StyleCatalogue(Collection<String> files) {
    for (String file : files) {
      if (file.endsWith(ENDING)) {
        String name = file.substring(0, file.length() - ENDING.length());
        if (name.startsWith(DEPENDENT)) {
          following.add(name.substring(DEPENDENT.length()));
        } else if (name.indexOf('/') < 0) {
          own.add(name);
        }
      }
    }
  }

  /**
   * What a style's file says of itself.
   *
   * @param follows the style that has its rules, for a style that has none of its own
   */
  public record Heading(String name, String title, Optional<String> follows) {}

  /**
   * The styles on the class path, whether they are in a jar or in a folder.
   *
   * @throws CitationException if they cannot be listed
   */
  public static StyleCatalogue load() {
    URL known = StyleCatalogue.class.getResource("/" + DEFAULT + ENDING);
    if (known == null) {
      throw new CitationException(
          "the citation styles are not on the class path; put the styles jar beside the program's");
    }
    try {
      return new StyleCatalogue(listBeside(known));
    } catch (IOException | URISyntaxException e) {
      throw new CitationException("the citation styles at " + known + " cannot be listed", e);
    }
  }

  static List<String> listBeside(URL known) throws IOException, URISyntaxException {
    URLConnection connection = known.openConnection();
    if (connection instanceof JarURLConnection jar) {
      return jar.getJarFile().stream().map(entry -> entry.getName()).toList();
    }
    Path folder = Path.of(known.toURI()).getParent();
    try (Stream<Path> files = Files.walk(folder, 2)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .toList();
    }
  }

  /** The styles that have rules of their own, A–Z. */
  public List<String> names() {
    return List.copyOf(own);
  }

  /** The names that follow another style, A–Z. */
  public List<String> followingNames() {
    return List.copyOf(following);
  }

  /**
   * A style's title.
   *
   * @throws CitationException for an unknown name
   */
  public Heading heading(String name) {
    try (InputStream in = open(name).orElseThrow(() -> unknown(name))) {
      String head = new String(in.readNBytes(HEAD_BYTES), StandardCharsets.UTF_8);
      int link = head.indexOf("rel=\"independent-parent\"");
      Optional<String> follows =
          link < 0
              ? Optional.empty()
              : Optional.of(head.substring(head.lastIndexOf('<', link), head.indexOf('>', link)))
                  .map(tag -> between(tag, "href=\"", "\""))
                  .map(address -> address.substring(address.lastIndexOf('/') + 1));
      return new Heading(name, unescape(between(head, "<title>", "</title>")), follows);
    } catch (IOException e) {
      throw new CitationException("the style " + name + " cannot be read", e);
    }
  }

  private static String between(String text, String start, String end) {
    int from = text.indexOf(start);
    int to = from < 0 ? -1 : text.indexOf(end, from + start.length());
    return to < 0 ? "" : text.substring(from + start.length(), to).strip();
  }

  private static String unescape(String xml) {
    return xml.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#8217;", "’")
        .replace("&amp;", "&");
  }

  /** Up to three names that someone may have meant, the likeliest first. */
  public List<String> near(String name) {
    List<String> all = new ArrayList<>(own);
    all.addAll(following);
    return Nearest.to(name, all, 3);
  }

  /**
   * The style with its rules, its parent's where it has none of its own.
   *
   * @param name a name of the catalogue or the path of a file that ends in .csl
   */
  static StyleDocument find(String name) {
    return ownFile(name)
        .map(StyleCatalogue::read)
        .map(style -> style.parent().map(StyleCatalogue::shipped).orElse(style))
        .orElseGet(() -> shipped(bare(name)));
  }

  private static StyleDocument shipped(String name) {
    StyleDocument style = parse(name);
    Optional<String> parent = style.parent();
    return parent.isPresent() ? parse(parent.get()) : style;
  }

  private static StyleDocument parse(String name) {
    try (InputStream in = open(name).orElseThrow(() -> load().unknown(name))) {
      return StyleDocument.parse(name, in);
    } catch (IOException e) {
      throw new CitationException("the style " + name + " cannot be read", e);
    }
  }

  private static Optional<InputStream> open(String name) {
    boolean plain = !name.isEmpty() && name.indexOf('/') < 0 && name.indexOf('\\') < 0;
    return Stream.of("/", "/" + DEPENDENT)
        .filter(folder -> plain)
        .map(folder -> StyleCatalogue.class.getResourceAsStream(folder + name + ENDING))
        .filter(in -> in != null)
        .findFirst();
  }

  private static String bare(String name) {
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }

  private static Optional<Path> ownFile(String name) {
    boolean looksLikePath = name.indexOf('/') >= 0 || name.indexOf('\\') >= 0;
    if (!looksLikePath && !name.endsWith(ENDING)) {
      return Optional.empty();
    }
    try {
      Path path = Path.of(name);
      if (Files.isRegularFile(path)) {
        return Optional.of(path);
      }
    } catch (InvalidPathException e) {
      throw new CitationException("no style file can have the name " + name, e);
    }
    if (looksLikePath) {
      throw new CitationException(
          "no style file \""
              + name
              + "\"; give the path of a .csl file, or the name of a style without a slash");
    }
    return Optional.empty();
  }

  private static StyleDocument read(Path file) {
    try {
      if (Files.size(file) > MAX_BYTES) {
        throw new CitationException(file + " is larger than 4 MB, too large for a CSL style");
      }
      StyleDocument style = StyleDocument.parse(file.toString(), Files.readAllBytes(file));
      if (!style.root().getNodeName().equals("style")) {
        throw new CitationException(
            file
                + ": not a CSL style: it starts with <"
                + style.root().getNodeName()
                + "> where <style> is needed");
      }
      return style;
    } catch (IOException e) {
      throw new CitationException("the style file " + file + " cannot be read", e);
    }
  }

  private CitationException unknown(String name) {
    List<String> near = near(name);
    return new CitationException(
        "there is no style \""
            + name
            + "\"; "
            + (near.isEmpty() ? "" : "did you mean " + String.join(" or ", near) + "? ")
            + "'merese reading-list --style list' shows all");
  }
}
