package merese.exchange.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import merese.exchange.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pictures made here, with Exif as its standard (CIPA DC-008, Exif 2.32) lays it out: the segment
 * APP1 of a JPEG (4.7.2), a TIFF header with big-endian fields, the tag Orientation 0x0112, and a
 * directory of GPS at the tag 0x8825. The layout is from memory.
 */
class PictureCopyTest {
  private static final int RED = 0xFF0000;
  private static final int GREEN = 0x00FF00;
  private static final int BLUE = 0x0000FF;
  private static final int WHITE = 0xFFFFFF;

  @TempDir private Path folder;

  /**
   * The corners of the picture as it should be seen are red, green, blue and white, read from the
   * top left. The stored ones are those that a camera held so would have stored: Exif 2.32, 4.6.4
   * A.
   */
  @ParameterizedTest
  @CsvSource({
    "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, GWRB", "7, WGBR", "8, BRWG"
  })
  void everyPictureIsTurnedUpright(int orientation, String stored) throws IOException {
    boolean swapped = orientation >= 5;
    BufferedImage image = corners(stored, swapped ? 40 : 80, swapped ? 80 : 40);
    PictureCopy copy = PictureCopy.of(withExif(jpeg(image), orientation), "photo.jpg");
    assertEquals(80, copy.width());
    assertEquals(40, copy.height());
    BufferedImage kept = ImageIO.read(new ByteArrayInputStream(copy.bytes()));
    assertEquals(80, kept.getWidth());
    assertEquals("RGBW", corners(kept));
  }

  @Test
  void nothingOfTheCameraOrThePlaceIsLeft() throws IOException {
    byte[] original = withExif(jpeg(corners("RGBW", 80, 40)), 6);
    assertTrue(text(original).contains("Exif"));
    assertTrue(text(original).contains("GPS-SECRET"));
    String kept = text(PictureCopy.of(original, "photo.jpg").bytes());
    for (String word : new String[] {"Exif", "GPS-SECRET", "Ducky", "http", "ICC_PROFILE"}) {
      assertFalse(kept.contains(word), word);
    }
    for (int i = 0; i + 1 < kept.length() && kept.charAt(i + 1) != 0xDA; i++) {
      assertFalse(kept.charAt(i) == 0xFF && kept.charAt(i + 1) == 0xE1, "a segment APP1");
    }
  }

