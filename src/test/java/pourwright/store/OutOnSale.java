package pourwright.store;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.order.Order;
import pourwright.order.OrderState;
import pourwright.work.LeaveWithShop;
import pourwright.work.MarketDay;
import pourwright.work.Outcome;

/** Candles that are out for sale in a random history: on a stall, or left with a shop. */
final class OutOnSale {
  private OutOnSale() {}

  private static List<Order> out(RandomYear year, String channel) {
    return year
        .bench
        .studio
        .look(b -> b.orders().list(OrderState.PICKED, null, 50))
        .items()
        .stream()
        .filter(o -> o.channel().equals(channel))
        .toList();
  }

  private static Map<Long, Integer> some(RandomYear year, Order order) {
    Map<Long, Integer> some = new TreeMap<>();
    for (long line : year.bench.studio.look(b -> b.orders().lineIds(order.number())).values()) {
      some.put(line, year.random.nextInt(2));
    }
    return some;
  }

  /** A stall is packed or counted back. */
  static Outcome<?> market(RandomYear year, String name) {
    List<Order> out = out(year, MarketDay.CHANNEL);
    if (out.isEmpty() || year.random.nextBoolean()) {
      return year.bench.studio.market.pack(
          Bench.act(),
          new MarketDay.Pack(
              name,
              year.bench.studio.today(),
              Map.of("rain", 1 + year.random.nextInt(2)),
              year.random.nextInt(2) * 5000L));
    }
    Order market = year.any(out);
    return year.bench.studio.market.countBack(
        Bench.act(),
        new MarketDay.Home(market.number(), some(year, market), List.of(), 2400L, 0, null, "dry"));
  }

  /** Candles are left with a shop, or it tells what it sold and gives some back. */
  static Outcome<?> shop(RandomYear year, String name) {
    List<Order> out = out(year, LeaveWithShop.CHANNEL);
    if (out.isEmpty() || year.random.nextInt(3) == 0) {
      return year.bench.studio.shops.leave(
          Bench.act(),
          new LeaveWithShop.Leave(
              name, year.bench.studio.today(), Map.of("rain", 1 + year.random.nextInt(3))));
    }
    Order order = year.any(out);
    return year.bench.studio.shops.told(
        Bench.act(),
        new LeaveWithShop.Told(
            order.number(), some(year, order), some(year, order), List.of(), null, 900L));
  }
}
