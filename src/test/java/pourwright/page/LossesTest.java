package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.page.plan.BuyDesk;
import pourwright.plan.OwnYield;
import pourwright.stock.Purchase;
import pourwright.stock.Purchasing;
import pourwright.work.AdvancePieces;
import pourwright.work.YieldReader;

/** What her own pieces tell of losses is said before a cast, and needs are reckoned with it. */
class LossesTest {
  @Test
  void herOwnYieldIsSaidByStepAndTakenIntoNeeds(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    // no pack has to be found here: what is needed is looked at
    Purchasing nothing = list -> new Purchase.NotToBeHad(0, "nothing", 1, 0);
    Site site = TestStudio.site(workshop.desk).and(new BuyDesk(workshop.desk, nothing));
    try (Server server = TestStudio.open(site, ServerSettings.onAnyPort("Test"), folder)) {
      Visitor visitor = new Visitor(server.port());
      assertThat(visitor.page("/casting/new").text())
          .contains(
              "12 good: cast 13, the house's yield is 95 % (demolding 97 %, sanding to proving 98 %).");
      List<Piece> vessels = workshop.vessels("bollard", 20);
      List<Long> bad = vessels.subList(0, 3).stream().map(Piece::id).toList();
      assertThat(
              workshop
                  .desk
                  .studio()
                  .advancePieces
                  .run(workshop.act(), AdvancePieces.Request.of(bad, PieceStep.SCRAPPED))
                  .isDone())
          .isTrue();
      workshop.candles("bollard-rain", "soft-a", vessels.subList(3, 20), "scent-rain", 30);
      OwnYield yield = workshop.desk.studio().look(YieldReader::of);
      assertThat(yield.finished()).isEqualTo(new OwnYield.Step(20, 17));
      assertThat(yield.poured()).isEqualTo(new OwnYield.Step(17, 17));
      int toCast = yield.toCast(12);
      assertThat(visitor.page("/casting/new").text())
          .contains("12 good: cast " + toCast + ", your yield is 85 % (demolding 100 %");
      assertThat(toCast).isEqualTo(14);
      workshop.order("A-1", "bollard-fig", 12, "shop");
      assertThat(visitor.page("/plan/buy").select("#losses + ul").text())
          .contains("12 good: cast 14, your yield is 85 %")
          .contains("12 good: pour 12, your yield is 100 %");
    }
  }
}
