package pourwright.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pourwright.cost.Valuation.Entry;

/** A history valued in two parts comes to what it comes to as a whole, to the cent. */
class ValuationGoesOnTest {
  @ParameterizedTest
  @EnumSource(Valuation.Method.class)
  void twoPartsAreWorthWhatTheWholeIs(Valuation.Method method) {
    Random random = new Random(11);
    for (int round = 0; round < 200; round++) {
      List<Entry> entries = entries(random);
      int cut = random.nextInt(entries.size() + 1);
      Valuation whole = Valuation.of(method, entries);
      Valuation first = Valuation.of(method, entries.subList(0, cut));
      Valuation both = first.continuedBy(entries.subList(cut, entries.size()));
      assertThat(both.stockAmount()).isEqualTo(whole.stockAmount());
      assertThat(both.stockMinor()).isEqualTo(whole.stockMinor());
      assertThat(first.issuedMinor() + both.issuedMinor()).isEqualTo(whole.issuedMinor());
      assertThat(first.continuedBy(List.of()).issued()).isEmpty();
    }
  }

  private static List<Entry> entries(Random random) {
    List<Entry> entries = new ArrayList<>();
    long there = 0;
    for (int i = 0; i < 30; i++) {
      if (there == 0 || random.nextInt(3) == 0) {
        long amount = 1L + random.nextInt(900);
        entries.add(new Entry.In(amount, random.nextInt(5000)));
        there += amount;
      } else {
        long amount = 1L + random.nextInt((int) there);
        entries.add(new Entry.Out(amount, "a batch"));
        there -= amount;
      }
    }
    return entries;
  }
}
