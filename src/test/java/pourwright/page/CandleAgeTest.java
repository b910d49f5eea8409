package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finished candle is sold within a year, the oldest out first: house, hers to change. */
class CandleAgeTest {
  @Test
  void candlesThatWaitTooLongAreSaidInTheStockroom(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    Server server = TestStudio.open(workshop.desk, folder);
    try {
      workshop.candles("bollard-rain", "soft-a", workshop.vessels("bollard", 2), "", 0);
      Visitor visitor = new Visitor(server.port());
      assertThat(visitor.page("/stockroom").text()).doesNotContain("poured more than");
      workshop.clock.move(Duration.ofDays(366));
      workshop.candles("bollard-rain", "soft-a", workshop.vessels("bollard", 1), "", 0);
      assertThat(visitor.page("/stockroom").text())
          .contains("Bollard, Rain on slate: 2 candles were poured more than 365 days ago (house)");
      workshop.desk.studio().saveSetting.run(workshop.act(), "candle.sell-within-days", "540");
      assertThat(visitor.page("/stockroom").text()).doesNotContain("poured more than");
    } finally {
      server.close();
    }
  }
}
