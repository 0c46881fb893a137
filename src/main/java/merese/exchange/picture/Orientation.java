package merese.exchange.picture;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.imaging.tiff.TiffMetadataReader;
import com.drew.imaging.tiff.TiffProcessingException;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;

/**
 * How a camera was held, as Exif's tag Orientation (0x0112) says it by where the first row and
 * column of the picture belong.
 *
 * @param code from 1, upright, to 8
 */
record Orientation(int code) {
  private static final Orientation UPRIGHT = new Orientation(1);
  private static final int PNG_HEAD = 8;

  /** Upright where nothing, or nothing that can be read, is said. */
  static Orientation of(byte[] file) {
    Metadata metadata = new Metadata();
    try {
      if (file.length > 2 && (file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == 0xD8) {
        metadata =
            JpegMetadataReader.readMetadata(
                new ByteArrayInputStream(file), List.of(new ExifReader()));
      } else if (file.length > 4 && (isTiff(file, 'I') || isTiff(file, 'M'))) {
        metadata = TiffMetadataReader.readMetadata(new ByteArrayInputStream(file));
      } else {
        readChunk(file, metadata);
      }
    } catch (JpegProcessingException | TiffProcessingException | IOException e) {
      return UPRIGHT;
    }
    for (ExifIFD0Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
      Integer code = directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
      if (code != null && code >= 1 && code <= 8) {
        return new Orientation(code);
      }
    }
    return UPRIGHT;
  }

  private static boolean isTiff(byte[] file, char order) {
    return file[0] == order && file[1] == order;
  }

  /** A PNG's chunk eXIf; no other is opened, since what is compressed there may have any size. */
  private static void readChunk(byte[] file, Metadata into) {
    int at = PNG_HEAD;
    while (file.length > PNG_HEAD && (file[0] & 0xFF) == 0x89 && at + 8 <= file.length) {
      ByteArrayReader reader = new ByteArrayReader(file);
      try {
        long length = reader.getUInt32(at);
        boolean isExif = reader.getInt32(at + 4) == 0x65584966;
        if (length > file.length - at - 8L) {
          return;
        }
        if (isExif) {
          byte[] exif = reader.getBytes(at + 8, (int) length);
          new ExifReader().extract(new ByteArrayReader(exif), into);
          return;
        }
        at += (int) length + 12;
      } catch (IOException e) {
        return;
      }
    }
  }

  private boolean swapsSides() {
    return code >= 5;
  }

  /** The picture upright, with eight bits a channel in the colours of a screen. */
  BufferedImage apply(BufferedImage image) {
    int width = swapsSides() ? image.getHeight() : image.getWidth();
    int height = swapsSides() ? image.getWidth() : image.getHeight();
    boolean clear = image.getColorModel().hasAlpha();
    BufferedImage upright =
        new BufferedImage(
            width, height, clear ? BufferedImage.TYPE_4BYTE_ABGR : BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D drawing = upright.createGraphics();
    try {
      drawing.drawImage(image, transform(image.getWidth(), image.getHeight()), null);
    } finally {
      drawing.dispose();
    }
    return upright;
  }

  /** Where each point of the stored picture belongs: Exif 2.32, 4.6.4 A, "Orientation". */
  private AffineTransform transform(int w, int h) {
    return switch (code) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
      default -> new AffineTransform();
    };
  }
}
