package pourwright.page.orders;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.order.Order;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;

/** A shop's order file, from the phone's file chooser into the order book. */
class OrderFileInBrowserTest extends BrowserTest {
  private static final String GERMAN =
      "Bestellung;Artikel;Menge;Termin;K\u00e4ufer\n"
          + "A-1;Bollard, Rain on slate;2,0;24.12.2027;J\u00f6rg\n"
          + "A-1;cog-fig;1;24.12.2027;J\u00f6rg\n"
          + "A-2;trough-hearth;3;05.01.2028;\u00c5sa\n";

  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
  }

  @AfterEach
  void closeTheStudio() {
    closeWindows();
    open.close();
  }

  private static FilePayload file(String name, byte[] bytes) {
    return new FilePayload(name, "text/csv", bytes);
  }

  private static FilePayload german() {
    return file("shop.csv", GERMAN.getBytes(Charset.forName("windows-1252")));
  }

  private static void look(Page page, FilePayload file) {
    page.locator("#file").setInputFiles(file);
    page.click("text=Look at it");
  }

  private static void mapGerman(Page page) {
    page.fill("#col-order", "Bestellung");
    page.fill("#col-design", "Artikel");
    page.fill("#col-quantity", "Menge");
    page.fill("#col-due", "Termin");
    page.fill("#col-customer", "K\u00e4ufer");
  }

  private static void assertFits(Page page) {
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).as(page.url()).isLessThanOrEqualTo(390);
  }

  private List<Order> orders() {
    return open.studio.look(books -> books.orders().list(null, null, 50)).items();
  }

  /** Takes a file in that is mapped by hand, with a script or without. */
  private Page takeIn(Window window) {
    Page page = visit(open.base(), "/orders", window);
    page.click("text=Read a shop's order file");
    mapGerman(page);
    look(page, german());
    String came = page.locator("section:has(#came)").innerText();
    assertThat(came)
        .contains("3 lines are new", "windows-1252", "semicolon", "comma", "d.m.y")
        .contains("order: column Bestellung", "customer: column K\u00e4ufer")
        .contains("new: A-1 bollard-rain, 2 pieces, due 2027-12-24");
    assertThat(orders()).isEmpty();
    page.locator("form[action='/orders/import/take'] #by").fill("AB");
    page.click("text=Take all of it");
    assertThat(page.locator(".said").innerText()).contains("shop.csv is in the book");
    assertThat(page.url()).endsWith("/orders");
    assertThat(page.locator("table").innerText()).contains("A-1", "A-2", "2027-12-24");
    return page;
  }

  @Test
  void aFileIsMappedLookedAtAndTakenInAndTheSameFileAgainAddsNothing() {
    Page page = takeIn(Window.PHONE);
    assertFits(page);
    assertThat(axe(page)).isEmpty();
    assertThat(orders()).extracting(Order::number).containsExactlyInAnyOrder("A-1", "A-2");
    assertThat(orders()).extracting(Order::pieces).containsExactlyInAnyOrder(3, 3);
    page.click("text=Read a shop's order file");
    assertThat(axe(page)).isEmpty();
    mapGerman(page);
    look(page, german());
    assertThat(page.locator("section:has(#came)").innerText())
        .contains("Nothing would change: 3 lines are in the book already.");
    assertThat(page.locator("text=Take all of it").count()).isZero();
    assertFits(page);
    assertThat(axe(page)).isEmpty();
    page.setViewportSize(1280, 900);
    assertThat(axe(page)).isEmpty();
    assertThat(orders()).hasSize(2);
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
  }

  @Test
  void aSecondFileShowsWhatChangedWhatWasCancelledAndWhatIsAlreadyCast() {
    String first = "Order,Item,Qty,Due\nD-1,bollard-rain,2,2027-12-24\nD-1,cog-fig,1,2027-12-24\n";
    String second = "Order,Item,Qty,Due\nD-1,bollard-rain,5,2027-12-24\n";
    Page page = visit(open.base(), "/orders/import", Window.PHONE);
    look(page, file("one.csv", first.getBytes(StandardCharsets.UTF_8)));
    page.locator("form[action='/orders/import/take'] #by").fill("AB");
    page.click("text=Take all of it");
    var plan =
        new pourwright.batch.BatchPlan(
            pourwright.batch.BatchKind.CAST,
            "grey",
            1,
            List.of(new pourwright.batch.BatchPlan.Makes("bollard", 1, 3, "bollard-mold")),
            List.of(),
            null);
    long cast = open.studio.startCast.run(open.act(), plan).made().id();
    var whole = List.of(new pourwright.work.FinishCast.Demolded("bollard", 3));
    open.studio
        .finishCast
        .run(open.act(), new pourwright.work.FinishCast.Request(cast, whole, null))
        .made();
    page.navigate(open.base() + "/orders/import");
    look(page, file("two.csv", second.getBytes(StandardCharsets.UTF_8)));
    assertThat(page.locator("section:has(#came)").innerText())
        .contains("1 changed, 1 cancelled")
        .contains(
            "changed: D-1 bollard-rain, 2 pieces become 5 (already picked: 0; poured and free: 0;"
                + " cast: 3)")
        .contains("cancelled: D-1 cog-fig (already picked: 0; poured and free: 0; cast: 0)");
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void itWorksWithoutScript() {
    takeIn(Window.PHONE.withoutScript());
    assertThat(orders()).hasSize(2);
  }

  /** The second file of the same shop is read by what was said of the first, without a word. */
  @Test
  void theColumnsAndTheShopsOwnNamesAreKeptForTheNextFile() {
    Page page = visit(open.base(), "/orders/import", Window.PHONE);
    page.fill("#col-order", "Kennung");
    page.fill("#col-design", "Ware");
    page.fill("#col-quantity", "Zahl");
    page.fill("#col-due", "Bis");
    page.fill("#names", "Regen gross = no-such-candle");
    look(page, named("A-1"));
    assertThat(page.locator("#names-wrong").innerText()).contains("Regen gross = no-such-candle");
    page.fill("#names", "Regen gross = bollard-rain");
    look(page, named("A-1"));
    page.locator("form[action='/orders/import/take'] #by").fill("AB");
    page.click("text=Take all of it");
    assertThat(orders()).hasSize(1);
    page.navigate(open.base() + "/orders/import");
    assertThat(page.inputValue("#names")).isEqualTo("Regen gross = bollard-rain");
    look(page, named("A-7"));
    assertThat(page.locator("section:has(#came)").innerText())
        .contains("1 line is new", "order: column Kennung", "new: A-7 bollard-rain");
    page.click("text=Take all of it");
    assertThat(orders()).hasSize(2);
    String plain = "Order,Item,Qty,Due\nC-1,cog-fig,1,2027-03-04\n";
    page.navigate(open.base() + "/orders/import");
    look(page, file("other.csv", plain.getBytes(StandardCharsets.UTF_8)));
    assertThat(page.locator("section:has(#came)").innerText()).contains("new: C-1 cog-fig");
    assertThat(axe(page)).isEmpty();
  }

  private static FilePayload named(String order) {
    String text = "Kennung;Ware;Zahl;Bis\n" + order + ";Regen gross;2,0;24.12.2027\n";
    return file("next.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aBadDateOnLine17KeepsEverythingOutAndAFormulaStaysAName() {
    StringBuilder text = new StringBuilder("Order,Item,Qty,Due,Customer\n");
    for (int line = 2; line <= 20; line++) {
      text.append("B-").append(line).append(",cog-fig,1,");
      text.append(line == 17 ? "2027-02-30" : "2027-03-01");
      text.append(line == 5 ? ",\"=HYPERLINK(\"\"http://evil.test\"\")\"\n" : ",Ida\n");
    }
    Page page = visit(open.base(), "/orders/import", Window.PHONE);
    look(page, file("march.csv", text.toString().getBytes(StandardCharsets.UTF_8)));
    Locator came = page.locator("section:has(#came)");
    assertThat(came.innerText()).contains("Nothing was taken: 1 line is bad", "Line 17:");
    assertThat(came.locator("li").count()).isEqualTo(1);
    assertThat(page.locator("text=Take all of it").count()).isZero();
    assertThat(orders()).isEmpty();
    assertFits(page);
    assertThat(axe(page)).isEmpty();
    String mended = text.toString().replace("2027-02-30", "2027-02-28");
    look(page, file("march.csv", mended.getBytes(StandardCharsets.UTF_8)));
    assertThat(came.innerText()).contains("19 lines are new");
    page.locator("form[action='/orders/import/take'] #by").fill("AB");
    page.click("text=Take all of it");
    assertThat(orders()).hasSize(19);
    assertThat(page.locator("a[href*='evil.test']").count()).isZero();
    assertThat(
            orders().stream()
                .filter(o -> o.number().equals("B-5"))
                .map(o -> "" + o.customer())
                .toList())
        .noneMatch(name -> name.startsWith("http"));
    assertThat(outside).isEmpty();
  }

  @Test
  void aDateThatCanBeReadInTwoWaysIsAskedAbout() {
    Page page = visit(open.base(), "/orders/import", Window.PHONE);
    String text = "Order,Item,Qty,Due\nC-1,cog-fig,1,03/04/2027\n";
    look(page, file("us.csv", text.getBytes(StandardCharsets.UTF_8)));
    assertThat(page.locator("section:has(#came)").innerText())
        .contains("can be read in more than one way");
    page.fill("#dates", "d/m/y");
    page.click("text=Look at it");
    assertThat(page.locator("section:has(#came)").innerText()).contains("due 2027-04-03");
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void noFileOrNoTableIsRefusedInASentence() {
    Page page = visit(open.base(), "/orders/import", Window.PHONE);
    page.click("text=Look at it");
    assertThat(page.locator("main").innerText()).contains("Please choose the shop's file.");
    look(page, file("empty.csv", new byte[0]));
    assertThat(page.locator("main").innerText()).contains("Please choose the shop's file.");
    look(page, file("picture.csv", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3}));
    assertThat(page.locator("section:has(#came)").innerText())
        .contains("Nothing was taken", "Line 1: there is a zero byte")
        .doesNotContain("0 lines");
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void aDayIsPromisedWithTheKeyboardAlone() {
    Page page = visit(open.base(), "/orders", Window.LAPTOP);
    assertThat(axe(page)).isEmpty();
    tabTo(page, "#candle");
    page.keyboard().type("Cog, Fig");
    tabTo(page, "#count");
    page.keyboard().type("2");
    page.keyboard().press("Enter");
    page.waitForURL("**/plan/promise?*");
    assertThat(page.locator("#answer").innerText()).contains("No date can be promised");
    assertThat(page.locator("#making").innerText()).contains("20");
    assertThat(page.locator("#main").innerText()).contains("The whole way", "Rest");
    assertThat(page.locator("#candle").inputValue()).isEqualTo("cog-fig");
    assertThat(axe(page)).isEmpty();
    page.fill("#count", "none");
    page.press("#count", "Enter");
    page.waitForSelector("#count-wrong");
    assertThat(complaints).allMatch(c -> c.contains("status of 4"));
  }

  /** Presses Tab until the element has the focus, as a hand without a mouse would. */
  private static void tabTo(Page page, String selector) {
    Locator wanted = page.locator(selector).first();
    for (int i = 0; i < 120; i++) {
      if (Boolean.TRUE.equals(wanted.evaluate("e => e === document.activeElement"))) {
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("the Tab key does not reach " + selector + " on " + page.url());
  }
}
