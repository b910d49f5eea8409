package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.CandleDesign;
import pourwright.card.WickPlan;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Drawers;

/** The simulation of a candle that was burnt is fitted to its tests, or it is said why not. */
class FitPageTest {

  @Test
  void aBurntCandleIsFittedOrItIsSaidWhyNotAndItsProofIsShown(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    press.prove(press.candles(2), 2, 4);
    press.prove(press.candles(1), 2, 4);
    Server server = TestStudio.open(press.desk, folder);
    try {
      Visitor visitor = new Visitor(server.port());
      String said = fit(visitor, press);
      boolean round = said.contains("Stands on 2 closed tests");
      boolean refused = said.contains("the axisymmetric solver needs a round cavity");
      assertThat(round || refused).as(said).isTrue();
      if (round) {
        assertThat(said)
            .contains("share of the heat that radiates", "The latest test was foretold to");
        assertThat(said)
            .contains("Fewer than three tests have read the wall: no temperature is told");
      }
      press.prove(press.candles(1), 2, 4);
      String calibrated = fit(visitor, press);
      if (round) {
        assertThat(calibrated)
            .contains("Stands on 3 closed tests")
            .containsPattern("at the warmest: wall -?\\d+ °C \\(-?\\d+ to -?\\d+\\), underside")
            .contains("from 3 tests that read the wall", "Underside K")
            .doesNotContain("Fewer than three tests")
            .doesNotContain("badge-good");
      }
      assertThat(visitor.get("/shelf/proof").body())
          .contains("proved for sale", "Your rule: at least 1 full life over");
      String advice =
          visitor.post("/shelf/next", "/shelf/next", Map.of("candle", press.candle.code())).body();
      assertThat(advice).contains("A chance is no proof", press.candle.wicks().wick());
    } finally {
      server.close();
    }
  }

  /** Two wicks in one vessel with one pour: three candles of one beside two of the other. */
  @Test
  void wicksStandSideBySideWithTheirRepeats(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    press.prove(press.candles(3), 1, 4);
    CandleDesign d = press.candle;
    String other = d.wicks().wick().equals("flat-braid-56") ? "flat-braid-41" : "flat-braid-56";
    press.save(
        Drawers.CANDLE,
        d.code(),
        new CandleDesign(
            d.code(),
            d.name(),
            d.vessel(),
            d.mix(),
            d.finish(),
            d.pour(),
            new WickPlan(
                other,
                d.wicks().count(),
                d.wicks().cutMm(),
                d.wicks().tab(),
                d.wicks().sticker(),
                d.wicks().positionsMm()),
            d.headspaceMm(),
            d.restDays(),
            d.piecesPerBox(),
            d.boxed(),
            d.note()));
    press.prove(press.candles(2), 1, 4);
    Server server = TestStudio.open(press.desk, folder);
    try {
      String page = new Visitor(server.port()).get("/shelf/wicks?candle=" + d.code()).body();
      assertThat(page)
          .contains("<td>" + d.wicks().wick() + "</td><td>1</td><td>3</td>")
          .contains("<td>" + other + "</td><td>1</td><td>2</td>")
          .contains("Burn rate of each wick", "Highest flame", "after Welch")
          .containsPattern("<svg class=\"dots\"[^>]*role=\"img\"");
      long dots = Pattern.compile("<circle").matcher(page).results().count();
      assertThat(dots).as("a dot for each candle in each picture").isGreaterThanOrEqualTo(15);
    } finally {
      server.close();
    }
  }

  private static String fit(Visitor visitor, PressStudio press) {
    return visitor
        .post(
            "/shelf/fit",
            "/shelf/fit",
            Map.of(
                "candle", press.candle.code(),
                "wax", "plant",
                "conductivity", "1.0",
                "density", "1900"))
        .body();
  }
}
