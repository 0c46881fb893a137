package merese.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Reads a backup that may come from anybody, and takes nothing in it for granted. */
final class BackupReader {
  /** One file has no more bytes than this; the largest picture is far below. */
  static final long LARGEST = 1L << 30;

  /**
   * All files together, for each byte of the zip: text shrinks to a tenth, rarely to a fiftieth.
   */
  static final long MOST_FOLD = 200;

  /** Below this a zip may unfold as it likes. */
  static final long SMALL = 64L << 20;

  private final Path file;
  private final ZipFile zip;
  private final BackupManifest manifest;

  private BackupReader(Path file, ZipFile zip, BackupManifest manifest) {
    this.file = file;
    this.zip = zip;
    this.manifest = manifest;
  }

  /** What becomes of a file of the backup. */
  interface Target {
    OutputStream open(String relative, ZipEntry entry) throws IOException;
  }

  /** How much was read. */
  record Total(int files, long bytes) {}

  /** Reads all of a backup that was just written. */
  static void verify(Path file, BackupManifest written) {
    read(file, written, (relative, entry) -> OutputStream.nullOutputStream());
  }

  /**
   * Hands over each file, below the library folder, after its name was made sure of; its sum is
   * compared when it has been read.
   *
   * @param expected the list that the backup must have; null where that is not known
   * @throws LibraryException where the backup is not whole, or not one
   */
  static Total read(Path file, BackupManifest expected, Target target) {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      if (ZipDirectory.hasLinks(file)) {
        throw refused(file, "there is a symbolic link in it");
      }
      BackupManifest manifest = manifest(file, zip);
      if (expected != null && !java.util.Arrays.equals(expected.bytes(), manifest.bytes())) {
        throw refused(file, "what was written reads differently");
      }
      return new BackupReader(file, zip, manifest).read(target);
    } catch (java.io.FileNotFoundException | java.nio.file.NoSuchFileException e) {
      throw new LibraryException(file, "there is no such file", "");
    } catch (IOException | IllegalArgumentException e) {
      LibraryException refusal = refused(file, "it is no zip, or damaged" + reason(e));
      refusal.initCause(e);
      throw refusal;
    }
  }

  private static String reason(Exception e) {
    return e.getMessage() == null ? "" : " (" + Quote.cut(e.getMessage()) + ")";
  }

  private static LibraryException refused(Path file, String what) {
    return new LibraryException(
        file, "this backup cannot be used: " + what, "take another backup; nothing was written");
  }

  private static BackupManifest manifest(Path file, ZipFile zip) throws IOException {
    ZipEntry entry = zip.getEntry(BackupManifest.NAME);
    if (entry == null || entry.isDirectory()) {
      throw refused(file, "the list of its files, " + BackupManifest.NAME + ", is missing");
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (InputStream in = zip.getInputStream(entry)) {
      BackupManifest.copy(in, out, Math.min(entry.getSize(), BackupManifest.LARGEST));
    }
    try {
      return BackupManifest.of(out.toByteArray());
    } catch (IllegalArgumentException e) {
      throw refused(file, "the list of its files is damaged: " + e.getMessage());
    }
  }

  private Total read(Target target) throws IOException {
    List<ZipEntry> entries = new ArrayList<>(Collections.list(zip.entries()));
    requireNames(entries);
    requireSizes(entries);
    long bytes = 0;
    int files = 0;
    for (ZipEntry entry : entries) {
      if (!entry.getName().equals(BackupManifest.NAME)) {
        bytes += read(entry, target);
        files++;
      }
    }
    return new Total(files, bytes);
  }

  /** Before anything is written: each name once, in the list, and inside the library. */
  private void requireNames(List<ZipEntry> entries) {
    Set<String> names = new HashSet<>();
    for (ZipEntry entry : entries) {
      String name = entry.getName();
      if (!names.add(name)) {
        throw refused(file, Quote.of(name) + " is in it twice");
      }
      if (!name.equals(BackupManifest.NAME)) {
        if (!isInside(name)) {
          throw refused(file, "the name " + Quote.of(name) + " leads out of the library");
        }
        if (manifest.sum(name) == null) {
          throw refused(file, Quote.of(name) + " is not in the list of its files");
        }
      }
    }
    if (names.size() - 1 != manifest.size()) {
      throw refused(
          file, (manifest.size() - names.size() + 1) + " of the files in its list are missing");
    }
    if (!names.contains(BackupManifest.TOP + FolderScan.SETTINGS)) {
      throw refused(file, "it holds no library");
    }
  }

  private static boolean isInside(String name) {
    if (!name.startsWith(BackupManifest.TOP)) {
      return false;
    }
    for (String part : name.split("/", -1)) {
      if (part.isBlank() || part.equals(".") || part.equals("..") || part.indexOf('\\') >= 0) {
        return false;
      }
      if (part.length() == 2 && part.charAt(1) == ':') {
        return false;
      }
      for (int i = 0; i < part.length(); i++) {
        if (Character.isISOControl(part.charAt(i))) {
          return false;
        }
      }
    }
    return true;
  }

  private void requireSizes(List<ZipEntry> entries) {
    long all = 0;
    for (ZipEntry entry : entries) {
      if (entry.getSize() < 0 || entry.getSize() > LARGEST) {
        throw refused(file, Quote.of(entry.getName()) + " in it is absurdly large");
      }
      all += entry.getSize();
    }
    if (all > SMALL && all / MOST_FOLD > file.toFile().length()) {
      throw refused(
          file, "it would unfold to " + (all >> 20) + " MB, far more than a library of its size");
    }
  }

  private long read(ZipEntry entry, Target target) throws IOException {
    String name = entry.getName();
    String relative = name.substring(BackupManifest.TOP.length());
    try (InputStream in = zip.getInputStream(entry);
        OutputStream out = target.open(relative, entry)) {
      BackupManifest.Copied copied = BackupManifest.copy(in, out, entry.getSize());
      if (!copied.sum().equals(manifest.sum(name))) {
        throw refused(file, Quote.of(name) + " in it is damaged");
      }
      return copied.bytes();
    }
  }
}
