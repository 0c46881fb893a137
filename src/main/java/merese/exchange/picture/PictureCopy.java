package merese.exchange.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import merese.exchange.UnreadableException;

/**
 * A picture to keep: encoded anew, so that it stands upright without a word about turning it and
 * holds no place, time, camera, thumbnail or any other metadata. Photographs become JPEG, what was
 * kept without loss becomes PNG; of several pictures in a file it is the first.
 *
 * @param bytes the whole file
 * @param ending of its name: "jpg" or "png"
 * @param width in pixels, upright
 * @param height in pixels, upright
 */
public record PictureCopy(byte[] bytes, String ending, int width, int height) {
  /** A file that is larger is no photograph from a camera or a telephone. */
  static final long MOST_BYTES = 64L << 20;

  /** In memory a picture takes four bytes a pixel, twice while it is turned. */
  static final long MOST_PIXELS = 60_000_000;

  private static final float QUALITY = 0.92f;

  /**
   * Reads a file.
   *
   * @throws UnreadableException where it is no picture that can be read, saying what to do
   */
  public static PictureCopy of(Path file) {
    return of(read(file), file.toString());
  }

  private static byte[] read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw new UnreadableException(
            file.toString(), "this is a folder", "name one picture that is in it");
      }
      long size = Files.size(file);
      if (size > MOST_BYTES) {
        throw new UnreadableException(
            file.toString(),
            "the file is " + (size >> 20) + " MB large",
            "a picture may have " + (MOST_BYTES >> 20) + " MB; export it smaller, as JPEG");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new UnreadableException(file.toString(), "there is no such file", "look at its name");
    } catch (IOException e) {
      throw unreadable(file.toString(), "cannot be read", "look at its permissions", e);
    }
  }

  /**
   * The same of a file that is in memory.
   *
   * @param name what the file is called, for messages
   */
  public static PictureCopy of(byte[] original, String name) {
    if (original.length == 0) {
      throw new UnreadableException(name, "the file is empty", "copy it from the camera again");
    }
    String foreign = foreign(original);
    if (foreign != null) {
      throw new UnreadableException(
          name,
          "this is a picture of the kind " + foreign + ", which cannot be read here",
          "export it as JPEG with the program that shows it, and give that file");
    }
    boolean isPhotograph = original.length > 2 && (original[0] & 0xFF) == 0xFF;
    BufferedImage upright = Orientation.of(original).apply(decoded(original, name));
    String ending = isPhotograph ? "jpg" : "png";
    byte[] bytes = encoded(upright, ending, name);
    if (bytes.length > MOST_BYTES) {
      throw new UnreadableException(
          name,
          "without loss it takes " + (bytes.length >> 20) + " MB",
          "a picture may have " + (MOST_BYTES >> 20) + " MB; export it as JPEG");
    }
    return new PictureCopy(bytes, ending, upright.getWidth(), upright.getHeight());
  }

  /** What telephones and the web have beside the kinds that Java reads; null for none of them. */
  private static String foreign(byte[] file) {
    if (file.length > 12 && ascii(file, 4, "ftyp")) {
      String brand = new String(file, 8, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
      return brand.toLowerCase(Locale.ROOT).startsWith("avi") ? "AVIF" : "HEIC";
    }
    return file.length > 12 && ascii(file, 0, "RIFF") && ascii(file, 8, "WEBP") ? "WebP" : null;
  }

  private static boolean ascii(byte[] file, int at, String word) {
    for (int i = 0; i < word.length(); i++) {
      if (file[at + i] != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private static BufferedImage decoded(byte[] file, String name) {
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new UnreadableException(
            name,
            "this is no picture that can be read",
            "JPEG, PNG, TIFF, BMP and GIF can; export it as JPEG");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
          throw new UnreadableException(
              name,
              "it says that it is "
                  + reader.getWidth(0)
                  + " by "
                  + reader.getHeight(0)
                  + " pixels, and "
                  + MOST_PIXELS / 1_000_000
                  + " million can be taken in",
              "export it smaller, as JPEG");
        }
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        BufferedImage image = reader.read(0);
        if (warnings.stream().anyMatch(PictureCopy::isOfABreak)) {
          throw new UnreadableException(
              name, "the picture breaks off", "copy it from the camera again");
        }
        return image;
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      if (e instanceof UnreadableException known) {
        throw known;
      }
      // readers answer damaged bytes with any exception there is
      throw unreadable(
          name, "the picture is damaged, or of a rare kind", "export it anew, as JPEG", e);
    }
  }

  /** Where a JPEG breaks off, its reader makes the rest grey and only warns. */
  private static boolean isOfABreak(String warning) {
    return warning.contains("Missing EOI") || warning.contains("premature end");
  }

  private static byte[] encoded(BufferedImage image, String ending, String name) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(ending).next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      if (ending.equals("jpg")) {
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(QUALITY);
      }
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException e) {
      throw unreadable(name, "the picture cannot be written anew", "export it as JPEG", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static UnreadableException unreadable(
      String name, String what, String remedy, Exception cause) {
    UnreadableException e = new UnreadableException(name, what, remedy);
    e.initCause(cause);
    return e;
  }
}
