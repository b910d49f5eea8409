package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a piece was sold for: the price agreed for its order line, else the price list as it was on
 * the day, times the share of it that the channel asks. A price written down later changes no sale
 * before it.
 */
final class Prices {
  private static final double MINOR = 100;
  private static final Map<String, Double> HOUSE_SHARE = Map.of("wholesale", 0.5);

  private final Map<String, List<AccountBook.Had>> had = new HashMap<>();
  private final Map<Long, Long> agreed;

  Prices(Books books, Map<Long, Long> agreed) {
    this.agreed = agreed;
    for (String prefix : List.of("slate.price.", "slate.channel.")) {
      for (AccountBook.Had one : books.accounts().had(prefix)) {
        had.computeIfAbsent(one.key(), k -> new ArrayList<>()).add(one);
      }
    }
  }

  /** Cents for one piece sold by a deed; empty where no price was written down by then. */
  Optional<Long> of(long line, AccountBook.LineOf head, long deed) {
    Long price = agreed.get(line);
    if (price != null) {
      return Optional.of(price);
    }
    return listed(head.design(), head.channel(), deed);
  }

  /** The list price of a candle in a channel as it was when a deed was done. */
  Optional<Long> listed(String candle, String channel, long deed) {
    double share =
        value("slate.channel." + channel + ".share", deed)
            .orElseGet(() -> HOUSE_SHARE.getOrDefault(channel, 1.0));
    return value("slate.price." + candle, deed).map(p -> Math.round(p * share * MINOR));
  }

  private Optional<Double> value(String key, long deed) {
    String last = null;
    for (AccountBook.Had one : had.getOrDefault(key, List.of())) {
      if (one.deed() <= deed) {
        last = one.value();
      }
    }
    try {
      return last == null ? Optional.empty() : Optional.of(Double.valueOf(last));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
