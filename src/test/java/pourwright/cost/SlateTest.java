package pourwright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pourwright.cost.Slate.Inputs;
import pourwright.cost.Slate.Named;
import pourwright.quantity.Origin;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

class SlateTest {
  private static Sourced exact(double value) {
    return Sourced.exact(value, Origin.MEASURED_HERE);
  }

  private static Slate slate(double waxUncertainty) {
    Inputs inputs =
        new Inputs(
            List.of(
                new Named("wax", Sourced.measured(2.4, waxUncertainty)),
                new Named("fragrance", exact(1.6))),
            List.of(new Named("cast", exact(12)), new Named("pour", exact(9))),
            exact(18),
            exact(4),
            exact(0.08),
            exact(30),
            exact(60),
            exact(1.2));
    return new Slate(inputs, new Channel(0.065, 0.2, 0), exact(28));
  }

  /** By hand: (4 + 1.2 + 0.5 + 21/60·22)/0.92 = 14.5652. */
  @Test
  void theCostOfAPieceCarriesTheFailedOnes() {
    Slate slate = slate(0);
    assertThat(slate.cost().value()).isCloseTo(13.4 / 0.92, within(1e-12));
    double lines = slate.lines().stream().mapToDouble(l -> l.money().value()).sum();
    assertThat(lines).isCloseTo(slate.cost().value(), within(1e-12));
    PieceCost same = new PieceCost(4 + 0.5, 1.2, 21, 18, 4, 0.08);
    assertThat(same.cost()).isCloseTo(slate.cost().value(), within(1e-12));
    assertThat(same.failures()).isCloseTo(slate.lines().get(6).money().value(), within(1e-12));
  }

  @Test
  void aCostIsARangeWhenAnInputIs() {
    assertThat(slate(0).cost().isExact()).isTrue();
    Sourced cost = slate(0.1).cost();
    assertThat(cost.high() - cost.low()).isCloseTo(2 * 0.24 / 0.92, within(1e-9));
  }

  @Test
  void marginSaysOfPriceOrOfCost() {
    Slate slate = slate(0);
    double margin = 28 * 0.935 - 0.2 - 13.4 / 0.92;
    assertThat(slate.margin().value()).isCloseTo(margin, within(1e-12));
    assertThat(slate.marginOfPrice().value()).isCloseTo(margin / 28, within(1e-12));
    assertThat(slate.marginOfCost().value()).isCloseTo(margin / (13.4 / 0.92), within(1e-12));
    double hours = 21.0 / 60 / 0.92;
    assertThat(slate.earnsPerHour()).isCloseTo(margin / hours + 18, within(1e-9));
    assertThat(slate.earnsPerMoldDay(2)).isCloseTo(margin / (2 / 0.92), within(1e-9));
  }

  @Test
  void thePriceMovesTheMarginMostAndTheWageNext() {
    List<Slate.Mover> movers = slate(0.1).movers();
    assertThat(movers.get(0).name()).isEqualTo("price");
    assertThat(movers.get(0).byTenPercent()).isCloseTo(2.8 * 0.935, within(1e-9));
    assertThat(movers.get(1).name()).isEqualTo("wage per hour");
    assertThat(movers.stream().filter(m -> m.byItsRange() > 1e-12))
        .singleElement()
        .extracting(Slate.Mover::name)
        .isEqualTo("wax");
  }

  @Property
  void aPriceForAMarginLeavesThatMargin(
      @ForAll @DoubleRange(min = 0, max = 200) double cost,
      @ForAll @DoubleRange(min = 0, max = 0.4) double fee,
      @ForAll @DoubleRange(min = 0, max = 0.5) double margin) {
    Channel channel = new Channel(fee, 0.25, 3.5);
    double ofPrice = channel.priceForMarginOfPrice(cost, margin);
    assertThat(channel.margin(cost, ofPrice)).isCloseTo(margin * ofPrice, within(1e-9));
    double ofCost = channel.priceForMarginOfCost(cost, margin);
    assertThat(channel.margin(cost, ofCost)).isCloseTo(margin * cost, within(1e-9));
  }

  /** The textbook's definition, fixed costs over what a unit leaves: 1000/(20 − 12) = 125. */
  @Test
  void breakEvenIsFixedCostsOverTheMargin() {
    // OpenStax, Principles of Accounting, Volume 2: Managerial Accounting (2019), 3.2, from memory:
    // fixed 18 000, price 100, variable 20 a unit: 225 units
    assertThat(Channel.breakEvenUnits(18_000, 100 - 20)).isEqualTo(225);
    assertThat(Channel.breakEvenUnits(1000, 8)).isEqualTo(125);
    assertThat(Channel.breakEvenUnits(1001, 8)).isEqualTo(126);
    assertThat(Channel.breakEvenUnits(0, -3)).isZero();
    assertThat(Channel.breakEvenUnits(1000, 0)).isNull();
  }

  @Test
  void aFeeOfTheWholePriceIsRefused() {
    assertThatThrownBy(() -> new Channel(1, 0, 0)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> new Channel(0.6, 0, 0).priceForMarginOfPrice(10, 0.4))
        .isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> new PieceCost(1, 1, 1, 1, 1, 1)).isInstanceOf(OutOfRange.class);
  }

  /** Handbook compliance, check value 48. */
  @Test
  void aParcelIsChargedByTheLargerOfWeightAndSize() {
    assertThat(Parcel.pounds(new double[] {12, 10, 8}, 3, 139, 0)).isEqualTo(7);
    assertThat(Parcel.pounds(new double[] {12, 10, 8}, 3, 166, 1728)).isEqualTo(3);
    assertThat(Parcel.kilograms(new double[] {30, 25, 20}, 1.4, 5000)).isEqualTo(3.0);
    assertThat(Parcel.postage(3, List.of(new Parcel.Rate(2, 4.5), new Parcel.Rate(5, 6.9))))
        .isEqualTo(6.9);
  }

  /**
   * The usual encyclopedia example of the newsvendor (from memory): price 7, cost 5, demand evenly
   * between 50 and 80 gives 58.57; normal with mean 50 and deviation 20 gives about 38.7.
   */
  @Test
  void theEncyclopediasNewsvendor() {
    StallStock stall = new StallStock(7, 5, 0);
    assertThat(stall.forEvenDemand(50, 80)).isCloseTo(58.571, within(1e-3));
    assertThat(stall.forNormalDemand(50, 20)).isCloseTo(38.68, within(0.02));
  }

  /**
   * A widely set exercise: cost 39, price 59, clearance 30, ratio 20/29; even between 350 and 620:
   * 536; normal 485 ± 50: about 510.
   */
  @Test
  void anExerciseWithAClearancePrice() {
    StallStock stall = new StallStock(59, 39, 30);
    assertThat(stall.ratio()).isCloseTo(20.0 / 29, within(1e-12));
    assertThat(stall.forEvenDemand(350, 620)).isCloseTo(536.2, within(0.05));
    assertThat(stall.forNormalDemand(485, 50)).isCloseTo(509.7, within(0.3));
    assertThat(stall.forPastDays(List.of(4.0, 9.0, 6.0, 7.0, 5.0, 8.0, 10.0))).isEqualTo(8);
  }
}
