package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Hollow;

/**
 * A vessel: its outside, its cavity, and what was measured of it.
 *
 * @param outer the outside, foot to rim
 * @param cavity the inside, base to rim; its height is less than the outside's
 * @param castMl volume of mix in one piece as measured (the casting weighed, or the mold filled
 *     with water); null where the drawing is all there is
 * @param cavityMl volume to the rim as measured with water; null likewise
 * @param note anything worth reading
 */
public record Vessel(
    String code,
    String name,
    SolidForm outer,
    SolidForm cavity,
    @Nullable Sourced castMl,
    @Nullable Sourced cavityMl,
    @Nullable String note)
    implements Card {
  /** Checks that the cavity is shallower than the outside and that measures are above zero. */
  public Vessel {
    Written.head("vessel", code, name);
    if (cavity.heightMm() >= outer.heightMm()) {
      throw new OutOfRange(
          "cavity/height_mm",
          "the cavity of " + name + " is as deep as the vessel is high and leaves no base",
          "make the cavity shallower than " + outer.heightMm() + " mm");
    }
    if (castMl != null) {
      Check.positive("cast_ml", castMl.value());
    }
    if (cavityMl != null) {
      Check.positive("cavity_ml", cavityMl.value());
    }
  }

  /** The vessel as a body: outside, cavity, base. */
  public Hollow hollow() {
    return new Hollow(outer.solid(), cavity.solid());
  }

  /** Mix in one piece, in ml: as measured, else as drawn. */
  public Sourced mixMl() {
    return castMl != null ? castMl : drawnMix().volumeMl();
  }

  /** Cavity to the rim, in ml: as measured, else as drawn. */
  public Sourced holdsMl() {
    return cavityMl != null ? cavityMl : drawnCavity().volumeMl();
  }

  /** Mix in one piece by the drawing alone. */
  public Drawn drawnMix() {
    return Drawn.of(
        List.of(outer, cavity),
        bodies -> bodies.get(0).solid().volumeMl() - bodies.get(1).solid().volumeMl());
  }

  /** Cavity to the rim by the drawing alone. */
  public Drawn drawnCavity() {
    return Drawn.of(List.of(cavity), bodies -> bodies.get(0).solid().volumeMl());
  }

  /** Thickness of the base, in mm. */
  public double baseMm() {
    return outer.heightMm() - cavity.heightMm();
  }

  /** Inside of the cavity, wall and base, in m². */
  public double insideM2() {
    return hollow().insideMm2(cavity.heightMm()) * 1e-6;
  }

  /** Outside, wall, foot and rim, in m². */
  public double outsideM2() {
    return hollow().outsideMm2() * 1e-6;
  }

  @Override
  public CardKind kind() {
    return CardKind.VESSEL;
  }
}
