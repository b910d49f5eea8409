package pourwright.work;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What is asked for each candle in each channel now, and what it costs, as the slate has it. */
public final class PriceList {
  private final Map<String, Map<String, Double>> prices = new HashMap<>();
  private final Map<String, Double> costs = new HashMap<>();
  private final String currency;

  private PriceList(String currency) {
    this.currency = currency;
  }

  /** The list of these books: prices written down, times the share that a channel asks. */
  public static PriceList of(Books books) {
    SlateBook slate = new SlateBook(books);
    PriceList list = new PriceList(slate.currency());
    Map<String, String> settings = books.settings().all();
    for (SlateBook.Terms terms : slate.terms()) {
      settings.forEach(
          (key, value) -> {
            if (key.startsWith("slate.price.")) {
              number(value)
                  .ifPresent(
                      shop ->
                          list.prices
                              .computeIfAbsent(key.substring(12), c -> new HashMap<>())
                              .put(terms.key(), shop * terms.ofShopPrice()));
            }
          });
    }
    settings.keySet().stream()
        .filter(key -> key.startsWith("slate.price."))
        .map(key -> key.substring(12))
        .forEach(
            candle ->
                slate
                    .of(candle, Optional.empty())
                    .ifPresent(laid -> list.costs.put(candle, laid.atShop().cost().value())));
    return list;
  }

  private static Optional<Double> number(String text) {
    try {
      return Optional.of(Double.valueOf(text)).filter(v -> v >= 0);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** The price of a candle in a channel; empty where none was written down. */
  public Optional<Double> in(String candle, String channel) {
    return Optional.ofNullable(prices.getOrDefault(candle, Map.of()).get(channel));
  }

  /** Cost of one good piece, for candles with a price. */
  public Optional<Double> cost(String candle) {
    return Optional.ofNullable(costs.get(candle));
  }

  /** The price as it is shown, or an empty string. */
  public String words(String candle, String channel) {
    return in(candle, channel)
        .map(p -> String.format(java.util.Locale.ROOT, "%.2f %s", p, currency))
        .orElse("");
  }
}
