package pourwright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;

/** First expired, first out (common practice, no source). */
class FirstExpiredFirstOutTest {
  private static final LocalDate TODAY = LocalDate.parse("2026-03-02");

  private static Shelf shelf(long id, long units, @Nullable LocalDate expires, boolean held) {
    Lot lot = new Lot(id, "powder", "P" + id, UnitKind.MASS, null, TODAY, null, expires, null, 1);
    return new Shelf(lot, new Amount(UnitKind.MASS, units), held);
  }

  @Provide
  Arbitrary<List<Shelf>> shelves() {
    Arbitrary<Shelf> one =
        Combinators.combine(
                Arbitraries.longs().between(0, 5_000),
                Arbitraries.integers().between(-10, 40).injectNull(0.3),
                Arbitraries.of(true, false, false))
            .as(
                (units, days, held) ->
                    shelf(0, units, days == null ? null : TODAY.plusDays(days), held));
    return one.list()
        .ofMaxSize(12)
        .map(
            list -> {
              List<Shelf> numbered = new ArrayList<>();
              for (Shelf s : list) {
                numbered.add(
                    shelf(numbered.size() + 1, s.onHand().units(), s.lot().expiresOn(), s.held()));
              }
              return numbered;
            });
  }

  @Property
  void nothingIsDrawnTwiceNorBelowZeroNorFromWhatIsHeldOrExpired(
      @ForAll("shelves") List<Shelf> shelves, @ForAll @LongRange(min = 0, max = 30_000) long want) {
    Amount wanted = new Amount(UnitKind.MASS, want);
    FirstExpiredFirstOut.Draw draw = FirstExpiredFirstOut.draw(shelves, wanted, TODAY);
    assertThat(draw.drawn().plus(draw.missing())).isEqualTo(wanted);
    assertThat(draw.missing().isNegative()).isFalse();
    HashSet<Long> lots = new HashSet<>();
    for (FirstExpiredFirstOut.Line line : draw.lines()) {
      assertThat(lots.add(line.lot())).isTrue();
      Shelf from = shelves.get((int) line.lot() - 1);
      assertThat(line.amount().isPositive()).isTrue();
      assertThat(line.amount()).isLessThanOrEqualTo(from.onHand());
      assertThat(from.isDrawable(TODAY)).isTrue();
    }
    long drawable =
        shelves.stream().filter(s -> s.isDrawable(TODAY)).mapToLong(s -> s.onHand().units()).sum();
    assertThat(draw.drawn().units()).isEqualTo(Math.min(want, drawable));
  }

  @Property
  void aLotIsTouchedOnlyWhenEveryEarlierOneIsUsedUp(
      @ForAll("shelves") List<Shelf> shelves, @ForAll @LongRange(min = 0, max = 30_000) long want) {
    FirstExpiredFirstOut.Draw draw =
        FirstExpiredFirstOut.draw(shelves, new Amount(UnitKind.MASS, want), TODAY);
    for (int i = 0; i + 1 < draw.lines().size(); i++) {
      FirstExpiredFirstOut.Line line = draw.lines().get(i);
      Shelf from = shelves.get((int) line.lot() - 1);
      assertThat(line.amount()).isEqualTo(from.onHand());
      LocalDate next = shelves.get((int) draw.lines().get(i + 1).lot() - 1).lot().expiresOn();
      LocalDate mine = from.lot().expiresOn();
      assertThat(next == null || (mine != null && !mine.isAfter(next))).isTrue();
    }
  }

  @Test
  void theLastGoodDayIsStillGood() {
    List<Shelf> shelves = List.of(shelf(1, 10, TODAY, false), shelf(2, 10, null, false));
    FirstExpiredFirstOut.Draw draw =
        FirstExpiredFirstOut.draw(shelves, new Amount(UnitKind.MASS, 4), TODAY);
    assertThat(draw.lines().get(0).lot()).isEqualTo(1);
    assertThat(
            FirstExpiredFirstOut.draw(shelves, new Amount(UnitKind.MASS, 4), TODAY.plusDays(1))
                .lines()
                .get(0)
                .lot())
        .isEqualTo(2);
  }

  /** House: an opened powder keeps 60 days; the sealed one is printed good for 200 more. */
  @Test
  void anOpenedPackWhoseDaysRunOutGoesBeforeASealedOneWithAnEarlierDate() {
    Lot sealed =
        new Lot(
            1,
            "m",
            "A",
            UnitKind.MASS,
            null,
            TODAY.minusDays(10),
            null,
            TODAY.plusDays(200),
            null,
            1);
    Lot opened =
        new Lot(
            2,
            "m",
            "B",
            UnitKind.MASS,
            null,
            TODAY.minusDays(90),
            TODAY.minusDays(50),
            TODAY.plusDays(300),
            null,
            1);
    List<Shelf> shelves =
        List.of(
            new Shelf(sealed, new Amount(UnitKind.MASS, 10), false),
            new Shelf(opened, new Amount(UnitKind.MASS, 10), false));
    ShelfLife life = new ShelfLife(270, 60);
    assertThat(LastGood.day(opened, life)).isEqualTo(TODAY.plusDays(10));
    Amount four = new Amount(UnitKind.MASS, 4);
    assertThat(FirstExpiredFirstOut.draw(shelves, four, TODAY, life).lines().get(0).lot())
        .isEqualTo(2);
    assertThat(FirstExpiredFirstOut.draw(shelves, four, TODAY).lines().get(0).lot()).isEqualTo(1);
  }
}
