package pourwright.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What can happen to a vessel or candle, and in which order. */
class PieceLifeTest {
  private static final Instant MONDAY = Instant.parse("2026-03-02T08:00:00Z");

  private static PieceEvent event(int id, PieceStep step, @Nullable Grade grade) {
    boolean pour = step == PieceStep.POURED;
    boolean pick = step == PieceStep.PICKED;
    return new PieceEvent(
        id,
        1,
        step,
        MONDAY.plusSeconds(id),
        pour ? 9L : null,
        pick ? 4L : null,
        grade,
        pour ? "rain" : null,
        id);
  }

  private static PieceLife.Told told(PieceStep... steps) {
    List<PieceEvent> events = new ArrayList<>();
    for (PieceStep step : steps) {
      events.add(event(events.size() + 1, step, step == PieceStep.GRADED ? Grade.PLANTER : null));
    }
    return PieceLife.told(events);
  }

  private static PieceState state(PieceStep... steps) {
    PieceLife.Told told = told(steps);
    assertThat(told).isInstanceOf(PieceLife.Told.Life.class);
    return ((PieceLife.Told.Life) told).life().state();
  }

  private static String broken(PieceStep... steps) {
    PieceLife.Told told = told(steps);
    assertThat(told).isInstanceOf(PieceLife.Told.Broken.class);
    return ((PieceLife.Told.Broken) told).sentence();
  }

  @Test
  void aVesselGoesFromGreenToWaxTightToCandle() {
    PieceState state =
        state(
            PieceStep.CAST,
            PieceStep.HARDENED,
            PieceStep.DRIED,
            PieceStep.SEALED,
            PieceStep.DRIED,
            PieceStep.HELD_WATER,
            PieceStep.DRIED,
            PieceStep.SEEP_TEST,
            PieceStep.HELD_WAX,
            PieceStep.POURED,
            PieceStep.RESTING,
            PieceStep.RESTED);
    assertThat(state).isInstanceOf(PieceState.Rested.class);
    assertThat(PieceState.candleOf(state)).contains("rain");
  }

  @Test
  void wettingAWaxTightVesselBarsPouringUntilItIsDryAgain() {
    PieceStep[] proved = {
      PieceStep.CAST, PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX
    };
    assertThat(state(proved).tightness()).isEqualTo(Tightness.WAX);
    assertThat(broken(with(proved, PieceStep.WETTED, PieceStep.POURED))).contains("poured");
    assertThat(state(with(proved, PieceStep.WETTED, PieceStep.DRIED)).tightness())
        .isEqualTo(Tightness.WAX);
    assertThat(state(with(proved, PieceStep.WETTED, PieceStep.DRIED, PieceStep.POURED)))
        .isInstanceOf(PieceState.Poured.class);
  }

  private static PieceStep[] with(PieceStep[] before, PieceStep... more) {
    List<PieceStep> all = new ArrayList<>(List.of(before));
    all.addAll(List.of(more));
    return all.toArray(PieceStep[]::new);
  }

  @Test
  void aGreenOrDampVesselIsNeverPoured() {
    assertThat(broken(PieceStep.CAST, PieceStep.POURED)).contains("green");
    assertThat(broken(PieceStep.CAST, PieceStep.HARDENED, PieceStep.POURED)).contains("hardened");
  }

  @Test
  void aNewCoatTakesAwayWhatWasProvedBefore() {
    assertThat(
            state(
                    PieceStep.CAST,
                    PieceStep.HARDENED,
                    PieceStep.DRIED,
                    PieceStep.SEEP_TEST,
                    PieceStep.HELD_WAX,
                    PieceStep.SEALED,
                    PieceStep.DRIED)
                .tightness())
        .isEqualTo(Tightness.NONE);
  }

  @Test
  void aPlanterTakesNoWick() {
    assertThat(
            broken(
                PieceStep.CAST,
                PieceStep.HARDENED,
                PieceStep.DRIED,
                PieceStep.GRADED,
                PieceStep.POURED))
        .contains("planter");
  }

  @Test
  void whatIsGoneStaysGoneUnlessItComesBackFromABuyer() {
    PieceStep[] sold = {PieceStep.CAST, PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SOLD};
    assertThat(broken(with(sold, PieceStep.DRIED))).contains("gone");
    assertThat(state(with(sold, PieceStep.CAME_BACK))).isInstanceOf(PieceState.CameBack.class);
    assertThat(broken(PieceStep.CAST, PieceStep.SCRAPPED, PieceStep.CAME_BACK)).contains("gone");
  }

  @Property
  void whateverHappensAPouredCandleWasDryTheMomentBefore(@ForAll List<PieceStep> steps) {
    PieceLife life = PieceLife.begunBy(event(1, PieceStep.CAST, null));
    int id = 1;
    for (PieceStep step : steps) {
      id++;
      PieceState before = life.state();
      Grade grade = step == PieceStep.GRADED ? Grade.SECOND : null;
      Move move = life.after(event(id, step, grade));
      if (move instanceof Move.Moved moved) {
        if (moved.state() instanceof PieceState.Poured && step == PieceStep.POURED) {
          assertThat(before).isInstanceOf(PieceState.Dry.class);
        }
        life = new PieceLife(moved.state(), grade == null ? life.grade() : grade);
      } else {
        assertThat(((Move.Barred) move).sentence()).isNotBlank();
      }
    }
  }
}
