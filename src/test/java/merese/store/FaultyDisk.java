package merese.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.CopyOption;
import java.nio.file.FileSystemException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A disk on which one operation fails: a write, a force to the disk, a rename, a deletion, or the
 * making of a file or folder.
 */
final class FaultyDisk extends FilterDisk {
  private final List<String> done = new ArrayList<>();
  private int failing = -1;

  FaultyDisk(Path below) {
    super(below.getFileSystem());
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
    boolean fails = done.size() == failing;
    done.add(what + " " + path.getFileName());
    if (fails) {
      throw new FileSystemException(path.toString(), null, "No space left on device");
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
    return new Faulty(super.newFileChannel(path, options, attributes), path);
  }

  /** A channel is opened for what {@link java.nio.file.Files} writes at once as well. */
  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (writes(options)) {
      return newFileChannel(path, options, attributes);
    }
    return super.newByteChannel(path, options, attributes);
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
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    before("make", folder);
    super.createDirectory(folder, attributes);
  }

  private final class Faulty extends FileChannel {
    private final FileChannel below;
    private final Path path;

    Faulty(FileChannel below, Path path) {
      this.below = below;
      this.path = path;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
      before("write", path);
      return below.write(bytes);
    }

    @Override
    public long write(ByteBuffer[] bytes, int offset, int length) throws IOException {
      before("write", path);
      return below.write(bytes, offset, length);
    }

    @Override
    public int write(ByteBuffer bytes, long position) throws IOException {
      before("write", path);
      return below.write(bytes, position);
    }

    @Override
    public void force(boolean metaData) throws IOException {
      before("force", path);
      below.force(metaData);
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
      return below.read(bytes);
    }

    @Override
    public long read(ByteBuffer[] bytes, int offset, int length) throws IOException {
      return below.read(bytes, offset, length);
    }

    @Override
    public int read(ByteBuffer bytes, long position) throws IOException {
      return below.read(bytes, position);
    }

    @Override
    public long position() throws IOException {
      return below.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
      below.position(position);
      return this;
    }

    @Override
    public long size() throws IOException {
      return below.size();
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      below.truncate(size);
      return this;
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target)
        throws IOException {
      return below.transferTo(position, count, target);
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count)
        throws IOException {
      return below.transferFrom(source, position, count);
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
      return below.map(mode, position, size);
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
      return below.lock(position, size, shared);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
      return below.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
      below.close();
    }
  }
}
