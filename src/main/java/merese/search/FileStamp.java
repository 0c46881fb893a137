package merese.search;

/**
 * What a file looked like when it was indexed.
 *
 * @param path below the library, with slashes
 * @param size in bytes
 * @param modified nanoseconds since 1970
 * @param hash of its bytes
 * @param settled false where the file was so fresh when read that a later change could bear the
 *     same time; its bytes are then compared as well
 */
public record FileStamp(String path, long size, long modified, String hash, boolean settled) {
  public boolean sameAs(long otherSize, long otherModified) {
    return size == otherSize && modified == otherModified;
  }

  /** The same, for a file that has since been found unchanged at a later time. */
  public FileStamp asSettled() {
    return new FileStamp(path, size, modified, hash, true);
  }
}
