package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup holds the library byte for byte, or nothing comes of it. */
class BackupTest {
  @TempDir private Path dir;
  private Path shelf;
  private Path zip;
  private LibraryFolder library;

  @BeforeEach
  void aLibrary() throws IOException {
    library = Fixture.in(Files.createDirectory(dir.resolve("shelf")));
    shelf = library.path();
    Fixture.write(shelf.resolve(".history/00000001.json"), "{}");
    Fixture.write(shelf.resolve("pictures/d-1/é front.jpg"), "a picture");
    Fixture.write(shelf.resolve("works/README.txt"), "my own");
    Fixture.write(shelf.resolve(".lock"), "somebody");
    zip = dir.resolve("backup.zip");
  }

  private static Map<String, String> content(Path root) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        content.put(
            root.relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return content;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private String refusal(Path from, Path to) {
    return assertThrows(LibraryException.class, () -> Restore.to(to, from)).getMessage();
  }

  /** That a backup is refused, and nothing of it is left. */
  private String refused(byte[] bytes) throws IOException {
    Path bad = dir.resolve("bad.zip");
    Files.write(bad, bytes);
    List<String> before = names(dir);
    String said = refusal(bad, dir.resolve("again"));
    assertEquals(before, names(dir));
    return said;
  }

  @Test
  void isTheLibraryByteForByteWithItsHistoryAndWithoutItsLock() throws IOException {
    Map<String, String> whole = content(shelf);
    Backup.Written written = Backup.write(library, zip, false);
    whole.remove(".lock");
    assertEquals(whole.size(), written.files());
    assertEquals(whole.values().stream().mapToLong(String::length).sum(), written.bytes());
    assertEquals(Files.size(zip), written.zipped());
    Restore.Written restored = Restore.to(dir.resolve("a/b"), zip);
    assertEquals(whole, content(dir.resolve("a/b/library")));
    assertEquals(List.of("library"), names(dir.resolve("a/b")));
    assertEquals(whole.size(), restored.files());
    assertEquals(written.bytes(), restored.bytes());
    assertEquals(
        Files.getLastModifiedTime(shelf.resolve("mine.json")).toMillis() / 2000,
        Files.getLastModifiedTime(restored.library().resolve("mine.json")).toMillis() / 2000);
    assertEquals(List.of(), LibraryFolder.open(restored.library()).check());
  }

  @Test
  void aDamagedLibraryIsKeptAsItIs() throws IOException {
    Fixture.write(shelf.resolve("library.json"), "{\"format\"");
    Fixture.write(shelf.resolve("works/broken.json"), "\0\0\0");
    Backup.write(library, zip, false);
    Restore.to(dir.resolve("again"), zip);
    assertEquals("{\"format\"", content(dir.resolve("again/library")).get("library.json"));
    assertEquals("\0\0\0", content(dir.resolve("again/library")).get("works/broken.json"));
  }

  @Test
  void neverReplacesAFileUnlessAsked() throws IOException {
    Files.writeString(zip, "precious");
    String said =
        assertThrows(LibraryException.class, () -> Backup.write(library, zip, false)).getMessage();
    assertTrue(said.contains("--replace"), said);
    assertEquals("precious", Files.readString(zip));
    Backup.write(library, zip, true);
    Restore.to(dir.resolve("again"), zip);
    assertEquals(List.of("again", "backup.zip", "shelf"), names(dir));
  }

  @Test
  void isNotMadeInsideTheLibrary() {
    Path inside = shelf.resolve("works/b.zip");
    String said =
        assertThrows(LibraryException.class, () -> Backup.write(library, inside, false))
            .getMessage();
    assertTrue(said.contains("inside the library"), said);
  }

  @Test
  void waitsForWhoeverWrites() throws Exception {
    LibraryFolder impatient =
        LibraryFolder.open(shelf, java.time.Duration.ofMillis(1), java.time.Clock.systemUTC());
    try (LibraryLock lock = library.lock()) {
      Thread other =
          new Thread(
              () ->
                  assertThrows(LibraryException.class, () -> Backup.write(impatient, zip, false)));
      other.start();
      other.join();
    }
    assertFalse(Files.exists(zip));
    assertEquals(List.of("shelf"), names(dir));
  }

  @Test
  void doesNotFollowLinksOutOfTheLibrary() throws IOException {
    Path secret = Files.writeString(dir.resolve("secret.txt"), "secret");
    Files.createSymbolicLink(shelf.resolve("pictures/link.jpg"), secret);
    Files.createSymbolicLink(shelf.resolve("pictures/all"), dir);
    Backup.Written written = Backup.write(library, zip, false);
    assertEquals(List.of("pictures/all", "pictures/link.jpg"), written.leftOut());
    Restore.to(dir.resolve("again"), zip);
    assertFalse(content(dir.resolve("again")).containsValue("secret"));
  }

  @Test
  void leavesOutALinkOutOfTheLibraryThatIsCalledLikeAFileOfIt() throws IOException {
    Path secret = Files.writeString(dir.resolve("secret.txt"), "secret");
    Files.createSymbolicLink(shelf.resolve("works/link.json"), secret);
    Files.move(shelf.resolve("mine.json"), shelf.resolve("works/mine.txt"));
    Files.createSymbolicLink(shelf.resolve("mine.json"), shelf.resolve("works/mine.txt"));
    Backup.Written written = Backup.write(library, zip, false);
    assertEquals(List.of("works/link.json"), written.leftOut());
    Restore.to(dir.resolve("again"), zip);
    assertFalse(content(dir.resolve("again")).containsValue("secret"));
    assertTrue(Files.exists(dir.resolve("again/library/mine.json")));
  }

  @Test
  void ofADiskThatIsFullSaysThatTheZipFails() {
    FaultyDisk disk = new FaultyDisk(dir);
    Path there = disk.on(dir).resolve("full.zip");
    disk.fail(-1);
    Backup.write(library, there, false);
    int write =
        disk.done()
            .indexOf(disk.done().stream().filter(d -> d.startsWith("write")).findFirst().get());
    disk.fail(write);
    String said =
        assertThrows(LibraryException.class, () -> Backup.write(library, there, true)).getMessage();
    assertTrue(said.startsWith(there + ": the zip could not be written: No space left"), said);
  }

  @Nested
  class IsRefusedWhere {
    private byte[] whole;

    @BeforeEach
    void aBackup() throws IOException {
      Backup.write(library, zip, false);
      whole = Files.readAllBytes(zip);
    }

    @Test
    void itIsCutShort() throws IOException {
      for (int length = 0; length < whole.length; length += 1 + whole.length / 40) {
        refused(Arrays.copyOf(whole, length));
      }
      String said = refused(Arrays.copyOf(whole, whole.length - 1));
      assertTrue(said.contains("bad.zip: this backup cannot be used: it is no zip"), said);
    }

    /** A byte that no content depends on, such as an entry's time, may be any. */
    @Test
    void aByteOfItIsAnother() throws IOException {
      Map<String, String> sound = content(shelf);
      sound.remove(".lock");
      Random random = new Random(7);
      int refusals = 0;
      for (int i = 0; i < 150; i++) {
        byte[] bytes = whole.clone();
        int at = random.nextInt(bytes.length);
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        Path bad = dir.resolve("bad.zip");
        Files.write(bad, bytes);
        Path again = dir.resolve("again" + i);
        try {
          Restore.to(again, bad);
          assertEquals(sound, content(again.resolve("library")), "byte " + at);
        } catch (LibraryException e) {
          assertTrue(e.getMessage().contains("this backup cannot be used"), e.getMessage());
          assertFalse(Files.exists(again), "byte " + at);
          refusals++;
        }
      }
      assertTrue(refusals > 75, "only " + refusals);
    }

    @Test
    void theFolderHasSomethingInIt() throws IOException {
      Path again = Files.createDirectory(dir.resolve("again"));
      Fixture.write(again.resolve("x"), "x");
      assertTrue(refusal(zip, again).contains("not empty"));
      assertEquals(List.of("x"), names(again));
      assertTrue(refusal(zip, again.resolve("x")).contains("this is no folder"));
      assertTrue(refusal(dir.resolve("none.zip"), dir.resolve("b")).contains("no such file"));
      Files.delete(again.resolve("x"));
      Fixture.write(again.resolve(".restoring-1/works/half.json"), "{");
      Restore.to(again, zip);
      assertEquals(List.of("library"), names(again));
    }
  }

  @Nested
  class IsRefusedThough {
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    @BeforeEach
    void wellFormed() {
      put("library/library.json", "{}");
    }

    private void put(String name, String text) {
      files.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private String manifest() {
      StringBuilder out = new StringBuilder();
      files.forEach((name, bytes) -> out.append(Hash.of(bytes) + "  " + name + "\n"));
      return out + "# files: " + files.size() + "\n";
    }

    private byte[] zipped(String manifest) throws IOException {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (ZipOutputStream zipped = new ZipOutputStream(out)) {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
          zipped.putNextEntry(new ZipEntry(file.getKey()));
          zipped.write(file.getValue());
        }
        if (manifest != null) {
          zipped.putNextEntry(new ZipEntry("manifest-sha256.txt"));
          zipped.write(manifest.getBytes(StandardCharsets.UTF_8));
        }
      }
      return out.toByteArray();
    }

    @Test
    void asLongAsNothingIsWrongItIsTaken() throws IOException {
      Files.write(dir.resolve("good.zip"), zipped(manifest()));
      assertEquals(1, Restore.to(dir.resolve("good"), dir.resolve("good.zip")).files());
    }

    @Test
    void itsSumsAreRightANameLeadsOut() throws IOException {
      for (String name :
          List.of(
              "library/../../slip.json",
              "../slip.json",
              "/tmp/slip.json",
              "library/works/../../slip.json",
              "library\\..\\slip.json",
              "library/..\\..\\slip.json",
              "library/C:/slip.json",
              "library//slip.json",
              "library/./slip.json",
              "elsewhere/slip.json",
              "library/a\u0000b")) {
        files.clear();
        put("library/library.json", "{}");
        put(name, "{}");
        String said = refused(zipped(manifest()));
        assertTrue(said.contains("this backup cannot be used"), name + ": " + said);
        assertFalse(said.contains("no zip"), name + ": " + said);
      }
      assertTrue(refused(zipped(manifest())).contains("leads out of the library"));
    }

    @Test
    void theListIsMissingOrDamagedOrOfOtherFiles() throws IOException {
      assertTrue(refused(zipped(null)).contains("is missing"));
      assertTrue(refused(zipped("")).contains("cut short"));
      assertTrue(refused(zipped(manifest().substring(0, 30) + "\n")).contains("is damaged"));
      assertTrue(refused(zipped(manifest().replace("files: 1", "files: 2"))).contains("damaged"));
      String right = manifest();
      put("library/extra.json", "{}");
      assertTrue(refused(zipped(right)).contains("is not in the list"));
      String more = manifest();
      files.remove("library/extra.json");
      assertTrue(refused(zipped(more)).contains("1 of the files in its list are missing"));
      String other = Hash.of(new byte[0]) + manifest().substring(64);
      assertTrue(refused(zipped(other)).contains("\"library/library.json\" in it is damaged"));
      files.clear();
      put("library/mine.json", "{}");
      assertTrue(refused(zipped(manifest())).contains("it holds no library"));
    }

    @Test
    void itsSumsAreRightANameStandsTwice() throws IOException {
      put("library/works/a.json", "{}");
      put("library/works/b.json", "{}");
      byte[] bytes = zipped(manifest());
      rename(bytes, "library/works/b.json", "library/works/a.json");
      assertTrue(refused(bytes).contains("twice"), refused(bytes));
    }

    @Test
    void aLinkIsInIt() throws IOException {
      put("library/works/a.json", "/etc/passwd");
      byte[] bytes = zipped(manifest());
      ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
      for (int at = 0; at < bytes.length - 46; at++) {
        if (buffer.getInt(at) == 0x02014b50
            && new String(bytes, at + 46, 20, StandardCharsets.UTF_8)
                .equals("library/works/a.json")) {
          bytes[at + 5] = 3; // made on Unix
          buffer.putInt(at + 38, 0120777 << 16); // S_IFLNK
        }
      }
      assertTrue(refused(bytes).contains("symbolic link"), refused(bytes));
    }

    @Test
    void itUnfoldsBeyondAllMeasure() throws IOException {
      files.put("library/pictures/bomb.jpg", new byte[100 << 20]);
      byte[] bytes = zipped(manifest());
      assertTrue(bytes.length < 1 << 20);
      assertTrue(refused(bytes).contains("it would unfold to 100 MB"), refused(bytes));
    }

    /** In the names of entries, of which each stands before its data and in the list at the end. */
    private static void rename(byte[] bytes, String from, String to) {
      byte[] old = from.getBytes(StandardCharsets.UTF_8);
      ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
      for (int at = 0; at < bytes.length - 46; at++) {
        int name = buffer.getInt(at) == 0x04034b50 ? 30 : buffer.getInt(at) == 0x02014b50 ? 46 : 0;
        if (name > 0
            && at + name + old.length < bytes.length
            && Arrays.equals(Arrays.copyOfRange(bytes, at + name, at + name + old.length), old)) {
          System.arraycopy(to.getBytes(StandardCharsets.UTF_8), 0, bytes, at + name, old.length);
        }
      }
    }
  }
}
