package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked out from the limits of Regulation (EC) 1272/2008 Annex I Tables 3.4.5 and 4.1.2. */
class NarrowerTest {
  private static Ingredient ranged(String name, double low, double high, String... classes) {
    return Ingredient.plain(name, 0, classes).at(new Share(low, high));
  }

  private static Blend blend(Ingredient... oil) {
    return new Blend(
        Regime.CLP, Audience.PUBLIC, List.of(oil), List.of(Ingredient.plain("wax", 1)));
  }

  /** At 8 % load 1 % of the candle is 12.5 % of the oil: under it H317 goes and EUH208 comes. */
  @Test
  void aNarrowerRangeUnderTheLimitWouldTakeTheStatementAway() {
    Blend blend =
        blend(
            ranged("linalool", 0.10, 0.15, "Skin Sens. 1B"),
            ranged("carrier", 0.80, 0.90),
            ranged("musk", 0.001, 0.002, "Aquatic Chronic 1"));
    List<Narrower.Change> changes = Narrower.of(blend, 0.08);
    assertThat(changes).hasSize(1);
    Narrower.Change change = changes.get(0);
    assertThat(change.substance()).isEqualTo("linalool");
    assertThat(change.atMost()).isCloseTo(0.1249, within(1e-9));
    assertThat(change.dropped()).contains("H317");
    assertThat(change.added()).contains("EUH208");
    assertThat(change.classes()).isEmpty();
  }

  /** 25 % of Σ 100 M C1 is 0.25 % of the candle, 3.125 % of the oil at 8 %. */
  @Test
  void theWatersLimitIsFoundThroughItsFactor() {
    Blend blend = blend(ranged("musk", 0.01, 0.05, "Aquatic Chronic 1"));
    Narrower.Change change = Narrower.of(blend, 0.08).get(0);
    assertThat(change.atMost()).isCloseTo(0.0312, within(1e-9));
    assertThat(change.dropped()).containsExactly("H412");
  }

  @Test
  void aRangeThatChangesNothingIsNotSpokenOf() {
    assertThat(Narrower.of(blend(ranged("linalool", 0.02, 0.10, "Skin Sens. 1B")), 0.08)).isEmpty();
    assertThat(Narrower.of(blend(Ingredient.plain("linalool", 0.15, "Skin Sens. 1B")), 0.08))
        .isEmpty();
  }

  @Test
  void whatIsPromisedComesTrue() {
    Blend blend =
        blend(
            ranged("linalool", 0.05, 0.30, "Skin Sens. 1B", "Skin Irrit. 2"),
            ranged("musk", 0.01, 0.20, "Aquatic Chronic 1"));
    String now = blend.at(0.08).print();
    for (Narrower.Change change : Narrower.of(blend, 0.08)) {
      List<Ingredient> oil =
          blend.oil().stream()
              .map(
                  i ->
                      i.name().equals(change.substance())
                          ? i.at(new Share(change.low(), change.atMost()))
                          : i)
              .toList();
      Classification then = new Blend(Regime.CLP, Audience.PUBLIC, oil, blend.rest()).at(0.08);
      assertThat(then.print()).isNotEqualTo(now);
      assertThat(then.classes()).isEqualTo(change.classes());
    }
  }
}
