package merese.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Looks through the list at the end of a zip for symbolic links, which Java does not tell of. The
 * numbers are those of PKWARE's APPNOTE 6.3 (4.3.12, 4.3.14 to 4.3.16, 4.4.2), from memory.
 */
final class ZipDirectory {
  private static final int END = 0x06054b50;
  private static final int END_SIZE = 22;
  private static final int LONG_LOCATOR = 0x07064b50;
  private static final int LONG_LOCATOR_SIZE = 20;
  private static final int ENTRY = 0x02014b50;
  private static final int ENTRY_SIZE = 46;
  private static final int UNIX = 3;
  private static final int KIND = 0xF000;
  private static final int LINK = 0xA000;

  private ZipDirectory() {}

  /** Whether an entry is a symbolic link; it is known already that the zip can be opened. */
  static boolean hasLinks(Path zip) throws IOException {
    try (FileChannel channel = FileChannel.open(zip, StandardOpenOption.READ)) {
      int tail = (int) Math.min(channel.size(), END_SIZE + 0xFFFF + LONG_LOCATOR_SIZE);
      ByteBuffer last = read(channel, channel.size() - tail, tail);
      int end = tail - END_SIZE;
      while (end >= 0 && last.getInt(end) != END) {
        end--;
      }
      if (end < 0) {
        throw new IOException("its list of files is missing");
      }
      long at = last.getInt(end + 16) & 0xFFFFFFFFL;
      long size = last.getInt(end + 12) & 0xFFFFFFFFL;
      int locator = end - LONG_LOCATOR_SIZE;
      if (locator >= 0 && last.getInt(locator) == LONG_LOCATOR) {
        ByteBuffer large = read(channel, last.getLong(locator + 8), 56);
        size = large.getLong(40);
        at = large.getLong(48);
      }
      return hasLinks(channel, at, at + size);
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      throw new IOException("its list of files is damaged", e);
    }
  }

  private static boolean hasLinks(FileChannel channel, long from, long end) throws IOException {
    long at = from;
    while (at < end) {
      ByteBuffer entry = read(channel, at, ENTRY_SIZE);
      if (entry.getInt(0) != ENTRY) {
        throw new IOException("its list of files is damaged");
      }
      if (entry.get(5) == UNIX && ((entry.getInt(38) >>> 16) & KIND) == LINK) {
        return true;
      }
      at += ENTRY_SIZE + unsigned(entry, 28) + unsigned(entry, 30) + unsigned(entry, 32);
    }
    return false;
  }

  private static int unsigned(ByteBuffer buffer, int at) {
    return buffer.getShort(at) & 0xFFFF;
  }

  private static ByteBuffer read(FileChannel channel, long at, int size) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    while (buffer.hasRemaining()) {
      if (channel.read(buffer, at + buffer.position()) < 0) {
        throw new IOException("it is cut short");
      }
    }
    return buffer;
  }
}
