package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Channel;
import pourwright.cost.PieceCost;

/** {@code price}: what a piece costs, what to ask for it, what is left. */
final class PriceComputation implements Computation {
  private static final List<String> WAYS =
      List.of("margin_of_price_fraction", "margin_of_cost_fraction", "price");

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double cost = cost(in);
    double fixed = in.numberOr("fixed_costs", 0, Range.NOT_NEGATIVE);
    Channel channel = channel(in);
    double price = price(in, channel, cost);
    double margin = channel.margin(cost, price);
    out.put("cost", cost);
    out.put("price", price);
    out.put("margin", margin);
    out.put("margin_of_price_fraction", price == 0 ? null : (Double) (margin / price));
    out.put("margin_of_cost_fraction", cost == 0 ? null : (Double) (margin / cost));
    Long units = Channel.breakEvenUnits(fixed, margin);
    out.put("break_even_units", units);
    ArrayNode warnings = out.withArray("warnings");
    if (margin < 0) {
      warnings.add("Every piece is sold at a loss: the price does not pay cost, fee and postage.");
    } else if (units == null) {
      warnings.add("Nothing is left of the price: the fixed costs are never paid.");
    }
  }

  private static double cost(JsonIn in) {
    return new PieceCost(
            in.number("materials", Range.NOT_NEGATIVE),
            in.numberOr("packaging", 0, Range.NOT_NEGATIVE),
            in.number("minutes", Range.NOT_NEGATIVE),
            in.number("hourly_wage", Range.NOT_NEGATIVE),
            in.numberOr("overhead_per_hour", 0, Range.NOT_NEGATIVE),
            in.numberOr("reject_fraction", 0, Range.FRACTION))
        .cost();
  }

  private static Channel channel(JsonIn in) {
    double postage = in.numberOr("postage", 0, Range.NOT_NEGATIVE);
    @Nullable JsonIn channel = in.objectOrNull("channel");
    if (channel == null) {
      return new Channel(0, 0, postage);
    }
    double fraction = channel.numberOr("fee_fraction", 0, Range.NOT_NEGATIVE);
    double fixed = channel.numberOr("fee_fixed", 0, Range.NOT_NEGATIVE);
    if (fraction >= 1) {
      throw channel.refuse(
          "fee_fraction", "a fee of the whole price leaves nothing", "6.5 % is written 0.065");
    }
    return new Channel(fraction, fixed, postage);
  }

  private static double price(JsonIn in, Channel channel, double cost) {
    List<String> given = WAYS.stream().filter(in::has).toList();
    if (given.size() != 1) {
      throw in.refuse("price", given.size() + " of " + WAYS + " are given", "give exactly one");
    }
    double value = in.number(given.get(0), Range.NOT_NEGATIVE);
    return switch (given.get(0)) {
      case "margin_of_price_fraction" -> channel.priceForMarginOfPrice(cost, value);
      case "margin_of_cost_fraction" -> channel.priceForMarginOfCost(cost, value);
      default -> value;
    };
  }
}
