package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;

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
