package pourwright.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.FirstOrder;
import pourwright.quantity.Sourced;

/**
 * The cost of one good piece line by line, what is left of its price in a channel, and what moves
 * that most. A result is a range when its inputs are. Maths: docs/models/cost.md 1, 2 and 5.
 *
 * @param inputs what it costs to make
 * @param channel where it is sold
 * @param price what is asked for it
 */
public record Slate(Inputs inputs, Channel channel, Sourced price) {

  /**
   * What goes into a piece.
   *
   * @param materials each material of one piece: name and money
   * @param steps each step of hands: name and minutes for one piece
   * @param wagePerHour wage
   * @param overheadPerHour overhead by the hour of hands
   * @param reject share of pieces that fail
   * @param moldPrice price of the mold
   * @param moldCasts casts it lasts, above 0
   * @param packaging what it is packed in
   */
  public record Inputs(
      List<Named> materials,
      List<Named> steps,
      Sourced wagePerHour,
      Sourced overheadPerHour,
      Sourced reject,
      Sourced moldPrice,
      Sourced moldCasts,
      Sourced packaging) {
    /** Copies the lists, checks that the mold lasts. */
    public Inputs {
      materials = List.copyOf(materials);
      steps = List.copyOf(steps);
      Check.positive("mold_casts", moldCasts.value());
    }
  }

  /** A value with its name. */
  public record Named(String name, Sourced value) {}

  /** A line of the slate: what, and how much money with its range. */
  public record Line(String name, Sourced money) {}

  /** How far the margin moves when an input is a tenth larger, and by its own uncertainty. */
  public record Mover(String name, double byTenPercent, double byItsRange) {}

  private List<Named> all() {
    List<Named> all = new ArrayList<>(inputs.materials);
    all.addAll(inputs.steps);
    all.add(new Named("wage per hour", inputs.wagePerHour));
    all.add(new Named("overhead per hour", inputs.overheadPerHour));
    all.add(new Named("failed pieces", inputs.reject));
    all.add(new Named("price of the mold", inputs.moldPrice));
    all.add(new Named("casts of the mold", inputs.moldCasts));
    all.add(new Named("packaging", inputs.packaging));
    all.add(new Named("price", price));
    return all;
  }

  /**
   * Materials, hands, overhead, mold, packaging before failures, from the values of {@link #all}.
   */
  private double[] parts(double[] x) {
    int m = inputs.materials.size();
    int s = inputs.steps.size();
    double materials = 0;
    for (int i = 0; i < m; i++) {
      materials += x[i];
    }
    double hours = 0;
    for (int i = m; i < m + s; i++) {
      hours += x[i] / 60;
    }
    int k = m + s;
    double mold = x[k + 3] / x[k + 4];
    return new double[] {materials, hours * x[k], hours * x[k + 1], mold, x[k + 5], x[k + 2]};
  }

  private double cost(double[] x) {
    double[] p = parts(x);
    return (p[0] + p[1] + p[2] + p[3] + p[4]) / (1 - p[5]);
  }

  private double margin(double[] x) {
    return channel.margin(cost(x), x[x.length - 1]);
  }

  private Sourced of(java.util.function.ToDoubleFunction<double[]> function) {
    return FirstOrder.of(all().stream().map(Named::value).toList(), function).value();
  }

  /** The lines of the cost; they add up to it. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    inputs.materials.forEach(m -> lines.add(new Line(m.name, m.value)));
    lines.add(new Line("hands", of(x -> parts(x)[1])));
    lines.add(new Line("overhead", of(x -> parts(x)[2])));
    lines.add(new Line("wear of the mold", of(x -> parts(x)[3])));
    lines.add(new Line("packaging", inputs.packaging));
    lines.add(new Line("failed pieces, carried by the good ones", of(x -> cost(x) * parts(x)[5])));
    return lines;
  }

  /** Cost of one good piece. */
  public Sourced cost() {
    return of(this::cost);
  }

  /** What is left of the price, in money. */
  public Sourced margin() {
    return of(this::margin);
  }

  /** What is left over the price. */
  public Sourced marginOfPrice() {
    return of(x -> margin(x) / x[x.length - 1]);
  }

  /** What is left over the cost. */
  public Sourced marginOfCost() {
    return of(x -> margin(x) / cost(x));
  }

  /** Hands on one good piece, in hours. */
  public double hoursOfHands() {
    double minutes = inputs.steps.stream().mapToDouble(s -> s.value.value()).sum();
    return minutes / 60 / (1 - inputs.reject.value());
  }

  /** What an hour of hands earns: the margin and the wage that is in the cost. */
  public double earnsPerHour() {
    return hoursOfHands() == 0
        ? Double.NaN
        : margin().value() / hoursOfHands() + inputs.wagePerHour.value();
  }

  /** What a day in the mold earns, where a piece keeps its mold for so many days. */
  public double earnsPerMoldDay(double moldDays) {
    double days = Check.positive("mold_days", moldDays) / (1 - inputs.reject.value());
    return margin().value() / days;
  }

  /** Inputs by how far they move the margin, the strongest first. */
  public List<Mover> movers() {
    List<Named> all = all();
    double[] at = all.stream().mapToDouble(n -> n.value.value()).toArray();
    double margin = margin(at);
    List<Mover> movers = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double[] more = at.clone();
      more[i] *= 1.1;
      double[] up = at.clone();
      up[i] = all.get(i).value.high();
      double[] down = at.clone();
      down[i] = all.get(i).value.low();
      movers.add(
          new Mover(
              all.get(i).name, margin(more) - margin, Math.abs(margin(up) - margin(down)) / 2));
    }
    movers.sort(Comparator.comparingDouble((Mover m) -> -Math.abs(m.byTenPercent)));
    return movers;
  }
}
