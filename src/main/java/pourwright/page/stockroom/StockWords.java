package pourwright.page.stockroom;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.material.UnitKind;
import pourwright.page.Desk;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Unit;
import pourwright.stock.Amount;
import pourwright.stock.LastGood;
import pourwright.stock.Lot;

/** Amounts and days of the stockroom, as they are typed and shown. */
final class StockWords {
  /** House: a last good day is said when it is so near. */
  static final int SOON_DAYS = 30;

  private static final double KILO = 1000;

  private StockWords() {}

  /** An amount as a person says it: {@code 1.25 kg}, {@code 340 g}, {@code 24 pcs}. */
  static String amount(Amount amount, Locale locale) {
    double value = amount.inUsualUnit();
    boolean large = amount.kind() != UnitKind.COUNT && Math.abs(value) >= KILO;
    String unit = amount.usualUnit();
    if (large) {
      unit = amount.kind() == UnitKind.MASS ? "kg" : "l";
    }
    DecimalFormat format =
        new DecimalFormat(
            large ? "#,##0.###" : "#,##0.#", DecimalFormatSymbols.getInstance(locale));
    return format.format(large ? value / KILO : value) + " " + unit;
  }

  /** The unit a number has that is typed without one. */
  static String unit(Amount amount, Desk desk) {
    return amount.kind() == UnitKind.MASS ? desk.units().mass() : amount.usualUnit();
  }

  /** Reads an amount of a kind; without a unit it is in hers, or else in the usual one. */
  static Amount read(String text, UnitKind kind, Desk desk) {
    return switch (kind) {
      case MASS -> Amount.of(desk.units().readMass(text));
      case VOLUME ->
          new Amount(UnitKind.VOLUME, desk.quantities().volume(text, Unit.MILLILITRE).nanolitres());
      case COUNT -> Amount.ofPieces(pieces(text));
    };
  }

  private static long pieces(String text) {
    String plain = text.replaceAll("(?i)\\s*(pcs|pieces|pc)\\.?$", "").strip();
    try {
      return Long.parseLong(plain);
    } catch (NumberFormatException e) {
      throw new OutOfRange("amount", "'" + text + "' is not a whole number of pieces", "e.g. 24");
    }
  }

  /** The last good day: as printed, or worked out from the shelf life, whichever is earlier. */
  static @Nullable LocalDate lastGoodDay(Lot lot, Material material) {
    return LastGood.day(lot, material.shelfLife());
  }

  /** What there is to say about a last good day; empty when it is far off or not known. */
  static String notice(@Nullable LocalDate last, LocalDate today) {
    if (last == null) {
      return "";
    }
    long days = ChronoUnit.DAYS.between(today, last);
    if (days < 0) {
      return "past its last good day by " + Counted.of(-days, "day", "days");
    }
    return days <= SOON_DAYS ? Counted.of(days, "day left", "days left") : "";
  }
}
