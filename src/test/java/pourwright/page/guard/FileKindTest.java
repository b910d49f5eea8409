package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file is what its first bytes say, not what its name says. */
class FileKindTest {
  private static byte[] picture(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), format, out);
    return out.toByteArray();
  }

  @Test
  void picturesPapersAndTextAreKnownByTheirContent() throws IOException {
    assertThat(FileKind.of(picture("jpeg"))).contains(FileKind.JPEG);
    assertThat(FileKind.of(picture("png"))).contains(FileKind.PNG);
    assertThat(FileKind.of(bytes("%PDF-1.7\n…"))).contains(FileKind.PDF);
    assertThat(FileKind.of(bytes("poured at 62 °C, a little damp"))).contains(FileKind.TEXT);
    assertThat(FileKind.of(bytes("RIFF\u0001\u0001\u0001\u0001WEBPVP8 "))).contains(FileKind.WEBP);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE html><script>alert(1)</script>",
        "  <svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>",
        "<?xml version='1.0'?><x/>",
        "MZ\u0000\u0003",
        "\u007fELF\u0002",
        "PK\u0003\u0004",
        "GIF89a\u0001",
        ""
      })
  void anythingElseIsNotTaken(String content) {
    assertThat(FileKind.of(bytes(content))).isEmpty();
  }

  @Test
  void whatAPhotoHidesIsLeftBehind() throws IOException {
    byte[] photo = picture("jpeg");
    byte[] secret = bytes("Exif\0\0taken at the harbour");
    ByteArrayOutputStream tagged = new ByteArrayOutputStream();
    tagged.write(photo, 0, 2);
    tagged.write(0xff);
    tagged.write(0xe1);
    tagged.write(ByteBuffer.allocate(2).putShort((short) (secret.length + 2)).array());
    tagged.write(secret);
    tagged.write(photo, 2, photo.length - 2);
    byte[] kept = FileKind.JPEG.cleaned(tagged.toByteArray());
    assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("harbour");
    assertThat(ImageIO.read(new ByteArrayInputStream(kept)).getWidth()).isEqualTo(40);
  }

  @Test
  void aSmallFileThatWouldUnpackIntoAHugePictureIsRefusedUnseen() throws IOException {
    byte[] bomb = png(60_000, 60_000);
    assertThat(bomb.length).isLessThan(1_000);
    assertThatThrownBy(() -> FileKind.PNG.cleaned(bomb))
        .isInstanceOfSatisfying(TurnedAway.class, e -> assertThat(e.status()).isEqualTo(413));
  }

  @Test
  void aBrokenPictureIsRefusedInASentence() {
    byte[] broken = new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0, 1, 2, 3};
    assertThat(FileKind.of(broken)).contains(FileKind.JPEG);
    assertThatThrownBy(() -> FileKind.JPEG.cleaned(broken)).isInstanceOf(Exception.class);
  }

  private static byte[] png(int width, int height) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a});
    byte[] head =
        ByteBuffer.allocate(13)
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 2, 0, 0, 0})
            .array();
    chunk(out, "IHDR", head);
    Deflater deflater = new Deflater();
    deflater.setInput(new byte[100]);
    deflater.finish();
    byte[] data = new byte[200];
    int length = deflater.deflate(data);
    chunk(out, "IDAT", java.util.Arrays.copyOf(data, length));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] data)
      throws IOException {
    CRC32 crc = new CRC32();
    crc.update(bytes(type));
    crc.update(data);
    out.write(ByteBuffer.allocate(4).putInt(data.length).array());
    out.write(bytes(type));
    out.write(data);
    out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
