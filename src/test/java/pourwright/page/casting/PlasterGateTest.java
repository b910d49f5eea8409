package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.card.CandleDesign;
import pourwright.card.MixCard;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;
import pourwright.page.OpenStudio;
import pourwright.quantity.Sourced;
import pourwright.work.BeginPour;
import pourwright.work.BurnTest;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.Proving;
import pourwright.work.Reason;
import pourwright.work.RunBurnTest;

/** A vessel of plaster gets no flame before a wall was measured in a burn test that passed. */
class PlasterGateTest {
  private static final String CANDLE = "plaster-rain";

  private OpenStudio open;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    open.save(
        Drawers.MATERIAL,
        "plaster",
        new Material(
            "plaster",
            "Plaster",
            MaterialKind.POWDER,
            UnitKind.MASS,
            Map.of(
                "particle_density_g_per_ml", Sourced.typical(2.63, 0.01),
                "cement_fraction", Sourced.typical(0, 0)),
            ShelfLife.KEEPS,
            null));
    MixCard grey =
        open.studio.look(b -> b.cards().current(Drawers.MIX, "grey")).orElseThrow().body();
    MixCard.Ratio ratio = new MixCard.Ratio(MixCard.By.MASS, 1, 0.6);
    open.save(
        Drawers.MIX,
        "pure",
        new MixCard(
            "pure",
            "Pure",
            "plaster",
            ratio,
            List.of(),
            grey.losses(),
            grey.times(),
            "white",
            null));
    CandleDesign rain =
        open.studio
            .look(b -> b.cards().current(Drawers.CANDLE, "bollard-rain"))
            .orElseThrow()
            .body();
    open.save(
        Drawers.CANDLE,
        CANDLE,
        new CandleDesign(
            CANDLE,
            "Plaster rain",
            rain.vessel(),
            "pure",
            rain.finish(),
            rain.pour(),
            rain.wicks(),
            rain.headspaceMm(),
            rain.restDays(),
            rain.piecesPerBox(),
            rain.boxed(),
            null));
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private Outcome<Batch> pour(int count, boolean forTest) {
    return open.studio.beginPour.run(
        open.act(),
        new BeginPour.Request(List.of(new BeginPour.Of(CANDLE, count)), 0, null, forTest));
  }

  private List<String> missing(String candle) {
    return open.studio.look(b -> new Proving(b).missing(candle, 1));
  }

  private void passedTest(@Nullable Double wallC) {
    RunBurnTest.Request request =
        new RunBurnTest.Request(
            CANDLE, 1, "house", "the wall", List.of(new RunBurnTest.NewSample("a", null)));
    long test = open.studio.burnTests.begin(open.act(), request).made().id();
    long sample = open.studio.look(b -> b.burns().samples(test)).get(0).id();
    long cycle = open.studio.burnTests.light(open.act(), test, sample).made().id();
    open.studio.burnTests.look(open.act(), cycle, look(wallC)).made();
    open.studio.burnTests.putOut(open.act(), cycle, "self_extinguished").made();
    open.studio.burnTests.close(open.act(), test, "pass", "every look inside").made();
  }

  @Test
  void aPourOfPlasterIsRefusedUntilAWallWasMeasured() {
    Outcome<Batch> refused = pour(1, false);
    assertThat(refused).isInstanceOf(Outcome.Refused.class);
    assertThat(((Outcome.Refused<Batch>) refused).reason())
        .isEqualTo(Reason.VESSEL_IS_NOT_PROVED_TIGHT);
    assertThat(((Outcome.Refused<Batch>) refused).sentence()).contains("no wall temperature");
    assertThat(pour(7, true)).isInstanceOf(Outcome.Refused.class);
    assertThat(pour(2, true).made().plan().pieces()).isEqualTo(2);
    passedTest(null);
    assertThat(pour(1, false)).isInstanceOf(Outcome.Refused.class);
    passedTest(44.0);
    assertThat(pour(1, false).made().plan().pieces()).isEqualTo(1);
  }

  @Test
  void theProofAsksForItAndAHotWallFailsIt() {
    assertThat(missing(CANDLE)).anyMatch(m -> m.contains("no wall temperature was measured"));
    passedTest(57.0);
    assertThat(missing(CANDLE)).anyMatch(m -> m.contains("57 °C"));
    assertThat(pour(1, false)).isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void aCandleOfCementIsAskedForNothingOfTheKind() {
    assertThat(missing("bollard-rain")).noneMatch(m -> m.contains("plaster"));
    assertThat(open.visitor().page("/pouring").select("input[name=for_test]")).hasSize(1);
  }

  private static BurnTest.Look look(@Nullable Double wallC) {
    return new BurnTest.Look(
        60, 480.0, 30.0, 50.0, 50.0, 8.0, wallC, 31.0, "none", "none", null, null, false, false,
        false, "");
  }
}
