package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.cost.Shares;
import pourwright.main.DemoCards;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Amount;

/** Deliveries as they are typed and as they stand in files, and what each line cost. */
class DeliveryTest {
  private static final Delivery.Words WORDS =
      new Delivery.Words(Locale.UK, "EUR", DemoCards.materials());

  private static Delivery.Read typed(String text) {
    return Delivery.typed(text, WORDS);
  }

  @Test
  void aTypedLineHasPacksPriceLotAndDay() {
    Delivery.Read read =
        typed("2 x 5 kg Soft plant wax A, 96.40, lot W-77, until 2027-05-31\n\n500 g marble-flour");
    assertThat(read.wrong()).isEmpty();
    Delivery.Line wax = read.delivery().lines().get(0);
    assertThat(wax.material().name()).isEqualTo("Soft plant wax A");
    assertThat(wax.amount()).isEqualTo(Amount.ofGrams(10_000));
    assertThat(wax.priceMinor()).isEqualTo(9640);
    assertThat(wax.lot()).isEqualTo("W-77");
    assertThat(wax.expires()).isEqualTo(LocalDate.of(2027, 5, 31));
    assertThat(read.delivery().lines().get(1).priceMinor()).isNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Soft plant wax A|does not begin with an amount",
        "5 kg moon dust|there is no material 'moon dust'",
        "5 kg scent|may be",
        "5 kg Soft plant wax A, 12 USD|is in USD and the studio keeps its books in EUR",
        "5 kg Soft plant wax A, until May|is not a day",
        "-5 kg Soft plant wax A|does not begin with an amount",
        "0 kg Soft plant wax A|above zero",
      })
  void aLineThatCannotBeReadIsNamedWithItsNumber(String line, String expected) {
    Delivery.Read read = typed("1 kg Soft plant wax A\n" + line);
    assertThat(read.wrong())
        .singleElement()
        .satisfies(
            w -> {
              assertThat(w.line()).isEqualTo(2);
              assertThat(w.sentence()).contains(expected);
            });
  }

  @Test
  void aSpreadsheetsTableIsReadWhateverItsDelimiter() {
    byte[] file =
        "\uFEFFItem;Size;Packs;Price;Lot\nSoft plant wax A;5 kg;2;96,40;W-77\n"
            .getBytes(StandardCharsets.UTF_8);
    CsvRows rows = CsvRows.read(file);
    Map<String, String> mapping =
        rows.mapping(
            Map.of(
                "material", List.of("item"),
                "amount", List.of("size"),
                "packs", List.of("packs"),
                "price", List.of("price"),
                "lot", List.of("lot")),
            Map.of());
    Delivery.Read read =
        Delivery.table(
            rows.byField(mapping),
            new Delivery.Words(Locale.GERMANY, "EUR", DemoCards.materials()));
    assertThat(read.wrong()).isEmpty();
    assertThat(read.delivery().lines())
        .singleElement()
        .satisfies(
            l -> {
              assertThat(l.amount()).isEqualTo(Amount.ofGrams(10_000));
              assertThat(l.priceMinor()).isEqualTo(9640);
            });
    assertThatThrownBy(() -> CsvRows.read(new byte[] {'P', 'K', 3, 4, 0, 0}))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("no text");
  }

  /** By hand: 60.00 and 40.00, shipping 9.99: by value 5.99 and 4.00, by weight of 1 and 3 kg. */
  @Test
  void shippingIsSharedByValueOrByWeightToTheCent() {
    Delivery delivery = typed("1 kg Soft plant wax A, 60.00\n3 kg marble-flour, 40.00").delivery();
    assertThat(delivery.costs(new Delivery.Terms(999, false, Delivery.Tax.AS_TYPED, 0)))
        .containsExactly(Optional.of(6599L), Optional.of(4400L));
    assertThat(delivery.costs(new Delivery.Terms(999, true, Delivery.Tax.AS_TYPED, 0)))
        .containsExactly(Optional.of(6250L), Optional.of(4749L));
    assertThat(delivery.costs(new Delivery.Terms(0, true, Delivery.Tax.ADD, 0.19)))
        .containsExactly(Optional.of(7140L), Optional.of(4760L));
    assertThat(delivery.costs(new Delivery.Terms(0, true, Delivery.Tax.TAKE_OUT, 0.25)))
        .containsExactly(Optional.of(4800L), Optional.of(3200L));
  }

  @Test
  void shippingThatCannotBeSharedSoIsSaid() {
    Delivery unpriced = typed("1 kg Soft plant wax A").delivery();
    assertThatThrownBy(
            () -> unpriced.costs(new Delivery.Terms(500, false, Delivery.Tax.AS_TYPED, 0)))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("no line has a price");
    assertThat(unpriced.costs(new Delivery.Terms(500, true, Delivery.Tax.AS_TYPED, 0)))
        .containsExactly(Optional.of(500L));
  }

  @Property(tries = 200)
  void sharesAddUpToTheCentAndNoneIsOffByMore(
      @ForAll @IntRange(max = 1_000_000) int minor,
      @ForAll @Size(min = 1, max = 12) List<@IntRange(max = 10_000) Integer> weights) {
    List<Double> asDoubles = weights.stream().map(Integer::doubleValue).toList();
    double all = asDoubles.stream().mapToDouble(Double::doubleValue).sum();
    if (all == 0) {
      return;
    }
    List<Long> shares = Shares.of(minor, asDoubles);
    assertThat(shares.stream().mapToLong(Long::longValue).sum()).isEqualTo(minor);
    for (int i = 0; i < shares.size(); i++) {
      assertThat(Math.abs(shares.get(i) - minor * asDoubles.get(i) / all)).isLessThanOrEqualTo(1);
    }
  }
}
