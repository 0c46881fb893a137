package merese.search;

import java.io.IOException;
import java.util.Arrays;
import java.util.function.Function;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;

/**
 * The files that pages are in, and where these stand among all: kept for as long as a commit is
 * open, since a word that is common stands in most of them.
 */
final class PageFiles {
  /** By segment and number of the file in it; null where nobody asked. */
  private final PageFile[][] known;

  PageFiles(int segments) {
    known = new PageFile[segments][];
  }

  /**
   * A file with pages; the order is that in which its pages are shown among others.
   *
   * @param standing that of its source
   */
  record PageFile(byte[] standing, String path) implements Comparable<PageFile> {
    @Override
    public int compareTo(PageFile other) {
      int standings = Arrays.compareUnsigned(standing, other.standing);
      return standings != 0 ? standings : path.compareTo(other.path);
    }
  }

  /** Tells of the pages of one segment, one after another, in which file they are. */
  final class InSegment {
    private final LeafReaderContext segment;
    private final SortedDocValues files;
    private final Finder finder;
    private final Function<String, byte[]> standing;
    private final PageFile[] ofSegment;

    private InSegment(LeafReaderContext segment, Finder finder, Function<String, byte[]> standing)
        throws IOException {
      this.segment = segment;
      this.finder = finder;
      this.standing = standing;
      files = DocValues.getSorted(segment.reader(), Fields.PAGE_FILE);
      if (known[segment.ord] == null) {
        known[segment.ord] = new PageFile[files.getValueCount()];
      }
      ofSegment = known[segment.ord];
    }

    PageFile of(int document) throws IOException {
      files.advanceExact(document);
      int number = files.ordValue();
      PageFile file = ofSegment[number];
      if (file == null) {
        StoredValue value = finder.value(segment.docBase + document);
        file = new PageFile(standing.apply(value.edition()), value.file());
        ofSegment[number] = file;
      }
      return file;
    }
  }

  /**
   * @param standing where a source stands among all, by its edition's key
   */
  InSegment in(LeafReaderContext segment, Finder finder, Function<String, byte[]> standing)
      throws IOException {
    return new InSegment(segment, finder, standing);
  }
}
