package pourwright.cost;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import pourwright.quantity.OutOfRange;

/**
 * What stock is worth and what left it cost, in whole minor units of one currency (cents). Nothing
 * is lost to rounding: what a layer cost is handed out as it is used up, and the last use takes
 * what is left, so that receipts always equal issues and stock to the cent. Maths:
 * docs/models/cost.md 3.
 */
public final class Valuation {
  private final Method method;
  private final Deque<Layer> layers = new ArrayDeque<>();
  private final List<Issued> issued = new ArrayList<>();

  /** How issues are valued; chosen once for the studio. */
  public enum Method {
    /** First in, first out. */
    FIFO,
    /** One average, moved by every receipt. */
    MOVING_AVERAGE
  }

  /** A line of the ledger that matters here, in the order of the ledger. */
  public sealed interface Entry {
    /** How much, in the ledger's small unit, above 0. */
    long amount();

    /** Came in for money; 0 for what was found at a count. */
    record In(long amount, long minor) implements Entry {
      /** Checks the ranges. */
      public In {
        positive(amount);
        if (minor < 0) {
          throw new OutOfRange("price", "a receipt for less than nothing", "give 0 or more");
        }
      }
    }

    /**
     * Went out.
     *
     * @param into what it went into: a batch, waste, a test, a sale
     */
    record Out(long amount, String into) implements Entry {
      /** Checks the range. */
      public Out {
        positive(amount);
      }
    }
  }

  /** An issue with its cost. */
  public record Issued(long amount, String into, long minor) {}

  private record Layer(long amount, long minor) {}

  private Valuation(Method method) {
    this.method = method;
  }

  private static void positive(long amount) {
    if (amount <= 0) {
      throw new OutOfRange("amount", "an entry of nothing", "give an amount above 0");
    }
  }

  /**
   * Values a whole history of one material.
   *
   * @throws OutOfRange when more goes out than is there
   */
  public static Valuation of(Method method, List<Entry> entries) {
    Valuation valuation = new Valuation(method);
    entries.forEach(valuation::enter);
    return valuation;
  }

  /**
   * What this stock is worth after later entries: the same as of the whole history, for what is
   * still there tells all that later entries need. The issues are those of the later entries alone.
   *
   * @throws OutOfRange when more goes out than is there
   */
  public Valuation continuedBy(List<Entry> later) {
    Valuation valuation = new Valuation(method);
    valuation.layers.addAll(layers);
    later.forEach(valuation::enter);
    return valuation;
  }

  private void enter(Entry entry) {
    if (entry instanceof Entry.In in) {
      receive(in);
    } else if (entry instanceof Entry.Out out) {
      issue(out);
    }
  }

  private void receive(Entry.In in) {
    if (method == Method.FIFO || layers.isEmpty()) {
      layers.addLast(new Layer(in.amount(), in.minor()));
      return;
    }
    Layer pool = layers.removeFirst();
    layers.addLast(
        new Layer(Math.addExact(pool.amount, in.amount()), Math.addExact(pool.minor, in.minor())));
  }

  private void issue(Entry.Out out) {
    if (out.amount() > stockAmount()) {
      throw new OutOfRange(
          "amount",
          "more goes out (" + out.amount() + ") than is there (" + stockAmount() + ")",
          "count the stock first");
    }
    long left = out.amount();
    long cost = 0;
    while (left > 0) {
      Layer first = layers.removeFirst();
      long take = Math.min(left, first.amount);
      long part = share(first, take);
      cost += part;
      left -= take;
      if (take < first.amount) {
        layers.addFirst(new Layer(first.amount - take, first.minor - part));
      }
    }
    issued.add(new Issued(out.amount(), out.into(), cost));
  }

  /** Cost of a part of a layer, half a cent up. */
  private static long share(Layer layer, long take) {
    if (take == layer.amount) {
      return layer.minor;
    }
    BigInteger twice =
        BigInteger.valueOf(layer.minor)
            .multiply(BigInteger.valueOf(take))
            .multiply(BigInteger.TWO)
            .add(BigInteger.valueOf(layer.amount));
    return twice
        .divide(BigInteger.valueOf(layer.amount).multiply(BigInteger.TWO))
        .min(BigInteger.valueOf(layer.minor))
        .longValueExact();
  }

  /** Every issue with its cost, in order. */
  public List<Issued> issued() {
    return List.copyOf(issued);
  }

  /** What is still there, in the small unit. */
  public long stockAmount() {
    return layers.stream().mapToLong(Layer::amount).sum();
  }

  /** What it is worth. */
  public long stockMinor() {
    return layers.stream().mapToLong(Layer::minor).sum();
  }

  /** What all issues cost. */
  public long issuedMinor() {
    return issued.stream().mapToLong(Issued::minor).sum();
  }

  /**
   * Shares a cost over good pieces so that the shares add up exactly: the first ones take the cents
   * that do not divide.
   *
   * @param good number of good pieces; failed ones are carried by them
   */
  public static List<Long> carriedBy(int good, long minor) {
    if (good < 1) {
      throw new OutOfRange("good", "no good piece carries the cost", "it is waste then");
    }
    List<Long> shares = new ArrayList<>();
    long rest = Math.floorMod(minor, (long) good);
    for (int i = 0; i < good; i++) {
      shares.add(Math.floorDiv(minor, (long) good) + (i < rest ? 1 : 0));
    }
    return shares;
  }
}
