package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.BeginPour;

/** Goal G5: a cast and a pour at the machine's own address, over plain http. */
@DisplayName("G5 the benches on the studio's own network")
class BenchOnTheNetworkTest extends BrowserTest {
  private static final String PASSPHRASE = "slate tide lantern wick";

  /** An address of this machine that is not loopback, so that a browser trusts it with nothing. */
  private static Optional<String> address() throws SocketException {
    return NetworkInterface.networkInterfaces()
        .flatMap(NetworkInterface::inetAddresses)
        .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress() && !a.isLinkLocalAddress())
        .map(InetAddress::getHostAddress)
        .findFirst();
  }

  @Test
  @DisplayName("G5 cast and pour at http://<own address>: no secure context, no console error")
  void castAndPourAtTheOwnAddress(@TempDir Path folder) throws SocketException {
    Optional<String> address = address();
    Assumptions.assumeTrue(address.isPresent(), "this machine has loopback alone");
    Workshop workshop = new Workshop(folder);
    workshop.vessels("bollard", 2);
    try (Server server = TestStudio.share(TestStudio.site(workshop.desk), folder, PASSPHRASE)) {
      String base = "http://" + address.get() + ":" + server.port();
      Page page = visit(base, "/", Window.PHONE);
      assertThat(page.evaluate("window.isSecureContext")).isEqualTo(false);
      page.fill("#passphrase", PASSPHRASE);
      page.locator("main button[type=submit]").click();
      page.navigate(base + "/settings");
      page.fill("#hand", "MB");
      page.locator("main form[action='/settings/hand'] button").first().click();
      page.navigate(
          base + "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1");
      page.locator("text=Begin this cast").click();
      page.waitForSelector("#step");
      walk(page, "/step");
      page.locator("form[action$='/demold'] .primary").click();
      page.waitForURL("**/casting/pieces/Green");
      page.locator("button[value=HARDENED]").click();
      page.waitForSelector(".said-done");
      long pour =
          workshop
              .desk
              .studio()
              .beginPour
              .run(workshop.act(), new BeginPour.Request("bollard-rain", 2, 0))
              .made()
              .id();
      page.navigate(base + "/pouring/" + pour);
      walk(page, "/step");
      page.locator("form[action$='/finish'] .primary").click();
      page.waitForSelector(".said-done");
      assertThat(page.locator("main").innerText()).contains("2 candles rest");
      closeWindows();
    }
    assertThat(complaints).isEmpty();
    assertThat(outside).isEmpty();
  }

  private static void walk(Page page, String ending) {
    for (int i = 0; i < 20 && page.locator("form[action$='" + ending + "']").count() > 0; i++) {
      page.locator("form[action$='" + ending + "'] .primary").click();
      page.waitForLoadState();
    }
  }
}
