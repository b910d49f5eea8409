package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.material.Material;
import pourwright.work.CardList;
import pourwright.work.Drawers;
import pourwright.work.ImportCards;
import pourwright.work.Outcome;
import pourwright.work.Studio;

/** Lists of a spreadsheet: mapped, looked at, taken in whole or not at all. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CardListTest extends BrowserTest {
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private String base;

  @BeforeAll
  void open(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    server = TestStudio.open(workshop.desk, folder);
    base = "http://127.0.0.1:" + server.port();
  }

  @AfterAll
  void close() {
    server.close();
  }

  @Test
  void aListOfMaterialsIsMappedLookedAtAndTakenInOnAPhone() {
    Page page = visit(base, "/stockroom/list", Window.PHONE);
    assertThat(axe(page)).isEmpty();
    page.selectOption("#what", "materials");
    page.fill(
        "#text",
        "Stuff;Type;Shelf life;Open\nRiver sand;sand;;\nHarbour grey powder;powder;200;45\n");
    page.getByText("Look first").click();
    page.waitForLoadState();
    assertThat(page.locator("main").innerText()).contains("Please say which column is name.");
    page.selectOption("#map-name", "Stuff");
    page.selectOption("#map-opened", "Open");
    page.getByText("Look first").click();
    page.waitForLoadState();
    assertThat(page.locator("[role=status]").first().innerText()).isEqualTo("2 new");
    assertThat(axe(page)).isEmpty();
    boolean early = studio.look(b -> Drawers.material(b, "river-sand").isPresent());
    assertThat(early).isFalse();
    page.fill("#by", "MB");
    page.getByText("Take it in").click();
    page.waitForLoadState();
    Material powder = studio.look(b -> Drawers.material(b, "harbour-grey-powder")).orElseThrow();
    assertThat(powder.shelfLife().closedDays()).isEqualTo(200);
    assertThat(powder.shelfLife().openedDays()).isEqualTo(45);
    assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
        .isLessThanOrEqualTo(390);
  }

  private static Map<String, String> row(String... cells) {
    Map<String, String> row = new java.util.LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put(cells[i], cells[i + 1]);
    }
    return row;
  }

  @Test
  void mixAndPourCardsComeInAllOrNoneAndOneUndoTakesThemBack() {
    List<Map<String, String>> mixes =
        List.of(
            row(
                "name",
                "Quay grey",
                "powder",
                "rapid-grey",
                "powder parts",
                "3",
                "water parts",
                "1",
                "by",
                "volume",
                "additions",
                "black-oxide 0.015",
                "times",
                "rapid"),
            row(
                "name",
                "Quay white",
                "powder",
                "white-portland",
                "powder parts",
                "1",
                "water parts",
                "0.42",
                "additions",
                "marble-flour 1.2; titan 0.1"));
    List<ImportCards.Row> fates = studio.importCards.look(CardList.What.MIXES, mixes, Locale.UK);
    assertThat(fates.get(0).fate()).isEqualTo(ImportCards.Fate.NEW);
    assertThat(fates.get(1).sentence()).contains("there is no material 'titan'");
    Outcome<List<ImportCards.Row>> refused =
        studio.importCards.run(workshop.act(), CardList.What.MIXES, mixes, Locale.UK);
    assertThat(refused)
        .isInstanceOfSatisfying(
            Outcome.Refused.class, r -> assertThat(r.sentence()).contains("line 3"));
    boolean none = studio.look(b -> b.cards().current(Drawers.MIX, "quay-grey").isEmpty());
    assertThat(none).isTrue();
    List<Map<String, String>> pours =
        List.of(
            row(
                "name",
                "Quay rain",
                "waxes",
                "soft-wax-a 4; blend-b 1",
                "fragrances",
                "scent-rain",
                "load",
                "8 %",
                "of",
                "total",
                "add from",
                "68",
                "add to",
                "76",
                "pour from",
                "54",
                "pour to",
                "60",
                "rest days",
                "12"));
    Outcome<List<ImportCards.Row>> taken =
        studio.importCards.run(workshop.act(), CardList.What.POURS, pours, Locale.UK);
    assertThat(taken.made()).hasSize(1);
    var pour = studio.look(b -> b.cards().current(Drawers.POUR, "quay-rain")).orElseThrow().body();
    assertThat(pour.load()).isEqualTo(0.08);
    assertThat(pour.waxes()).hasSize(2);
    assertThat(studio.importCards.look(CardList.What.POURS, pours, Locale.UK).get(0).fate())
        .isEqualTo(ImportCards.Fate.SAME);
    studio.undo.run(workshop.act(), taken.deed().id()).made();
    boolean gone = studio.look(b -> b.cards().current(Drawers.POUR, "quay-rain").isEmpty());
    assertThat(gone).isTrue();
  }

  @Test
  void anotherKindUnderTheSameCodeAndTwiceTheSameCodeAreSaid() {
    List<ImportCards.Row> fates =
        studio.importCards.look(
            CardList.What.MATERIALS,
            List.of(
                row("name", "Rapid grey", "code", "rapid-grey", "kind", "wax"),
                row("name", "New sand", "kind", "sand"),
                row("name", "New  sand", "kind", "sand"),
                row("name", "Odd", "kind", "moonlight")),
            Locale.UK);
    assertThat(fates.get(0).sentence()).contains("rapid-grey is powder so far");
    assertThat(fates.get(1).fate()).isEqualTo(ImportCards.Fate.NEW);
    assertThat(fates.get(2).sentence()).contains("stands twice");
    assertThat(fates.get(3).sentence()).contains("moonlight");
  }
}
