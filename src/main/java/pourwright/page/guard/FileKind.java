package pourwright.page.guard;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** What a file is by its first bytes, never by its name. Nothing else is taken in. */
public enum FileKind {
  /** A photo. */
  JPEG("image/jpeg", "jpg"),
  /** A picture. */
  PNG("image/png", "png"),
  /** A picture, kept as it is. */
  WEBP("image/webp", "webp"),
  /** A paper. */
  PDF("application/pdf", "pdf"),
  /** Plain text in UTF-8. */
  TEXT("text/plain; charset=utf-8", "txt");

  /** Most pixels of a picture, told from its head before it is unpacked. */
  public static final long PIXELS_MAX = 50_000_000;

  private static final int WEBP_HEAD = 12;
  private static final int TEXT_MAX = 5 * 1024 * 1024;

  private final String type;
  private final String ending;

  FileKind(String type, String ending) {
    this.type = type;
    this.ending = ending;
  }

  /** The media type it is served as. */
  public String type() {
    return type;
  }

  /** The usual ending of its name. */
  public String ending() {
    return ending;
  }

  /** The kind of a file, or nothing when it is none that is taken. */
  public static Optional<FileKind> of(byte[] bytes) {
    if (begins(bytes, 0xff, 0xd8, 0xff)) {
      return Optional.of(JPEG);
    }
    if (begins(bytes, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a)) {
      return Optional.of(PNG);
    }
    if (begins(bytes, 'R', 'I', 'F', 'F') && hasAt(bytes, 8, "WEBP")) {
      return Optional.of(WEBP);
    }
    if (begins(bytes, '%', 'P', 'D', 'F', '-')) {
      return Optional.of(PDF);
    }
    return text(bytes) ? Optional.of(TEXT) : Optional.empty();
  }

  private static boolean begins(byte[] bytes, int... head) {
    if (bytes.length < head.length) {
      return false;
    }
    for (int i = 0; i < head.length; i++) {
      if ((bytes[i] & 0xff) != head[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasAt(byte[] bytes, int at, String word) {
    return bytes.length >= WEBP_HEAD
        && new String(bytes, at, word.length(), StandardCharsets.ISO_8859_1).equals(word);
  }

  private static boolean text(byte[] bytes) {
    if (bytes.length == 0 || bytes.length > TEXT_MAX) {
      return false;
    }
    for (byte b : bytes) {
      boolean control = b >= 0 && b < ' ' && b != '\n' && b != '\r' && b != '\t';
      if (control) {
        return false;
      }
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      String head = text.stripLeading().toLowerCase(java.util.Locale.ROOT);
      return !head.startsWith("<");
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  /**
   * The file as it is kept: photos are drawn anew, which leaves place and camera behind and
   * anything hidden in them; others stay as they are.
   *
   * @throws TurnedAway when a picture is broken or has more than fifty million pixels
   */
  public byte[] cleaned(byte[] bytes) throws IOException {
    if (this != JPEG && this != PNG) {
      return bytes;
    }
    checkSize(bytes);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    if (image == null) {
      throw broken();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
    if (!ImageIO.write(image, this == JPEG ? "jpeg" : "png", out)) {
      throw broken();
    }
    return out.toByteArray();
  }

  private static void checkSize(byte[] bytes) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw broken();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels <= 0 || pixels > PIXELS_MAX) {
          throw new TurnedAway(
              413, "That picture is too large", "At most 50 million pixels. Nothing was kept.");
        }
      } finally {
        reader.dispose();
      }
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      throw broken();
    }
  }

  private static TurnedAway broken() {
    return new TurnedAway(
        422, "That picture cannot be read", "It seems damaged. Nothing was kept.");
  }
}
