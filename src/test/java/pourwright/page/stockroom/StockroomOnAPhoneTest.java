package pourwright.page.stockroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.material.Material;
import pourwright.page.BrowserTest;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Thumb;
import pourwright.stock.Amount;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.CountLot;
import pourwright.work.DrawForBatch;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.ReceiveLot;

/** The stockroom on a screen of 390 pixels: receive, count, trace, hold. */
class StockroomOnAPhoneTest extends BrowserTest {
  private static final List<Server> OPENED = new ArrayList<>();

  private Desk desk;
  private String base;
  private Material powder;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    desk = TestStudio.desk(folder);
    Server server = TestStudio.open(desk, folder);
    OPENED.add(server);
    base = "http://127.0.0.1:" + server.port();
    powder =
        desk.studio().look(Drawers::materials).all().stream()
            .filter(m -> m.kind() == pourwright.material.MaterialKind.POWDER)
            .findFirst()
            .orElseThrow();
  }

  /** After the windows are closed: an open window holds a line to the studio. */
  @AfterAll
  static void closeTheStudios() {
    OPENED.forEach(Server::close);
    OPENED.clear();
  }

  private Shelf received(String code, double grams) {
    return desk.studio()
        .receiveLot
        .run(
            Act.of("AB", "key-" + code),
            ReceiveLot.Request.of(powder.code(), code, Amount.ofGrams(grams)))
        .made();
  }

  private double onHand(long lot) {
    return desk.studio()
        .look(books -> books.lots().shelf(lot))
        .orElseThrow()
        .onHand()
        .inUsualUnit();
  }

  private static void press(Page page, String button) {
    button(page, button).click();
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  @Test
  void aDeliveryIsTakenInWithFourFieldsAndStandsOnTheShelf() {
    Page page = visit(base, "/stockroom", Window.PHONE);
    page.getByText("Take a delivery in").first().click();
    page.locator("#material").selectOption(powder.code());
    page.locator("#amount").fill("4 lb 8 oz");
    page.locator("#lot").fill("R-77");
    page.locator("#by").fill("AB");
    press(page, "It is in");
    assertThat(page.locator(".said").textContent()).contains("2.041 kg", "lot R-77");
    Shelf shelf =
        desk.studio().look(books -> books.lots().shelf(powder.code(), "R-77")).orElseThrow();
    assertThat(shelf.onHand().inUsualUnit()).isEqualTo(4.5 * 453.59237);
    page.navigate(base + "/stockroom");
    assertThat(page.locator(".figure").first().textContent()).isEqualTo("2.041 kg");
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void theFullTubIsWeighedAndItsTareTakenOff() {
    long lot = received("R-78", 2000).lot().id();
    Page page = visit(base, "/stockroom/lot/" + lot, Window.PHONE);
    page.locator("#found").fill("1950");
    page.locator("#tare").fill("120");
    page.locator("#why").fill("spilt a little");
    page.locator("#by").fill("AB");
    press(page, "Count it");
    assertThat(page.locator(".said").textContent()).contains("1.83 kg", "170 g less");
    assertThat(onHand(lot)).isEqualTo(1830.0);
    assertThat(page.locator("#tare-hint").textContent()).contains("last time: 120");
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void aCountThatBeganBeforeSomethingMovedIsShownAgain() {
    long lot = received("R-79", 500).lot().id();
    Page page = visit(base, "/stockroom/lot/" + lot, Window.PHONE);
    desk.studio()
        .countLot
        .run(Act.of("CD", "other"), new CountLot.Request(lot, Amount.ofGrams(450), null));
    page.locator("#found").fill("440");
    page.locator("#by").fill("AB");
    press(page, "Count it");
    assertThat(page.locator(".said-refused").textContent()).contains("from 500 g to 450 g");
    assertThat(onHand(lot)).isEqualTo(450.0);
    press(page, "Count it");
    assertThat(onHand(lot)).isEqualTo(440.0);
  }

  @Test
  void aLotIsTracedFromItsCodeToThePiecesMadeOfIt() {
    Shelf shelf = received("R-80", 5000);
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes("bollard", 1, 2, null)),
            List.of(),
            null);
    long batch = desk.studio().startCast.run(Act.of("AB", "start"), plan).made().id();
    desk.studio()
        .drawForBatch
        .run(
            Act.of("AB", "draw"),
            new DrawForBatch.Request(batch, powder.code(), shelf.lot().id(), Amount.ofGrams(800)));
    desk.studio()
        .finishCast
        .run(
            Act.of("AB", "finish"),
            new FinishCast.Request(batch, List.of(new FinishCast.Demolded("bollard", 2)), null));
    Page page = visit(base, "/stockroom", Window.PHONE);
    page.locator("#lot-code").fill("r-80");
    press(page, "Count or trace it");
    page.getByText("Trace both ways").click();
    page.locator("section:has(#trace) a").first().waitFor();
    List<String> pieces = page.locator("section:has(#trace) a[href^='/piece/']").allTextContents();
    assertThat(pieces).hasSize(2);
    page.locator("section:has(#trace) a[href^='/piece/']").first().click();
    assertThat(page.locator("section:has(#trace) a[href='/lot/" + shelf.lot().id() + "']").count())
        .isEqualTo(1);
  }

  @Test
  void oneTapHoldsALotAndNothingDrawsFromIt() {
    long lot = received("R-81", 300).lot().id();
    Page page = visit(base, "/stockroom/lot/" + lot, Window.PHONE);
    press(page, "Lumps: hold it");
    assertThat(page.locator(".said-refused").textContent()).contains("your initials");
    page.navigate(base + "/settings");
    page.locator("#hand").fill("AB");
    page.locator("form[action='/settings/hand'] button").click();
    page.navigate(base + "/stockroom/lot/" + lot);
    press(page, "Lumps: hold it");
    assertThat(page.locator(".said").textContent()).contains("On hold");
    page.navigate(base + "/stockroom");
    assertThat(page.locator("#notices").count()).isEqualTo(1);
    assertThat(page.locator("section:has(#notices)").textContent()).contains("R-81: on hold");
    assertThat(
            desk.studio()
                .look(books -> books.lots().drawable(desk.today()))
                .getOrDefault(powder.code(), Amount.ofGrams(0))
                .isNone())
        .isTrue();
  }

  @Test
  void theShelfLifeAndTheLowLevelAreHersToChange() {
    received("R-82", 300);
    Page page = visit(base, "/stockroom/material/" + powder.code(), Window.PHONE);
    page.locator("#closed").fill("200");
    page.locator("#opened").fill("45");
    page.locator("#low").fill("1 kg");
    page.locator("#by").fill("AB");
    press(page, "Keep");
    assertThat(page.locator(".house").textContent()).contains("closed: 200 days; opened: 45 days");
    page.navigate(base + "/stockroom");
    assertThat(page.locator("section:has(#notices)").textContent()).contains("300 g left");
  }

  @Test
  void aWrongAmountIsSaidBesideItsFieldAndNothingIsRecorded() {
    Page page = visit(base, "/stockroom/receive", Window.PHONE.withoutScript());
    page.locator("#material").selectOption(powder.code());
    page.locator("#amount").fill("two buckets");
    page.locator("#by").fill("AB");
    press(page, "It is in");
    assertThat(page.locator("#amount-wrong").textContent()).contains("two buckets");
    assertThat(page.locator("#amount").inputValue()).isEqualTo("two buckets");
    List<Shelf> shelves = desk.studio().look(books -> books.lots().allShelves());
    assertThat(shelves).isEmpty();
  }

  /**
   * Goal: a delivery is in within two minutes of taps counted at human pace, its paper found with
   * each lot.
   */
  @Test
  void aWholeDeliveryIsTypedLookedAtAndTakenInWithItsPaper() {
    Page page = visit(base, "/stockroom", Window.PHONE);
    Thumb thumb = Thumb.on(page);
    thumb.tap(page.getByText("A whole delivery"));
    thumb
        .tap("#lines")
        .type("2 x 5 kg " + powder.code() + ", 60.00, lot D-1\n3 kg " + powder.code())
        .type(", 30, lot D-2");
    thumb.tap("#shipping").type("9.00").tap("#by").type("AB");
    thumb.tap(button(page, "Look first"));
    assertThat(page.locator("table").innerText()).contains("66.00 EUR", "33.00 EUR", "10 kg");
    assertThat(axe(page)).isEmpty();
    page.locator("#paper")
        .setInputFiles(
            new com.microsoft.playwright.options.FilePayload(
                "note.txt", "text/plain", "12".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    thumb.tap(button(page, "It is in"));
    assertThat(page.locator(".said").textContent()).contains("2 lots are in", "paper is kept");
    int photo = 3 * 400;
    assertThat(thumb.milliseconds() + photo).isLessThan(120_000);
    Shelf shelf =
        desk.studio().look(books -> books.lots().shelf(powder.code(), "D-2")).orElseThrow();
    assertThat(java.util.Objects.requireNonNull(shelf.lot().price()).minor()).isEqualTo(3300);
    page.navigate(base + "/stockroom/lot/" + shelf.lot().id());
    assertThat(page.locator("section:has(#papers) a").first().textContent()).isEqualTo("note.txt");
    assertThat(axe(page)).isEmpty();
    page.navigate(base + "/stockroom/delivery");
    page.locator("#lines").fill("5 kg moon dust\n1 kg " + powder.code() + ", lot D-2");
    press(page, "It is in");
    assertThat(page.locator("#lines-wrong").textContent()).contains("Line 1", "moon dust");
    assertThat(page.locator("#lines").inputValue()).contains("moon dust");
  }
}
