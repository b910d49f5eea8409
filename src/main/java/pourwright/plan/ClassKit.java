package pourwright.plan;

import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedMix;
import pourwright.quantity.Check;

/**
 * What a class needs: a kit for each head and some to spare, in whole kits. Each kit is mixed or
 * melted by itself, so what stays in a cup or pitcher is counted for each.
 *
 * @param of the class
 * @param kits kits to lay out
 * @param perHead what is in one kit
 * @param waterG mix water of one kit, in g; 0 where nothing is mixed
 * @param vessels vessels that stand ready before the class, one a kit; 0 where they are cast in it
 * @param needs all kits, and sealer or boxes for the pieces of the seats
 */
public record ClassKit(
    SeatClass of, int kits, Amounts perHead, double waterG, int vessels, Amounts needs) {
  /** Share of kits to spare: 10 %; house, common practice, no source. */
  public static final double SPARE = 0.10;

  /**
   * Kits for so many seats, rounded up to whole ones.
   *
   * @param spare share to spare, 0 to 1
   */
  public static int kits(int seats, double spare) {
    Check.between("spare", spare, 0, 1);
    return (int) Math.ceil(seats * (1 + spare) - 1e-9);
  }

  /**
   * The kits of a class.
   *
   * @throws pourwright.quantity.OutOfRange when a card or a material is missing
   */
  public static ClassKit of(SeatClass of, CardBook book, double spare) {
    int kits = kits(of.seats(), spare);
    ResolvedCandle candle = book.candle(of.design()).resolve(book);
    if (of.does() == SeatClass.Does.CAST) {
      ResolvedMix.Mixing one = candle.mix().mixing(candle.vessel().mixMl().value());
      Amounts needs = one.materials().times(kits).plus(candle.sealers().times(of.seats()));
      return new ClassKit(of, kits, one.materials(), one.waterG(), 0, needs);
    }
    Amounts one = candle.pour().melt(candle.netG().value()).materials().plus(candle.wicking());
    Amounts needs = one.times(kits).plus(candle.boxes(of.seats()));
    return new ClassKit(of, kits, one, 0, kits, needs);
  }
}
