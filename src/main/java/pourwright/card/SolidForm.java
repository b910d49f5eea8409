package pourwright.card;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Solid;

/**
 * A body between two outlines, of one outline along a free profile, or of a stack of unlike ones,
 * as it is written.
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
   * @param stack unlike outlines above the bottom one, from the bottom up; null for none
   */
  public record Shaping(double twistDegrees, List<Level> profile, @Nullable List<Storey> stack) {
    /** Checks the twist and copies. */
    public Shaping {
      double most = Solid.TWIST_MAX_DEGREES;
      Check.between("twist_degrees", twistDegrees, -most, most);
      profile = List.copyOf(profile);
      stack = stack == null ? null : List.copyOf(stack);
      if (stack != null && !stack.isEmpty() && !profile.isEmpty()) {
        throw new OutOfRange("stack", "a profile and a stack are both given", "give one of them");
      }
    }

    /** Without a stack. */
    public Shaping(double twistDegrees, List<Level> profile) {
      this(twistDegrees, profile, null);
    }

    /** The stack, empty for none. */
    List<Storey> storeys() {
      return stack == null ? List.of() : stack;
    }
  }

  /** A level of a stack: height above the bottom in mm, and the outline there. */
  public record Storey(double heightMm, OutlineForm outline) {}

  /** A level of a profile: height above the bottom in mm, and the outline's scale there. */
  public record Level(double heightMm, double scale) {}

  /** Checks the height, and that a profile ends at it. */
  public SolidForm {
    Check.between("height_mm", heightMm, 1, 2000);
    if (shaping != null) {
      List<Level> levels = shaping.profile();
      List<Storey> storeys = shaping.storeys();
      if (!levels.isEmpty()) {
        checkEnd("profile", levels.get(levels.size() - 1).heightMm(), top, heightMm);
      }
      if (!storeys.isEmpty()) {
        checkEnd("stack", storeys.get(storeys.size() - 1).heightMm(), top, heightMm);
      }
    }
  }

  private static void checkEnd(
      String what, double ends, @Nullable OutlineForm top, double heightMm) {
    if (top != null) {
      throw new OutOfRange(
          what, "a " + what + " and an outline at the rim are both given", "give one of them");
    }
    if (Math.abs(ends - heightMm) > 1e-6) {
      throw new OutOfRange(
          what,
          "the " + what + " ends at " + ends + " mm and the height is " + heightMm + " mm",
          "end the " + what + " at the height");
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
        !shaping.storeys().isEmpty()
            ? Solid.ofStack(sections(below, shaping.storeys()))
            : shaping.profile().isEmpty()
                ? new Solid(below, top == null ? below : top.outline(), heightMm)
                : Solid.ofProfile(below, levels(shaping.profile()));
    return shaping.twistDegrees() == 0 ? body : body.twisted(shaping.twistDegrees());
  }

  private static List<Solid.Section> sections(Outline below, List<Storey> storeys) {
    List<Solid.Section> sections = new ArrayList<>();
    sections.add(new Solid.Section(0, below));
    storeys.forEach(s -> sections.add(new Solid.Section(s.heightMm(), s.outline().outline())));
    return sections;
  }

  private static List<Solid.Level> levels(List<Level> profile) {
    return profile.stream().map(l -> new Solid.Level(l.heightMm(), l.scale())).toList();
  }

  /** The same body of another height, its profile or stack stretched with it. */
  SolidForm resized(OutlineForm below, @Nullable OutlineForm above, double height) {
    Shaping kept = shaping;
    if (kept != null && height != heightMm) {
      double by = height / heightMm;
      kept =
          new Shaping(
              kept.twistDegrees(),
              kept.profile().stream().map(l -> new Level(l.heightMm() * by, l.scale())).toList(),
              kept.storeys().stream()
                  .map(s -> new Storey(s.heightMm() * by, s.outline()))
                  .toList());
    }
    return new SolidForm(below, above, height, kept);
  }

  /** A body with straight walls. */
  public static SolidForm straight(OutlineForm outline, double heightMm) {
    return new SolidForm(outline, null, heightMm);
  }
}
