package merese.citation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StyleCatalogueTest {
  private final StyleCatalogue catalogue = StyleCatalogue.load();

  @Test
  void namesEveryStyleOfTheArtifact() {
    // counted in the jar: styles 26.2 has 2,845 styles and 7,988 that follow one of them
    assertEquals(2845, catalogue.names().size());
    assertEquals(7988, catalogue.followingNames().size());
    assertTrue(catalogue.names().contains(StyleCatalogue.DEFAULT));
  }

  @Test
  void readsATitleFromTheHeadOfAStyle() {
    StyleCatalogue.Heading own = catalogue.heading("ieee");
    assertEquals("IEEE Reference Guide version 11.29.2023", own.title());
    assertEquals(Optional.empty(), own.follows());
    StyleCatalogue.Heading following = catalogue.heading(catalogue.followingNames().get(0));
    assertTrue(catalogue.names().contains(following.follows().orElseThrow()));
  }

  @Test
  void suggestsWhatWasMeant() {
    CitationException e =
        assertThrows(CitationException.class, () -> Citations.inStyle("mhra-note", "en-GB"));
    assertTrue(
        e.getMessage().startsWith("there is no style \"mhra-note\"; did you mean mhra-notes"),
        e.getMessage());
    assertTrue(e.getMessage().endsWith("'merese reading-list --style list' shows all"));
    assertEquals("mhra-notes", catalogue.near("MHRA Notes").get(0));
    assertEquals(List.of(), catalogue.near("qqqqqqqqqqqq"));
  }

  @Test
  void aStyleThatFollowsAnotherHasItsRules() {
    StyleCatalogue.Heading following = catalogue.heading(catalogue.followingNames().get(0));
    assertEquals(
        StyleCatalogue.find(following.follows().orElseThrow()).from(),
        StyleCatalogue.find(following.name()).from());
  }

  @Test
  void everyParentExists() {
    Set<String> own = new HashSet<>(catalogue.names());
    List<String> orphans =
        catalogue.followingNames().stream()
            .filter(name -> !own.contains(catalogue.heading(name).follows().orElse("")))
            .toList();
    assertEquals(List.of(), orphans);
  }

  @Test
  void listsAFolderAsItListsAJar(@TempDir Path folder) throws Exception {
    Files.createDirectories(folder.resolve("dir/dependent"));
    Path known = Files.writeString(folder.resolve("dir/a.csl"), "<style/>");
    Files.writeString(folder.resolve("dir/dependent/b.csl"), "<style/>");
    Path jar = folder.resolve("styles.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      out.putNextEntry(new JarEntry("a.csl"));
      out.putNextEntry(new JarEntry("dependent/b.csl"));
    }
    Set<String> expected = Set.of("a.csl", "dependent/b.csl");
    assertEquals(expected, new HashSet<>(StyleCatalogue.listBeside(known.toUri().toURL())));
    assertEquals(
        expected,
        new HashSet<>(StyleCatalogue.listBeside(new URL("jar:" + jar.toUri() + "!/a.csl"))));
  }

  @Test
  void aNameIsNotAWayOutOfTheCatalogue() {
    assertThrows(CitationException.class, () -> Citations.inStyle("../mhra-notes", "en-GB"));
    assertThrows(CitationException.class, () -> Citations.inStyle("", "en-GB"));
    assertFalse(catalogue.names().stream().anyMatch(name -> name.contains("/")));
  }
}
