package pourwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Solid;

/**
 * A body between two outlines, or of one outline along a free profile, as it is written.
 *
 * @param bottom the lower outline; of a profile, the outline at scale 1
 * @param top the upper outline, null where it is the same or where there is a profile
 * @param heightMm from one to the other, in mm, above 0
 * @param shaping twist and free profile, null for none
 */
public record SolidForm(
    OutlineForm bottom, @Nullable OutlineForm top, double heightMm, @Nullable Shaping shaping) {

  /**
   * What a body has beside straight walls.
   *
   * @param twistDegrees by how much it turns from bottom to top, counterclockwise from above
   * @param profile levels from the bottom up; empty for none
   */
  public record Shaping(double twistDegrees, List<Level> profile) {
    /** Checks the twist and copies. */
    public Shaping {
      double most = Solid.TWIST_MAX_DEGREES;
      Check.between("twist_degrees", twistDegrees, -most, most);
      profile = List.copyOf(profile);
    }
  }

  /** A level of a profile: height above the bottom in mm, and the outline's scale there. */
  public record Level(double heightMm, double scale) {}

  /** Checks the height, and that a profile ends at it. */
  public SolidForm {
    Check.between("height_mm", heightMm, 1, 2000);
    if (shaping != null && !shaping.profile().isEmpty()) {
      List<Level> levels = shaping.profile();
      if (top != null) {
        throw new OutOfRange(
            "profile", "a profile and an outline at the rim are both given", "give one of them");
      }
      double ends = levels.get(levels.size() - 1).heightMm();
      if (Math.abs(ends - heightMm) > 1e-6) {
        throw new OutOfRange(
            "profile",
            "the profile ends at " + ends + " mm and the height is " + heightMm + " mm",
            "end the profile at the height");
      }
    }
  }

  /** A body without twist or profile. */
  public SolidForm(OutlineForm bottom, @Nullable OutlineForm top, double heightMm) {
    this(bottom, top, heightMm, null);
  }

  /** The body that is written here. */
  public Solid solid() {
    Outline below = bottom.outline();
    if (shaping == null) {
      return new Solid(below, top == null ? below : top.outline(), heightMm);
    }
    Solid body =
        shaping.profile().isEmpty()
            ? new Solid(below, top == null ? below : top.outline(), heightMm)
            : Solid.ofProfile(below, levels(shaping.profile()));
    return shaping.twistDegrees() == 0 ? body : body.twisted(shaping.twistDegrees());
  }

  private static List<Solid.Level> levels(List<Level> profile) {
    return profile.stream().map(l -> new Solid.Level(l.heightMm(), l.scale())).toList();
  }

  /** The same body of another height, its profile stretched with it. */
  SolidForm resized(OutlineForm below, @Nullable OutlineForm above, double height) {
    Shaping kept = shaping;
    if (kept != null && height != heightMm) {
      double by = height / heightMm;
      kept =
          new Shaping(
              kept.twistDegrees(),
              kept.profile().stream().map(l -> new Level(l.heightMm() * by, l.scale())).toList());
    }
    return new SolidForm(below, above, height, kept);
  }

  /** A body with straight walls. */
  public static SolidForm straight(OutlineForm outline, double heightMm) {
    return new SolidForm(outline, null, heightMm);
  }
}
