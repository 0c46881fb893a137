package merese.store;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A file system that does what the one below it does; a test makes one operation different. */
class FilterDisk extends FileSystemProvider {
  private final FileSystem below;
  private final FileSystem system = new Filtered();

  FilterDisk(FileSystem below) {
    this.below = below;
  }

  /** A path on this file system. */
  private interface Wrapped extends Path {
    Path inner();
  }

  /** A path of the one below, on this one. */
  final Path on(Path path) {
    return (Path)
        Proxy.newProxyInstance(
            FilterDisk.class.getClassLoader(),
            new Class<?>[] {Wrapped.class},
            (proxy, method, arguments) -> {
              if (method.getName().equals("inner")) {
                return path;
              } else if (method.getName().equals("getFileSystem")) {
                return system;
              }
              Object[] plain = arguments == null ? new Object[0] : arguments.clone();
              for (int i = 0; i < plain.length; i++) {
                plain[i] = plain[i] instanceof Path p ? inner(p) : plain[i];
              }
              try {
                Object result = method.invoke(path, plain);
                return result instanceof Path p ? on(p) : result;
              } catch (InvocationTargetException e) {
                throw e.getCause();
              }
            });
  }

  private static Path inner(Path path) {
    return path instanceof Wrapped wrapped ? wrapped.inner() : path;
  }

  private final class Filtered extends FileSystem {
    @Override
    public FileSystemProvider provider() {
      return FilterDisk.this;
    }

    @Override
    public void close() {}

    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public boolean isReadOnly() {
      return false;
    }

    @Override
    public String getSeparator() {
      return below.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
      return below.getRootDirectories();
    }

    @Override
    public Iterable<FileStore> getFileStores() {
      return below.getFileStores();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
      return below.supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
      return on(below.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
      PathMatcher matcher = below.getPathMatcher(pattern);
      return path -> matcher.matches(inner(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
      return below.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() throws IOException {
      return below.newWatchService();
    }
  }

  @Override
  public String getScheme() {
    return "filtered";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> settings) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return system;
  }

  @Override
  public Path getPath(URI uri) {
    throw new UnsupportedOperationException();
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return below.provider().newByteChannel(inner(path), options, attributes);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return below.provider().newFileChannel(inner(path), options, attributes);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    List<Path> paths = new ArrayList<>();
    try (DirectoryStream<Path> stream =
        below.provider().newDirectoryStream(inner(folder), path -> true)) {
      for (Path path : stream) {
        if (filter.accept(on(path))) {
          paths.add(on(path));
        }
      }
    }
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        return paths.iterator();
      }

      @Override
      public void close() {}
    };
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    below.provider().createDirectory(inner(folder), attributes);
  }

  @Override
  public void delete(Path path) throws IOException {
    below.provider().delete(inner(path));
  }

  @Override
  public void copy(Path source, Path target, CopyOption... options) throws IOException {
    below.provider().copy(inner(source), inner(target), options);
  }

  @Override
  public void move(Path source, Path target, CopyOption... options) throws IOException {
    below.provider().move(inner(source), inner(target), options);
  }

  @Override
  public boolean isSameFile(Path one, Path other) throws IOException {
    return below.provider().isSameFile(inner(one), inner(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return below.provider().isHidden(inner(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return below.provider().getFileStore(inner(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    below.provider().checkAccess(inner(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return below.provider().getFileAttributeView(inner(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return below.provider().readAttributes(inner(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
      throws IOException {
    return below.provider().readAttributes(inner(path), names, options);
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options)
      throws IOException {
    below.provider().setAttribute(inner(path), name, value, options);
  }
}
