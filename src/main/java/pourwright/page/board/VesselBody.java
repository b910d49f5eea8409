package pourwright.page.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import pourwright.shape.Hollow;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.Solid;

/**
 * A vessel as rings of points for turning it on the screen: {@code outer rings|cavity rings}, rings
 * apart by semicolons, each {@code height:x,y x,y …} in millimetres above the foot and about the
 * axis. Ring by ring the points belong to one another.
 */
final class VesselBody {
  private static final double STEP = Math.PI / 36;
  private static final double TURN = Math.PI / 30;

  private VesselBody() {}

  static String of(Hollow vessel) {
    return rings(vessel.outer(), 0) + "|" + rings(vessel.cavity(), vessel.baseMm());
  }

  private static String rings(Solid solid, double lift) {
    StringBuilder rings = new StringBuilder();
    double[] angles = angles(solid.bottom());
    boolean star = solid.bottom().isStar() && solid.top().isStar();
    double turn = solid.twistRadians();
    for (double z : levels(solid)) {
      rings.append(rings.isEmpty() ? "" : ";").append(number(z + lift)).append(':');
      double turned = turn * z / solid.heightMm();
      if (star) {
        for (int i = 0; i < angles.length; i++) {
          double angle = angles[i] + turned;
          add(rings, i, Point.polar(solid.radiusMm(angle, z), angle));
        }
      } else {
        List<Point> section = solid.sectionAt(z, 0.2);
        for (int i = 0; i < section.size(); i++) {
          add(rings, i, section.get(i));
        }
      }
    }
    return rings.toString();
  }

  private static void add(StringBuilder rings, int index, Point point) {
    rings.append(index == 0 ? "" : " ").append(number(point.xMm())).append(',');
    rings.append(number(point.yMm()));
  }

  private static String number(double mm) {
    String text = String.format(Locale.ROOT, "%.1f", mm);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static List<Double> levels(Solid solid) {
    List<Double> knees = solid.kneesMm();
    TreeSet<Double> levels = new TreeSet<>(knees);
    int most = solid.isStraight() ? 1 : 6;
    for (int i = 1; i < knees.size(); i++) {
      double low = knees.get(i - 1);
      double high = knees.get(i) - low;
      double turns = Math.abs(solid.twistRadians()) * high / solid.heightMm() / TURN;
      int parts = Math.max(knees.size() > 8 ? 1 : most, Math.min(60, (int) Math.ceil(turns)));
      for (int j = 1; j < parts; j++) {
        levels.add(low + high * j / parts);
      }
    }
    return new ArrayList<>(levels);
  }

  /** The outline's corners and crests, with even steps between them. */
  private static double[] angles(Outline outline) {
    List<Double> angles = new ArrayList<>();
    if (!outline.isStar()) {
      return new double[0];
    }
    double[] ends = outline.smoothBetween();
    int least = ends.length > 24 ? 3 : 1;
    for (int i = 1; i < ends.length; i++) {
      double gap = ends[i] - ends[i - 1];
      int parts = gap < 1e-6 ? 0 : Math.max(least, (int) Math.ceil(gap / STEP));
      for (int j = 0; j < parts && angles.size() < 600; j++) {
        angles.add(ends[i - 1] + gap * j / parts);
      }
    }
    return angles.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
