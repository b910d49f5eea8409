package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;
import pourwright.work.Drawers;
import pourwright.work.PieceBook;

/**
 * From a drawing to a proven vessel at 390 pixels: drawn, weighed with water, mixed, demolded,
 * hardened, dried, sealed, proved tight and dried again; by thumb, and by keyboard alone.
 */
class VesselLifeInBrowserTest extends BrowserTest {
  private static final int STEPS_MAX = 15;
  private static final Map<String, String> CONSTANT =
      Map.of("#before_g", "500.2", "#later_g", "500.0", "#hours", "24");

  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  /** How a person enters things. */
  private interface Hand {
    void write(Page page, String field, String text);

    void choose(Page page, String field, String value);

    void press(Page page, String button);
  }

  private static final class Thumb implements Hand {
    @Override
    public void write(Page page, String field, String text) {
      page.fill(field, text);
    }

    @Override
    public void choose(Page page, String field, String value) {
      page.selectOption(field, value);
    }

    @Override
    public void press(Page page, String button) {
      page.locator(button).first().click();
      page.waitForLoadState();
    }
  }

  /** Tab, typing, arrows and Enter; the pointer is never used. */
  private static final class Keys implements Hand {
    @Override
    public void write(Page page, String field, String text) {
      tabTo(page, field);
      page.keyboard().press("Control+a");
      page.keyboard().type(text);
    }

    @Override
    public void choose(Page page, String field, String value) {
      tabTo(page, field);
      Locator choice = page.locator(field);
      for (int i = 0; i < 40 && !value.equals(choice.inputValue()); i++) {
        page.keyboard().press("ArrowDown");
      }
      assertThat(choice.inputValue()).isEqualTo(value);
    }

    @Override
    public void press(Page page, String button) {
      tabTo(page, button);
      page.evaluate("window.stillHere = true");
      page.keyboard().press("Enter");
      page.waitForFunction("() => !window.stillHere && document.readyState === 'complete'");
    }

    private static void tabTo(Page page, String selector) {
      Locator wanted = page.locator(selector).first();
      for (int i = 0; i < 200; i++) {
        if (Boolean.TRUE.equals(wanted.evaluate("e => e === document.activeElement"))) {
          return;
        }
        page.keyboard().press("Tab");
      }
      throw new AssertionError("the Tab key does not reach " + selector + " on " + page.url());
    }
  }

  @Test
  void aVesselFromTheDrawingToTheProofByThumb() {
    Page page = live(new Thumb());
    assertThat(axe(page)).isEmpty();
  }

  @Test
  void aVesselFromTheDrawingToTheProofWithTheKeyboardAlone() {
    live(new Keys());
  }

  private Page live(Hand hand) {
    Page page = visit(open.base(), "/board", Window.PHONE);
    page.setDefaultTimeout(20_000);
    hand.press(page, "a[href='/board/vessel/new']");
    assertFits(page);
    hand.write(page, "#name", "Quay cup");
    hand.write(page, "#outer_length", "90 mm");
    hand.write(page, "#outer_height", "100");
    hand.write(page, "#cavity_length", "74");
    hand.write(page, "#cavity_height", "90");
    sign(hand, page, "main #by");
    hand.press(page, "main button.primary");
    assertThat(page.url()).endsWith("/board/vessel/quay-cup");
    assertFits(page);

    hand.press(page, "a[href='/board/vessel/quay-cup/weigh']");
    assertFits(page);
    hand.write(page, "#empty_g", "520");
    hand.write(page, "#full_g", "905");
    hand.write(page, "#water_c", "20");
    sign(hand, page, "main #by");
    hand.press(page, "main button.primary");
    double holds =
        open.studio
            .look(b -> b.cards().current(Drawers.VESSEL, "quay-cup"))
            .orElseThrow()
            .body()
            .holdsMl()
            .value();
    assertThat(holds).isBetween(386.0, 386.2);

    page.navigate(open.base() + "/casting");
    hand.press(page, "a[href='/casting/new']");
    assertFits(page);
    hand.choose(page, "#mix", "grey");
    hand.choose(page, "#vessel1", "quay-cup");
    hand.press(page, "main button.primary");
    assertThat(page.url()).contains("/casting/sheet");
    assertFits(page);
    sign(hand, page, "main #by");
    hand.press(page, "main button.primary");
    cast(hand, page);
    return prove(hand, page);
  }

  private static void cast(Hand hand, Page page) {
    String step = "form[action$='/step']";
    for (int i = 0; i < STEPS_MAX && page.locator(step).count() > 0; i++) {
      assertFits(page);
      sign(hand, page, step + " #by");
      hand.press(page, step + " .primary");
    }
    String demold = "form[action$='/demold']";
    assertFits(page);
    sign(hand, page, demold + " #by");
    hand.press(page, demold + " .primary");
    assertThat(page.url()).endsWith("/casting/pieces/Green");
  }

  private Page prove(Hand hand, Page page) {
    record(hand, page, "Green", "HARDENED", Map.of());
    record(hand, page, "Hardened", "DRIED", CONSTANT);
    record(hand, page, "Dry", "SEALED", Map.of());
    record(hand, page, "Damp", "DRIED", CONSTANT);
    record(hand, page, "Dry", "HELD_WATER", Map.of());
    record(hand, page, "Damp", "DRIED", CONSTANT);
    record(hand, page, "Dry", "SEEP_TEST", Map.of());
    record(hand, page, "SeepTesting", "HELD_WAX", Map.of());
    record(hand, page, "Dry", "WETTED", Map.of());
    record(hand, page, "Damp", "DRIED", CONSTANT);
    page.navigate(open.base() + "/casting/pieces/Dry");
    assertThat(page.locator("main").innerText()).contains("dry and wax-tight");
    List<Piece> pieces =
        open.studio.look(b -> b.pieces().list(PieceBook.Which.ALL, null, 10).items());
    assertThat(pieces)
        .singleElement()
        .satisfies(p -> assertThat(p.state().words()).isEqualTo("dry and wax-tight"));
    assertThat(outside).isEmpty();
    assertThat(complaints).isEmpty();
    return page;
  }

  private void record(Hand hand, Page page, String state, String step, Map<String, String> more) {
    page.navigate(open.base() + "/casting/pieces/" + state);
    assertFits(page);
    for (String field : List.of("#before_g", "#later_g", "#hours")) {
      if (more.containsKey(field)) {
        hand.write(page, field, more.getOrDefault(field, ""));
      }
    }
    sign(hand, page, "main #by");
    hand.press(page, "button[value=" + step + "]");
    assertThat(page.locator(".said").first().innerText()).as(step).contains("1 recorded");
  }

  /** The device remembers who works at it; initials are written where they are still asked for. */
  private static void sign(Hand hand, Page page, String field) {
    if (page.locator(field).count() > 0) {
      hand.write(page, field, "AB");
    }
  }

  private static void assertFits(Page page) {
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).as(page.url()).isLessThanOrEqualTo(390);
  }
}
