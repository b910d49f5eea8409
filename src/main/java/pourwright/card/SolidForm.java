package pourwright.card;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.shape.Outline;
import pourwright.shape.Solid;

/**
 * A body between two outlines, as it is written.
 *
 * @param bottom the lower outline
 * @param top the upper outline, null where it is the same
 * @param heightMm from one to the other, in mm, above 0
 */
public record SolidForm(OutlineForm bottom, @Nullable OutlineForm top, double heightMm) {
  /** Checks the height. */
  public SolidForm {
    Check.between("height_mm", heightMm, 1, 2000);
  }

  /** The body that is written here. */
  public Solid solid() {
    Outline below = bottom.outline();
    return new Solid(below, top == null ? below : top.outline(), heightMm);
  }

  /** A body with straight walls. */
  public static SolidForm straight(OutlineForm outline, double heightMm) {
    return new SolidForm(outline, null, heightMm);
  }
}
