package pourwright.label;

import pourwright.quantity.Check;

/** The principal display panel: what of a package a buyer sees first (16 CFR 500.21(a)). */
public sealed interface Panel {
  /** Its area, mm². */
  double areaMm2();

  /**
   * A round package: 40 % of height times circumference, without rim, shoulder and foot.
   *
   * @param diameterMm greater than 0
   * @param heightMm greater than 0
   */
  record Cylinder(double diameterMm, double heightMm) implements Panel {
    /** Checks both lengths. */
    public Cylinder {
      Check.positive("diameter_mm", diameterMm);
      Check.positive("height_mm", heightMm);
    }

    @Override
    public double areaMm2() {
      return 0.4 * Math.PI * diameterMm * heightMm;
    }
  }

  /**
   * A package with a flat face: that face.
   *
   * @param widthMm greater than 0
   * @param heightMm greater than 0
   */
  record Rectangle(double widthMm, double heightMm) implements Panel {
    /** Checks both lengths. */
    public Rectangle {
      Check.positive("width_mm", widthMm);
      Check.positive("height_mm", heightMm);
    }

    @Override
    public double areaMm2() {
      return widthMm * heightMm;
    }
  }

  /**
   * Any other shape: 40 % of the whole surface.
   *
   * @param surfaceMm2 greater than 0
   */
  record OtherShape(double surfaceMm2) implements Panel {
    /** Checks the surface. */
    public OtherShape {
      Check.positive("surface_mm2", surfaceMm2);
    }

    @Override
    public double areaMm2() {
      return 0.4 * surfaceMm2;
    }
  }
}
