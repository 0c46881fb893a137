package merese.change;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.change.Effect.Sort;
import merese.model.Work;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.LibraryJson;

/**
 * Where a library speaks, in somebody's own words, of a name that goes: the program does not
 * rewrite those. Records that other programs gave keep names of their own, and do not count.
 */
final class Mentions {
  private final List<String> names;

  Mentions(List<String> names) {
    this.names = List.copyOf(names);
  }

  /**
   * @param changed works as they will be, by id
   * @param gone ids of works that will not be
   */
  List<Effect> in(LibraryFolder folder, Map<String, Work> changed, List<String> gone) {
    List<Effect> effects = new ArrayList<>();
    for (LibraryFile file : folder.scan()) {
      switch (file.kind()) {
        case WORK -> {
          Work now = changed.get(file.name());
          if (now != null) {
            look(file.relative(), text(now), effects);
          } else if (!gone.contains(file.name()) && mentions(raw(file))) {
            look(file.relative(), text(folder.readWork(file.path()).value()), effects);
          }
        }
        case OBJECT, MINE, VOCABULARY, HOMONYMS, CHARACTERS ->
            look(file.relative(), raw(file), effects);
        case SETTINGS, RECEIVED, PAGES -> {}
      }
    }
    for (String name : names) {
      if (Files.exists(folder.resolve("pages").resolve(name))) {
        effects.add(
            new Effect(Sort.LOOK_AT, "pages/" + name + " are the pages of what is no more"));
      }
    }
    return effects;
  }

  private static String text(Work work) {
    Work told =
        work.withEditions(
            work.editions().stream().map(edition -> edition.withReceived(List.of())).toList());
    return new String(LibraryJson.encodeWork(told), StandardCharsets.UTF_8);
  }

  private static String raw(LibraryFile file) {
    try {
      return Files.readString(file.path(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void look(String relative, String text, List<Effect> effects) {
    for (String name : names) {
      if (isIn(text, name)) {
        effects.add(new Effect(Sort.LOOK_AT, relative + " mentions " + name));
      }
    }
  }

  private boolean mentions(String text) {
    return names.stream().anyMatch(name -> isIn(text, name));
  }

  private static boolean isIn(String text, String name) {
    for (int at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
      int end = at + name.length();
      boolean starts = at == 0 || !isOfAName(text.charAt(at - 1));
      boolean ends = end == text.length() || !isOfAName(text.charAt(end));
      if (starts && ends) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOfAName(char c) {
    return Character.isLetterOrDigit(c) || c == '-' || c == '_';
  }
}
