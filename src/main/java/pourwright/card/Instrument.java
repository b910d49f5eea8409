package pourwright.card;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * A scale or a thermometer.
 *
 * @param measures what it measures, e.g. {@code mass} or {@code temperature}
 * @param resolution smallest step it shows, in the unit below
 * @param unit g, °C or mm
 * @param checkedOn day of the last check against a known weight or ice and boiling water
 * @param note anything worth reading
 */
public record Instrument(
    String code,
    String name,
    String measures,
    double resolution,
    String unit,
    @Nullable LocalDate checkedOn,
    @Nullable String note)
    implements Card {
  /** Checks the resolution. */
  public Instrument {
    Written.head("instrument", code, name);
    Check.positive("resolution", resolution);
  }

  @Override
  public CardKind kind() {
    return CardKind.INSTRUMENT;
  }
}