  @Test
  void aPngIsTurnedAndLosesItsWords() throws IOException {
    byte[] tiff = tiff(6);
    byte[] png =
        withChunks(
            png(corners("GWRB", 40, 80)),
            chunk("eXIf", tiff),
            chunk("tEXt", "Author\0GPS-SECRET".getBytes(StandardCharsets.ISO_8859_1)));
    PictureCopy copy = PictureCopy.of(png, "photo.png");
    assertEquals("png", copy.ending());
    assertEquals("RGBW", corners(ImageIO.read(new ByteArrayInputStream(copy.bytes()))));
    assertFalse(text(copy.bytes()).contains("GPS-SECRET"));
    assertFalse(text(copy.bytes()).contains("eXIf"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tiff", "bmp", "gif", "png"})
  void whatIsKeptWithoutLossBecomesPng(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(corners("RGBW", 80, 40), format, out));
    PictureCopy copy = PictureCopy.of(out.toByteArray(), "a." + format);
    assertEquals("png", copy.ending());
    assertEquals("RGBW", corners(ImageIO.read(new ByteArrayInputStream(copy.bytes()))));
  }

  @Test
  void aSmallFileThatSaysItIsHugeIsRefusedBeforeItIsDecoded() throws IOException {
    byte[] bomb = png(corners("RGBW", 80, 40));
    ByteBuffer.wrap(bomb).putInt(16, 50_000).putInt(20, 50_000);
    CRC32 sum = new CRC32();
    sum.update(bomb, 12, 17);
    ByteBuffer.wrap(bomb).putInt(29, (int) sum.getValue());
    String message = refused(bomb);
    assertTrue(message.contains("50000 by 50000 pixels, and 60 million"), message);
  }

  @Test
  void whatCannotBeReadIsRefusedWithTheRemedy() throws IOException {
    byte[] heic = "\0\0\0\u0018ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(refused(heic).contains("HEIC, which cannot be read here; export it as JPEG"));
    byte[] webp = "RIFF\0\0\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(refused(webp).contains("WebP"));
    assertTrue(refused(new byte[0]).contains("the file is empty"));
    assertTrue(refused("a letter".getBytes(StandardCharsets.UTF_8)).contains("no picture"));
    byte[] half = jpeg(corners("RGBW", 80, 40));
    assertTrue(refused(java.util.Arrays.copyOf(half, 100)).contains("export it"));
    assertThrows(UnreadableException.class, () -> PictureCopy.of(folder));
    assertThrows(UnreadableException.class, () -> PictureCopy.of(folder.resolve("none.jpg")));
  }

  @Test
  void aJpegThatBreaksOffIsRefusedAndOneWithBytesBehindItIsNot() throws IOException {
    byte[] whole = jpeg(corners("RGBW", 400, 300));
    for (int length : new int[] {whole.length - 2, whole.length / 2}) {
      assertTrue(
          refused(java.util.Arrays.copyOf(whole, length))
              .contains("the picture breaks off; copy it from the camera again"));
    }
    byte[] longer = java.util.Arrays.copyOf(whole, whole.length + 100);
    assertEquals(400, PictureCopy.of(longer, "photo.jpg").width());
  }

  @Test
  void bytesThatAreBrokenAnywhereAreReadOrRefused() throws IOException {
    byte[] good = withExif(jpeg(corners("RGBW", 16, 8)), 6);
    for (int i = 0; i < good.length; i += 3) {
      byte[] broken = good.clone();
      broken[i] ^= (byte) 0xA5;
      try {
        assertTrue(PictureCopy.of(broken, "photo.jpg").width() > 0);
      } catch (UnreadableException e) {
        assertTrue(e.getMessage().startsWith("photo.jpg: "), e.getMessage());
      }
    }
  }

  @Test
  void aFileIsReadByItsName() throws IOException {
    Path file = folder.resolve("a.jpg");
    Files.write(file, jpeg(corners("RGBW", 80, 40)));
    assertEquals(80, PictureCopy.of(file).width());
  }

  private static String refused(byte[] file) {
    return assertThrows(UnreadableException.class, () -> PictureCopy.of(file, "photo"))
        .getMessage();
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static BufferedImage corners(String colours, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        int corner = (x < width / 2 ? 0 : 1) + (y < height / 2 ? 0 : 2);
        image.setRGB(
            x,
            y,
            switch (colours.charAt(corner)) {
              case 'R' -> RED;
              case 'G' -> GREEN;
              case 'B' -> BLUE;
              default -> WHITE;
            });
      }
    }
    return image;
  }

  private static String corners(BufferedImage image) {
    int right = image.getWidth() - 4;
    int low = image.getHeight() - 4;
    return ""
        + colour(image, 3, 3)
        + colour(image, right, 3)
        + colour(image, 3, low)
        + colour(image, right, low);
  }

  private static char colour(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    boolean red = (rgb >> 16 & 0xFF) > 127;
    boolean green = (rgb >> 8 & 0xFF) > 127;
    boolean blue = (rgb & 0xFF) > 127;
    return red && green && blue ? 'W' : red ? 'R' : green ? 'G' : blue ? 'B' : '?';
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", out);
    return out.toByteArray();
  }

  private static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** A TIFF header, a directory with Orientation and a pointer, and the directory of GPS. */
  private static byte[] tiff(int orientation) {
    byte[] area = "GPS-SECRET\0".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 24 + 4 + 2 + 12 + 4 + area.length);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0);
    tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
    tiff.putInt(0);
    tiff.putShort((short) 1); // GPSMapDatum, a text
    tiff.putShort((short) 0x0012).putShort((short) 2).putInt(area.length).putInt(56);
    tiff.putInt(0);
    tiff.put(area);
    return tiff.array();
  }

  /** After the two bytes that start a JPEG. */
  private static byte[] withExif(byte[] jpeg, int orientation) {
    byte[] tiff = tiff(orientation);
    ByteBuffer all = ByteBuffer.allocate(jpeg.length + 4 + 6 + tiff.length);
    all.put(jpeg, 0, 2);
    all.putShort((short) 0xFFE1).putShort((short) (2 + 6 + tiff.length));
    all.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff);
    all.put(jpeg, 2, jpeg.length - 2);
    return all.array();
  }

  private static byte[] chunk(String type, byte[] data) {
    ByteBuffer chunk = ByteBuffer.allocate(12 + data.length);
    chunk.putInt(data.length).put(type.getBytes(StandardCharsets.US_ASCII)).put(data);
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, 4 + data.length);
    chunk.putInt((int) sum.getValue());
    return chunk.array();
  }

  /** After the head and the chunk IHDR. */
  private static byte[] withChunks(byte[] png, byte[]... chunks) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, 33);
    for (byte[] chunk : chunks) {
      out.writeBytes(chunk);
    }
    out.write(png, 33, png.length - 33);
    return out.toByteArray();
  }
}
