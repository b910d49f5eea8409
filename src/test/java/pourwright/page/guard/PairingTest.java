package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.time.Duration;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.BrowserTest;
import pourwright.page.MovableClock;
import pourwright.page.Server;
import pourwright.page.TestStudio;

/** A phone is let in by a code on the laptop's screen, once, within five minutes (goal G6). */
class PairingTest extends BrowserTest {
  private static final String PASSPHRASE = "slate tide lantern wick";

  private final MovableClock clock = new MovableClock();
  private Server server;
  private String base;

  @BeforeEach
  void share(@TempDir Path folder) {
    server = TestStudio.share(TestStudio.site(TestStudio.desk(folder, clock)), folder, PASSPHRASE);
    base = "http://studio.test:" + server.port();
  }

  @AfterEach
  void close() {
    closeWindows();
    server.close();
  }

  private Page laptopWithCode() {
    Page laptop = visit(base, "/", Window.LAPTOP);
    laptop.fill("#passphrase", PASSPHRASE);
    laptop.click("main button[type=submit]");
    laptop.navigate(base + "/devices");
    laptop.click("text=Let a phone in");
    return laptop;
  }

  /** The path on the screen; the test's phone knows the machine by another name. */
  private static String path(Page laptop) {
    String address = laptop.locator("main code").first().textContent();
    return address.substring(address.indexOf("/pair/"));
  }

  @Test
  void thePhoneNeedsOneTapAfterItsCameraReadTheCode() throws Exception {
    Page laptop = laptopWithCode();
    assertThat(axe(laptop)).isEmpty();
    byte[] seen = laptop.locator("svg.qr").screenshot();
    var picture = ImageIO.read(new ByteArrayInputStream(seen));
    int w = picture.getWidth();
    int h = picture.getHeight();
    var light = new RGBLuminanceSource(w, h, picture.getRGB(0, 0, w, h, null, 0, w));
    String read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText();
    assertThat(read).isEqualTo(laptop.locator("main code").first().textContent());
    assertThat(read).matches("http://[^/]+:" + server.port() + "/pair/[A-Za-z0-9_-]{43}");
    Page phone = visit(base, path(laptop), Window.PHONE);
    assertThat(axe(phone)).isEmpty();
    phone.click("main button[type=submit]");
    assertThat(phone.url()).isEqualTo(base + "/");
    assertThat(phone.locator("nav.places a").count()).isEqualTo(9);
  }

  @Test
  void aCodeIsGoodOnceAndLookingAtItDoesNotUseItUp() {
    String path = path(laptopWithCode());
    Page looking = visit(base, path, Window.PHONE);
    Page phone = visit(base, path, Window.PHONE);
    phone.click("main button[type=submit]");
    assertThat(phone.url()).isEqualTo(base + "/");
    looking.click("main button[type=submit]");
    assertThat(looking.locator("main").innerText()).contains("used already");
    looking.navigate(base + "/orders");
    assertThat(looking.url()).endsWith("/sign-in");
  }

  @Test
  void afterFiveMinutesItIsGoodNoMore() {
    String path = path(laptopWithCode());
    clock.move(Duration.ofMinutes(5));
    Page phone = visit(base, path, Window.PHONE);
    assertThat(phone.locator("main").innerText()).contains("older than five minutes");
    assertThat(phone.locator("main button[type=submit]").count()).isZero();
  }

  @Test
  void aStrangerWithAGuessedCodeStaysOutside() {
    Page stranger = visit(base, "/pair/" + "A".repeat(43), Window.PHONE);
    assertThat(stranger.locator("main button[type=submit]").count()).isZero();
    assertThat(stranger.locator(".bell").count()).isZero();
  }
}
