package merese.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.CopyOption;
import java.nio.file.FileSystemException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.lucene.tests.mockfile.FilterFileChannel;
import org.apache.lucene.tests.mockfile.FilterFileSystemProvider;

/**
 * A file system that is another's but for one operation that fails: a write, a force to the disk, a
 * rename, a deletion or the making of a file or folder. Built on Lucene's file systems for tests.
 */
final class FaultyDisk extends FilterFileSystemProvider {
  private final List<String> done = new ArrayList<>();
  private int failing = -1;

  FaultyDisk(Path below) {
    super("faulty://", below.getFileSystem());
  }

  /** A path of the default file system on this one. */
  Path on(Path path) {
    return wrapPath(path.toAbsolutePath());
  }

  /** From now on, the operation of a number fails, counted from 0; none where it is below 0. */
  void fail(int number) {
    done.clear();
    failing = number;
  }

  /** What was done since, in order. */
  List<String> done() {
    return done;
  }

  private void before(String what, Path path) throws IOException {
    String name = path == null ? what : what + " " + path.getFileName();
    boolean fails = done.size() == failing;
    done.add(name);
    if (fails) {
      throw new FileSystemException(String.valueOf(path), null, "No space left on device");
    }
  }

  private static boolean writes(Set<? extends OpenOption> options) {
    return options.contains(StandardOpenOption.WRITE)
        || options.contains(StandardOpenOption.APPEND);
  }

  /** The lock's file is left alone: failing there is failing before anything began. */
  private static boolean counts(Path path) {
    return !path.getFileName().toString().equals(LibraryLock.FILE);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (!counts(path)) {
      return super.newFileChannel(path, options, attributes);
    }
    if (writes(options)) {
      before("open", path);
    }
    return new FilterFileChannel(super.newFileChannel(path, options, attributes)) {
      @Override
      public int write(ByteBuffer bytes) throws IOException {
        before("write", path);
        return super.write(bytes);
      }

      @Override
      public void force(boolean metaData) throws IOException {
        before("force", path);
        super.force(metaData);
      }
    };
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (writes(options)) {
      before("open", path);
    }
    return super.newByteChannel(path, options, attributes);
  }

  @Override
  public OutputStream newOutputStream(Path path, OpenOption... options) throws IOException {
    before("write", path);
    return super.newOutputStream(path, options);
  }

  @Override
  public void move(Path source, Path target, CopyOption... options) throws IOException {
    before("rename to", target);
    super.move(source, target, options);
  }

  @Override
  public void delete(Path path) throws IOException {
    before("delete", path);
    super.delete(path);
  }

  @Override
  public boolean deleteIfExists(Path path) throws IOException {
    before("delete", path);
    return super.deleteIfExists(path);
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    before("make", folder);
    super.createDirectory(folder, attributes);
  }
}
