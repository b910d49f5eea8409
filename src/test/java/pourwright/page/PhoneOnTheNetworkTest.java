package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A phone on the studio's own network, over plain http: no secure context, and nothing missing. */
class PhoneOnTheNetworkTest extends BrowserTest {
  private static final String PASSPHRASE = "slate tide lantern wick";

  private Desk desk;
  private Server server;
  private String base;

  @BeforeEach
  void share(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    server = TestStudio.share(TestStudio.site(desk), folder, PASSPHRASE);
    base = "http://studio.test:" + server.port();
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void everyPlaceAndTheBellWorkThereWithoutAComplaint() {
    Page phone = visit(base, "/", Window.PHONE);
    assertThat(phone.url()).endsWith("/sign-in");
    assertThat(phone.evaluate("window.isSecureContext")).isEqualTo(false);
    phone.locator("#passphrase").fill(PASSPHRASE);
    phone.locator("main button[type=submit]").click();
    for (Place place : Places.all(desk)) {
      phone.navigate(base + place.path());
      assertThat(phone.locator("nav a[aria-current=page]").textContent()).isEqualTo(place.name());
    }
    phone.navigate(base + "/timers");
    phone.locator("#label").fill("Seal coat");
    phone.locator("#minutes").fill("20");
    phone.locator("#by").fill("MK");
    phone.locator("form[action='/timers'] button").click();
    PlaywrightAssertions.assertThat(phone.locator(".bell-name"))
        .containsText("Seal coat", new LocatorAssertions.ContainsTextOptions().setTimeout(4_000));
    assertThat(complaints).isEmpty();
    assertThat(outside).isEmpty();
  }
}
